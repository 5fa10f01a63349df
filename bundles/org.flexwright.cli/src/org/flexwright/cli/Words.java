package org.flexwright.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.flexwright.core.naming.Names;

/** Names turned into words. */
final class Words {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private Words() {
    }

    /** {@code massOfA} becomes {@code mass of A}. */
    static String label(String name) {
        String spaced = name.replaceAll("([a-z0-9])([A-Z])", "$1 $2").replace('_', ' ').replace('-', ' ');
        StringBuilder out = new StringBuilder();
        for (String word : spaced.split(" ")) {
            if (!out.isEmpty()) {
                out.append(' ');
            }
            out.append(word.length() == 1 ? word : word.toLowerCase(Locale.ROOT));
        }
        return out.toString();
    }

    /** An enum constant as people type it: {@code WITNESS_BUTTON} becomes {@code witness button}; the components are A and B. */
    static String of(Enum<?> constant) {
        return Names.word(constant);
    }

    /** A moment in the time of this place, to the minute; empty for null. */
    static String moment(Instant at) {
        return at == null ? "" : MOMENT.format(at.atZone(ZoneId.systemDefault()));
    }

    /** The word with its article. */
    static String a(String what) {
        return ("aeiou".indexOf(what.charAt(0)) >= 0 ? "an " : "a ") + what;
    }

    /** How many there are, in the right number: {@code 1 part}, {@code 2 parts}. */
    static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** Text behind something, or nothing. */
    static String tail(String before, String text) {
        return text == null || text.isBlank() ? "" : before + text;
    }
}
