package org.flexwright.core.exchange;

import java.util.ArrayList;
import java.util.List;

/**
 * Texts as they stand in a cell. An apostrophe at the beginning of a cell is no part of its text: it stands before a text that a
 * spreadsheet would run as a formula or turn into a number or date, before a text that begins with an apostrophe itself, and alone for
 * a text without characters, so that an empty cell always means that there is none.
 */
final class CellText {
    /** What begins a formula: in a spreadsheet of any country, and behind a tab or line end that it skips. */
    private static final String FORMULA = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20";
    private static final String NUMBER_LIKE = "0123456789.,:/-+ eE%";

    private CellText() {
    }

    /** A cell's content for a text that is there. */
    static String write(String text) {
        if (text.isEmpty() || text.charAt(0) == '\'' || FORMULA.indexOf(text.charAt(0)) >= 0 || numberLike(text)) {
            return "'" + text;
        }
        return text;
    }

    /** The text of a cell that is not empty. */
    static String read(String cell) {
        return cell.charAt(0) == '\'' ? cell.substring(1) : cell;
    }

    private static boolean numberLike(String text) {
        char first = text.charAt(0);
        if (first != ' ' && first != '.' && (first < '0' || first > '9')) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (NUMBER_LIKE.indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** Several texts in one: parted by ; with \ before a ; or \ that belongs to a text. */
    static String join(List<String> texts) {
        StringBuilder b = new StringBuilder();
        for (int i = 0; i < texts.size(); i++) {
            if (i > 0) {
                b.append(';');
            }
            String t = texts.get(i);
            for (int k = 0; k < t.length(); k++) {
                char c = t.charAt(k);
                if (c == ';' || c == '\\') {
                    b.append('\\');
                }
                b.append(c);
            }
        }
        return b.toString();
    }

    /** The texts of {@link #join}. */
    static List<String> split(String joined) {
        List<String> texts = new ArrayList<>();
        StringBuilder b = new StringBuilder();
        for (int i = 0; i < joined.length(); i++) {
            char c = joined.charAt(i);
            if (c == '\\' && i + 1 < joined.length()) {
                b.append(joined.charAt(++i));
            } else if (c == ';') {
                texts.add(b.toString());
                b.setLength(0);
            } else {
                b.append(c);
            }
        }
        texts.add(b.toString());
        return texts;
    }
}
