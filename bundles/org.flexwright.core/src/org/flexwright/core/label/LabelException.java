package org.flexwright.core.label;

import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.session.RefusedException;

/** A text is no label code that leads anywhere here; the sentence says why. */
public final class LabelException extends RefusedException {
    private static final long serialVersionUID = 1L;

    /** Why a code leads nowhere. */
    public enum Why {
        /** The text has not the form of a code. */
        NO_CODE,
        /** The check character does not fit: something was misread or mistyped. */
        DAMAGED,
        /** The code is of another project. */
        OTHER_PROJECT,
        /** The code is of this project, and the thing is no longer there. */
        GONE,
        /** The thing has no code of its own, or a code that does not fit on a label. */
        NOT_LABELLED
    }

    private final Why why;

    private LabelException(Why why, Message sentence) {
        super(sentence);
        this.why = Objects.requireNonNull(why, "why");
    }

    static LabelException of(Why why, String key, Object... args) {
        return new LabelException(why, Message.of(LabelException.class, key, args));
    }

    /** Which of the reasons. */
    public Why why() {
        return why;
    }
}
