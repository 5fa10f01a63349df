package org.flexwright.core.find;

import java.util.Locale;

import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * A sentence of a plugin, made an enum constant so that a missing or unused one is found by the compiler or a test:
 * {@code RATIO_OFF} stands as {@code ratio.off} in the {@code messages.properties} of the enum's package.
 */
public interface Sentence {

    /** Name of the constant; every enum has it. */
    String name();

    /** Key of the words. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    /** The sentence with its arguments, numbers already formatted with their unit. */
    default Message with(Object... args) {
        return Message.of(getClass(), key(), args);
    }

    /** A note on a result. */
    default Remark note(Source source, Object... args) {
        return new Remark(Severity.NOTE, with(args), source);
    }

    /** A caution on a result. */
    default Remark caution(Source source, Object... args) {
        return new Remark(Severity.CAUTION, with(args), source);
    }

    /** A stop on a result. */
    default Remark stop(Source source, Object... args) {
        return new Remark(Severity.STOP, with(args), source);
    }
}
