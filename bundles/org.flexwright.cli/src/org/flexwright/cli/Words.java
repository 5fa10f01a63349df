package org.flexwright.cli;

import java.util.Locale;

/** Names turned into words. */
final class Words {
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

    /** An enum constant as typed: {@code AT_LEAST} becomes {@code at_least}. */
    static String of(Enum<?> constant) {
        return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
