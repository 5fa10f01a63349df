package org.flexwright.core.search;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts without case and accents, as words. */
final class Plain {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    /** Letters and digits, held together inside by what codes are written with. */
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:[-_./'’,][\\p{L}\\p{N}]+)*");
    private static final Pattern NUMBER = Pattern.compile("\\d+[.,]\\d+");
    private static final Pattern PIECES = Pattern.compile("[^\\p{L}\\p{N}]+");

    private Plain() {
    }

    /** Small letters without accents; what is no letter stays. */
    static String text(String text) {
        boolean ascii = true;
        for (int i = 0; i < text.length() && ascii; i++) {
            ascii = text.charAt(i) < 0x80;
        }
        String small = text.toLowerCase(Locale.ROOT);
        return ascii ? small : MARKS.matcher(Normalizer.normalize(small, Normalizer.Form.NFD)).replaceAll("").replace("ß", "ss").replace("ø", "o").replace("æ", "ae")
                .replace("ł", "l");
    }

    /** Every word of a text; a code such as {@code L-0231/7} gives itself in one piece and its pieces, a number itself with a point. */
    static void words(String text, Consumer<String> each) {
        Matcher word = WORD.matcher(text(text));
        while (word.find()) {
            String found = word.group();
            String joined = joined(found);
            each.accept(joined);
            if (joined.length() != found.length()) {
                for (String piece : PIECES.split(found)) {
                    each.accept(piece);
                }
            }
        }
    }

    /** One typed word in the form in which it is looked for; empty when there is no letter or digit in it. */
    static String word(String typed) {
        Matcher word = WORD.matcher(text(typed));
        StringBuilder all = new StringBuilder();
        while (word.find()) {
            all.append(joined(word.group()));
        }
        return all.toString();
    }

    private static String joined(String word) {
        return NUMBER.matcher(word).matches() ? word.replace(',', '.') : PIECES.matcher(word).replaceAll("");
    }

    /** All words of a text in order, for phrases and for tests. */
    static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        words(text, words::add);
        return words;
    }

    /** True when a word of the text begins so. */
    static boolean begins(String text, String word) {
        boolean[] found = new boolean[1];
        words(text, w -> found[0] |= w.startsWith(word));
        return found[0];
    }

    /** A text for phrases: its words with one space around each. */
    static String line(String text) {
        return " " + PIECES.matcher(text(text)).replaceAll(" ").strip() + " ";
    }
}
