package org.flexwright.core.cause;

import java.util.Locale;

import org.flexwright.core.Message;

/** How a trial's own record stands to a cause. */
public enum Standing {
    /** The record says that it happened. */
    RECORDED,
    /** The record is silent. */
    OPEN,
    /** The record speaks against it, or it is too small to be felt. */
    CLEARED;

    /** In words: "the record says so". */
    public String words() {
        return Message.of(Standing.class, "standing." + name().toLowerCase(Locale.ROOT)).text();
    }
}
