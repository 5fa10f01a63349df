package org.flexwright.core.naming;

import org.flexwright.core.Message;
import org.flexwright.core.session.RefusedException;

/** A name that was typed belongs to nothing, or to more than one thing; one sentence says so and what there is. */
public final class UnknownNameException extends RefusedException {
    private static final long serialVersionUID = 1L;

    private UnknownNameException(Message sentence) {
        super(sentence);
    }

    static UnknownNameException of(String key, Object... args) {
        return new UnknownNameException(Message.of(UnknownNameException.class, key, args));
    }
}
