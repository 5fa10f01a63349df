package org.flexwright.core.session;

import java.util.Objects;

import org.flexwright.core.Message;

/** Something asked of a project cannot be done as asked; the message is one sentence saying what, where and what is allowed. Nothing was changed. */
public class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Message sentence;

    /** A refusal with its sentence. */
    public RefusedException(Message sentence) {
        super(Objects.requireNonNull(sentence, "sentence").text());
        this.sentence = sentence;
    }

    /** The sentence as key and arguments. */
    public Message sentence() {
        return sentence;
    }
}
