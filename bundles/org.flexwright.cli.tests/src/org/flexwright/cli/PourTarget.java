package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Trial;

/** A program of its own that pours by taps, one trial after the other, until it is killed, and says after each tap that it is made. */
public final class PourTarget {
    static final String APART = "\0";
    private static final int SAVE_EVERY = 9;

    private PourTarget() {
    }

    /** Arguments: the project's folder, and a file with what a trial shows after each tap, divided by {@link #APART}. */
    public static void main(String[] args) throws IOException {
        Pour pour = new Pour(Clock.systemUTC());
        ProjectSession session = pour.store().open(Path.of(args[0]));
        if (session.readOnly()) {
            throw new IllegalStateException(session.readOnlyReason());
        }
        List<String> traces = List.of(Files.readString(Path.of(args[1])).split(APART));
        for (int made = 0;; made++) {
            Trial trial = Pour.last(session.project());
            int at = at(traces, trial);
            if (at == Pour.TAPS.size()) {
                pour.plan(session);
            } else {
                boolean before = trial.getContactAt() == null;
                long from = System.currentTimeMillis();
                pour.tap(session, trial, Pour.TAPS.get(at));
                boolean contact = before && trial.getContactAt() != null;
                System.out.println("tap " + trial.getCode() + " " + (at + 1) + (contact ? " " + from + " " + System.currentTimeMillis() : ""));
                System.out.flush();
            }
            if (made % SAVE_EVERY == SAVE_EVERY - 1) {
                session.save();
            }
        }
    }

    /** What a trial shows after 0, 1, 2 ... taps, its code left out. */
    static List<String> traces(Path folder) {
        Pour pour = new Pour(Clock.systemUTC());
        List<String> traces = new ArrayList<>();
        try (ProjectSession session = pour.create(folder)) {
            Trial trial = Pour.last(session.project());
            traces.add(shown(trial));
            for (Pour.Tap tap : Pour.TAPS) {
                pour.tap(session, trial, tap);
                traces.add(shown(trial));
            }
        }
        return traces;
    }

    private static String shown(Trial trial) {
        return Pour.seen(trial).substring(trial.getCode().length());
    }

    /** How many taps a trial shows. */
    static int at(List<String> traces, Trial trial) {
        int at = traces.indexOf(shown(trial));
        if (at < 0) {
            throw new IllegalStateException("The trial is in no state a tap leaves it in: " + Pour.seen(trial));
        }
        return at;
    }
}
