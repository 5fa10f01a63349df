package org.flexwright.core.exchange;

import org.flexwright.core.Message;

/**
 * One thing in which two states of a project differ.
 *
 * @param kind  what happened from the first to the second
 * @param about what it is about, in words
 * @param field label of what changed, empty when the thing as a whole came or went
 * @param from  value in the first, empty for none
 * @param to    value in the second, empty for none
 */
public record Difference(ImportChange.Kind kind, String about, String field, String from, String to) {
    private static final int LONGEST = 80;

    /** In one line. */
    public String text() {
        return switch (kind) {
            case ADDED -> Message.of(Difference.class, "difference.added", about).text();
            case REMOVED -> Message.of(Difference.class, "difference.removed", about).text();
            case MOVED -> Message.of(Difference.class, "difference.moved", about, field).text();
            case CHANGED -> Message.of(Difference.class, "difference.changed", about, field, shown(from), shown(to)).text();
        };
    }

    private static String shown(String value) {
        String line = value.strip().replaceAll("\\s+", " ");
        return line.isEmpty() ? Message.of(Difference.class, "difference.nothing").text() : line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }
}
