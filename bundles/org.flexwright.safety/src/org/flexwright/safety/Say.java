package org.flexwright.safety;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;

/** The sentences of this plugin; their words stand beside this class. */
public final class Say {

    private Say() {
    }

    /** A sentence. */
    public static Message message(String key, Object... arguments) {
        return Message.of(Say.class, key, arguments);
    }

    /** A note on a result. */
    public static Remark note(Source source, String key, Object... arguments) {
        return new Remark(Severity.NOTE, message(key, arguments), source);
    }

    /** A caution on a result. */
    public static Remark caution(Source source, String key, Object... arguments) {
        return new Remark(Severity.CAUTION, message(key, arguments), source);
    }
}
