package org.flexwright.core.trial;

import java.util.Objects;

import org.flexwright.core.Message;

/** Something asked of the project cannot be done as asked; one sentence says what, where and what is allowed. Nothing was changed. */
public final class PlanException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Message sentence;

    /** With its sentence. */
    public PlanException(Message sentence) {
        super(Objects.requireNonNull(sentence, "sentence").text());
        this.sentence = sentence;
    }

    static PlanException of(String key, Object... args) {
        return new PlanException(Message.of(PlanException.class, key, args));
    }

    /** The sentence as key and arguments. */
    public Message sentence() {
        return sentence;
    }
}
