package org.flexwright.workbench.pages.common;

import java.util.Locale;

import org.flexwright.core.session.Edit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
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
        session.setCode(nextCode(project));
        session.setAt(edit.now());
        session.setWho(edit.who().isEmpty() ? null : edit.who());
        if (!project.getSessions().isEmpty()) {
            Session last = project.getSessions().getLast();
            session.getInstruments().addAll(last.getInstruments());
            session.setControlPiece(last.getControlPiece());
        } else if (!project.getControlPieces().isEmpty()) {
            session.setControlPiece(project.getControlPieces().getFirst());
        }
        edit.add(project, ModelPackage.Literals.PROJECT__SESSIONS, session);
        return session;
    }

    private static String nextCode(Project project) {
        for (int n = project.getSessions().size() + 1;; n++) {
            String code = String.format(Locale.ROOT, "S%02d", n);
            if (project.getSessions().stream().noneMatch(s -> code.equalsIgnoreCase(s.getCode()))) {
                return code;
            }
        }
    }
}
