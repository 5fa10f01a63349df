package org.flexwright.core.session;

import org.flexwright.core.Message;

/** What was read is no project, or is one that must not be read further. */
final class UnreadableException extends Exception {
    private static final long serialVersionUID = 1L;
    private final StoreException.Kind kind;
    private final transient Message what;

    UnreadableException(StoreException.Kind kind, Message what) {
        super(what.text());
        this.kind = kind;
        this.what = what;
    }

    UnreadableException(StoreException.Kind kind, String key, Object... args) {
        this(kind, Message.of(ProjectStore.class, key, args));
    }

    StoreException.Kind kind() {
        return kind;
    }

    /** Half a sentence: what is wrong and on which line. */
    Message what() {
        return what;
    }
}
