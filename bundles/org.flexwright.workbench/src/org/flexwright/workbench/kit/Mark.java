package org.flexwright.workbench.kit;

import org.flexwright.core.find.Severity;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.workbench.kit.Palette.Ink;

/**
 * A word with a shape and a colour; it reads in greyscale and aloud.
 *
 * @param shape a single character
 * @param word  what it means
 * @param ink   its colour
 */
public record Mark(String shape, String word, Ink ink) {

    /** Shape and word as they are printed. */
    public String text() {
        return shape + " " + word;
    }

    /** The mark of a verdict. */
    public static Mark of(Verdict verdict) {
        Ink ink = switch (verdict) {
            case IN -> Ink.IN;
            case ABOVE, BELOW, FAILED_PART -> Ink.OUT;
            case CANNOT_TELL, NOT_COMPARABLE -> Ink.UNSURE;
            case NOT_MEASURED -> Ink.QUIET;
        };
        return new Mark(verdict.shape(), verdict.word(), ink);
    }

    /** The mark of a finding's severity. */
    public static Mark of(Severity severity) {
        return switch (severity) {
            case NOTE -> new Mark("○", "note", Ink.QUIET);
            case CAUTION -> new Mark("▲", "caution", Ink.CAUTION);
            case STOP -> new Mark("■", "stop", Ink.STOP);
        };
    }
}
