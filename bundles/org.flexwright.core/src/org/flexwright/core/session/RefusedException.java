package org.flexwright.core.session;

import java.util.Objects;

import org.flexwright.core.Message;

/** An edit that makes no sense was refused; the message is one sentence saying what, where and what is allowed. Nothing was changed. */
public final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Why it was refused. */
    public enum Kind {
        /** A text holds a character that cannot be kept. */
        TEXT,
        /** What is frozen is not changed; a new version is made instead. */
        FROZEN,
        /** The code is in use. */
        DUPLICATE_CODE,
        /** A reason or another needed entry is missing. */
        MISSING,
        /** The moment lies ahead. */
        IN_THE_FUTURE,
        /** Two entries contradict each other. */
        CONTRADICTION,
        /** The number lies outside what is allowed. */
        OUT_OF_RANGE,
        /** The file is not what it is said to be. */
        WRONG_FILE,
        /** Not everything that is needed before has been done. */
        NOT_READY,
        /** There is no such thing here. */
        UNKNOWN
    }

    private final Kind kind;
    private final transient Message sentence;

    /** A refusal with its sentence. */
    public RefusedException(Kind kind, Message sentence) {
        super(sentence.text());
        this.kind = Objects.requireNonNull(kind, "kind");
        this.sentence = sentence;
    }

    /** Why it was refused. */
    public Kind kind() {
        return kind;
    }

    /** The sentence as key and arguments. */
    public Message sentence() {
        return sentence;
    }
}
