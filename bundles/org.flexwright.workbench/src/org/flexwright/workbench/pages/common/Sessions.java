package org.flexwright.workbench.pages.common;

import org.flexwright.model.Session;

/** Bench sessions in words. */
public final class Sessions {

    private Sessions() {
    }

    /** Code and day: {@code S03, 2026-03-21 10:00}. */
    public static String words(Session session) {
        String code = session.getCode() == null || session.getCode().isBlank() ? "session without a code" : session.getCode();
        return session.getAt() == null ? code : code + ", " + Moments.minute(session.getAt());
    }
}
