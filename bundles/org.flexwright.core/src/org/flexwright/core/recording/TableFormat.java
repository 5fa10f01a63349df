package org.flexwright.core.recording;

import java.util.Objects;

/**
 * How the lines of a table file are cut into figures.
 *
 * @param separator    what stands between two columns: one character, or the words {@link #TAB} or {@link #BLANKS}
 * @param decimalComma whether 2,5 is two and a half
 * @param skipLines    lines at the top that hold no figures
 */
public record TableFormat(String separator, boolean decimalComma, int skipLines) {
    /** One tab between two columns. */
    public static final String TAB = "tab";
    /** Any number of blanks or tabs between two columns. */
    public static final String BLANKS = "blanks";

    public TableFormat {
        Objects.requireNonNull(separator, "separator");
    }

    /** Whether this can be a separator at all: a word or one plain character that belongs to no figure. */
    public static boolean isSeparator(String text) {
        return TAB.equals(text) || BLANKS.equals(text) || text.length() == 1 && text.charAt(0) < 0x7f && text.charAt(0) > ' '
                && "+-.\"".indexOf(text.charAt(0)) < 0 && !Character.isLetterOrDigit(text.charAt(0));
    }

    /** The character between two columns; a blank for {@link #BLANKS}. */
    char character() {
        return TAB.equals(separator) ? '\t' : BLANKS.equals(separator) ? ' ' : separator.charAt(0);
    }

    boolean blanks() {
        return BLANKS.equals(separator);
    }
}
