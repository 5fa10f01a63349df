package org.flexwright.workbench.pages.common;

import org.flexwright.core.session.Edit;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;
import org.flexwright.model.Session;

/** Bench sessions in words, and beginning one. */
public final class Sessions {

    private Sessions() {
    }

    /** Code and day: {@code S03, 2026-03-21 10:00}. */
    public static String words(Session session) {
        String code = session.getCode() == null || session.getCode().isBlank() ? "session without a code" : session.getCode();
        return session.getAt() == null ? code : code + ", " + Moments.minute(session.getAt());
    }

    /** Begins a session at the moment of the edit, with what was used last time: person, gauges, control piece. */
    public static Session begin(Edit edit) {
        Project project = edit.project();
        Session session = ModelFactory.eINSTANCE.createSession();
        session.setWho(edit.who().isEmpty() ? null : edit.who());
        if (!project.getSessions().isEmpty()) {
            Session last = project.getSessions().getLast();
            session.getInstruments().addAll(last.getInstruments());
            session.setControlPiece(last.getControlPiece());
        } else if (!project.getControlPieces().isEmpty()) {
            session.setControlPiece(project.getControlPieces().getFirst());
        }
        return BenchSessions.add(edit, session);
    }
}
