package org.flexwright.core.trial;

import org.flexwright.core.Message;
import org.flexwright.core.session.RefusedException;

/** A step of the work on trials, targets or recipes was refused; one sentence says what, where and what is allowed. Nothing was changed. */
public final class PlanException extends RefusedException {
    private static final long serialVersionUID = 1L;

    /** With its sentence. */
    public PlanException(Message sentence) {
        super(sentence);
    }

    static PlanException of(String key, Object... args) {
        return new PlanException(Message.of(PlanException.class, key, args));
    }
}
