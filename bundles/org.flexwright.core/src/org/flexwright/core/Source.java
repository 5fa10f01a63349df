package org.flexwright.core;

import java.util.Objects;

/**
 * Where a number, a rule or a formula comes from. Shown beside every number that rests on it.
 *
 * @param text author, year and table, or the sheet's or record's name; never empty
 * @param mark how far the origin was confirmed
 */
public record Source(String text, Mark mark) {

    /** How far an origin was confirmed. */
    public enum Mark {
        /** Read in a published source that is named. */
        PUBLISHED,
        /** Algebra or geometry, or computed from something named. */
        DERIVED,
        /** Usual in workshops, no source. */
        COMMON_PRACTICE,
        /** Remembered from a source that was not opened again. */
        FROM_MEMORY,
        /** The maker's own record: a measurement, a weighing, a typed value. */
        OWN_RECORD,
        /** A supplier's sheet. */
        SHEET
    }

    public Source {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(mark, "mark");
        if (text.isBlank() && mark != Mark.COMMON_PRACTICE) {
            throw new IllegalArgumentException("A source needs words.");
        }
    }

    /** A source that was opened: author, year, table. */
    public static Source published(String text) {
        return new Source(text, Mark.PUBLISHED);
    }

    /** Plain algebra or something computed from what the text names. */
    public static Source derived(String text) {
        return new Source(text, Mark.DERIVED);
    }

    /** Usual in workshops; nothing published stands behind it. */
    public static Source commonPractice() {
        return new Source("", Mark.COMMON_PRACTICE);
    }

    /** Usual in workshops; the text says what is usual. */
    public static Source commonPractice(String text) {
        return new Source(text, Mark.COMMON_PRACTICE);
    }

    /** Remembered; the named source was not opened again. */
    public static Source fromMemory(String text) {
        return new Source(text, Mark.FROM_MEMORY);
    }

    /** The maker's own record. */
    public static Source ownRecord(String text) {
        return new Source(text, Mark.OWN_RECORD);
    }

    /** A supplier's sheet. */
    public static Source sheet(String text) {
        return new Source(text, Mark.SHEET);
    }

    /** The source in words with its mark, as printed beside a number. */
    public String display() {
        return switch (mark) {
            case PUBLISHED, DERIVED -> text;
            case COMMON_PRACTICE -> text.isBlank() ? "common practice, no source" : text + " (common practice, no source)";
            case FROM_MEMORY -> text + " (from memory, unconfirmed)";
            case OWN_RECORD -> text + " (own record)";
            case SHEET -> text + " (sheet)";
        };
    }
}
