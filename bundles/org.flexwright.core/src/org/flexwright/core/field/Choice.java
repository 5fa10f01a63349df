package org.flexwright.core.field;

import java.util.Locale;
import java.util.Objects;

/**
 * One of the values a choice field takes.
 *
 * @param literal word in files and on the command line
 * @param label   words on the screen
 * @param value   the value itself: an enum constant, or the word that a text keeps
 */
public record Choice(String literal, String label, Object value) {
    public Choice {
        Objects.requireNonNull(literal, "literal");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(value, "value");
    }

    /** True when a person typed this one: its literal or label, capitals, blanks, hyphens and underscores aside. */
    boolean matches(String typed) {
        String wanted = plain(typed);
        return plain(literal).equals(wanted) || plain(label).equals(wanted);
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }
}
