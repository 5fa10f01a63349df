package org.flexwright.core.verdict;

import java.util.Locale;

import org.flexwright.core.Message;

/** What the parts say about a target: a word with a shape, so that it reads in greyscale and aloud. */
public enum Verdict {
    /** All of the interval lies inside the target. */
    IN("\u25cf"),
    /** All of it lies above. */
    ABOVE("\u25b2"),
    /** All of it lies below. */
    BELOW("\u25bc"),
    /** Neither; the reason says what would settle it. */
    CANNOT_TELL("?"),
    /** No part was read. */
    NOT_MEASURED("\u2013"),
    /** What was read differs in a condition that matters. */
    NOT_COMPARABLE("\u2260"),
    /** Every part failed, and none was read. */
    FAILED_PART("\u2715");

    private final String shape;

    Verdict(String shape) {
        this.shape = shape;
    }

    /** The shape alone. */
    public String shape() {
        return shape;
    }

    /** The word alone. */
    public String word() {
        return Message.of(Verdict.class, "verdict." + name().toLowerCase(Locale.ROOT)).text();
    }

    /** Shape and word. */
    public String text() {
        return shape + " " + word();
    }
}
