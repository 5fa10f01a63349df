package org.flexwright.core.session;

import java.util.Objects;

import org.flexwright.core.Message;

/** A project could not be opened, edited or saved; the message is one sentence saying what, where and what can be done. Nothing was changed. */
public final class StoreException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    public enum Kind {
        /** There is no project at that place. */
        NOT_FOUND,
        /** The file is damaged, cut off or no project. */
        UNREADABLE,
        /** The file holds what no project needs and what can do harm. */
        HOSTILE,
        /** The file was written by a newer program. */
        NEWER,
        /** Somebody else has it open. */
        LOCKED,
        /** The place or the session does not allow writing. */
        READ_ONLY,
        /** No room left. */
        DISK_FULL,
        /** There is something at that place already. */
        EXISTS,
        /** The name cannot be a project's folder. */
        NAME,
        /** The disk reported a failure of another kind. */
        FAILED
    }

    private final Kind kind;
    private final transient Message sentence;

    /** With the cause, which may be null. */
    public StoreException(Kind kind, Message sentence, Throwable cause) {
        super(sentence.text(), cause);
        this.kind = Objects.requireNonNull(kind, "kind");
        this.sentence = sentence;
    }

    /** What stood in the way. */
    public Kind kind() {
        return kind;
    }

    /** The sentence as key and arguments. */
    public Message sentence() {
        return sentence;
    }
}
