package org.flexwright.core.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;

import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** The session a tap belongs to: its room is asked once. */
public final class BenchRooms {
    /** What was begun within this time counts as the same session; own choice: a long working day. */
    private static final Duration DAY = Duration.ofHours(12);

    private BenchRooms() {
    }

    /** The step's session, else the latest one of the project that began within the last twelve hours; null when there is none. */
    public static Session session(Trial trial, Step step, Instant now) {
        if (step != null && step.getSession() != null) {
            return step.getSession();
        }
        return !(trial.eContainer() instanceof Project project) ? null
                : project.getSessions().stream().filter(s -> s.getAt() != null && !s.getAt().isAfter(now) && s.getAt().isAfter(now.minus(DAY)))
                        .max(Comparator.comparing(Session::getAt)).orElse(null);
    }

    /** That session, or a new one that begins now; the step belongs to it from now on. */
    public static Session use(Edit edit, Trial trial, Step step) {
        Session session = session(trial, step, edit.now());
        if (session == null) {
            session = BenchSessions.begin(edit);
        }
        if (step != null && step.getSession() == null) {
            edit.set(step, ModelPackage.Literals.STEP__SESSION, session);
        }
        return session;
    }
}
