package org.flexwright.core.search;

/** A piece of a text around the word that was found, in one line. */
final class Excerpt {
    private static final int LONGEST = 96;
    private static final int BEFORE = 32;

    private Excerpt() {
    }

    static String around(String text, String word) {
        String line = text.strip().replaceAll("\\s+", " ");
        if (line.length() <= LONGEST) {
            return line;
        }
        // accents may shift the place by a few letters, which an excerpt can bear
        int at = word.isEmpty() ? 0 : Math.max(0, Plain.text(line).indexOf(word));
        int from = at <= BEFORE ? 0 : Math.max(0, line.lastIndexOf(' ', Math.min(line.length(), at - BEFORE / 2)));
        int to = Math.min(line.length(), from + LONGEST);
        int end = to == line.length() ? to : Math.max(from + LONGEST / 2, line.lastIndexOf(' ', to));
        return (from > 0 ? "…" : "") + line.substring(from, end).strip() + (end < line.length() ? "…" : "");
    }
}
