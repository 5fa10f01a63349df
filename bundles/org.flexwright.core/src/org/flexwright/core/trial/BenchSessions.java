package org.flexwright.core.trial;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.session.Edit;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;

/** Times at the bench. */
public final class BenchSessions {
    private BenchSessions() {
    }

    /** The next free code: S01, S02... */
    public static String nextCode(Project project) {
        return Codes.next("S", 2, project.getSessions().stream().map(Session::getCode).toList());
    }

    /**
     * Adds a session that is filled in; without a code it gets the next free one, without a moment the present one. Throws PlanException
     * when its code is taken or its moment lies ahead.
     */
    public static Session add(Edit edit, Session session) {
        Project project = edit.project();
        String free = nextCode(project);
        session.setCode(Codes.free(session.getCode() == null ? free : session.getCode().strip(),
                project.getSessions().stream().map(Session::getCode).toList(), "session.taken", free));
        session.setAt(session.getAt() == null ? edit.now() : Trials.notAhead(edit, "Date", session.getAt()));
        edit.add(project, ModelPackage.Literals.PROJECT__SESSIONS, session);
        return session;
    }

    /** Begins a session at the moment of the edit, with what was used last time: gauges, control piece. */
    public static Session begin(Edit edit) {
        Project project = edit.project();
        Session session = ModelFactory.eINSTANCE.createSession();
        session.setAt(edit.now().truncatedTo(ChronoUnit.SECONDS));
        session.setWho(edit.who().isEmpty() ? null : edit.who());
        if (!project.getSessions().isEmpty()) {
            Session last = project.getSessions().getLast();
            session.getInstruments().addAll(last.getInstruments());
            session.setControlPiece(last.getControlPiece());
        } else if (!project.getControlPieces().isEmpty()) {
            session.setControlPiece(project.getControlPieces().getFirst());
        }
        return add(edit, session);
    }

    /** What was read in a session: on control pieces first, then on reference parts, then on the parts of the trials. */
    public static List<Measurement> measurements(Project project, Session session) {
        List<Specimen> pieces = new ArrayList<>(project.getControlPieces());
        pieces.addAll(project.getReferenceParts());
        project.getTrials().forEach(trial -> pieces.addAll(trial.getParts()));
        return pieces.stream().flatMap(p -> p.getMeasurements().stream()).filter(m -> m.getSession() == session).toList();
    }
}
