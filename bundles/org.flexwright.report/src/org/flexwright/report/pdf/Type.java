package org.flexwright.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The one font: what it can show, how wide words are, where lines break. Liberation Sans (SIL Open Font License), which comes with the
 * library that writes the PDF.
 */
final class Type {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    /** What stands for a sign that the font lacks. */
    private static final int STAND_IN = 0x25A1;
    private static final Map<Integer, String> ALIKE = Map.ofEntries(Map.entry(0x2300, "\u00d8"), Map.entry(0x2715, "\u00d7"), Map.entry(0x2011, "-"), Map.entry(0x2713,
            "\u221a"), Map.entry(0x25c6, "\u2666"), Map.entry(0x25c7, "\u25ca"), Map.entry(0x2610, "\u25a1"), Map.entry(0x26a0, "(!)"), Map.entry(0x202f, "\u00a0"), Map.entry(
                    0x2007, "\u00a0"), Map.entry(9, " "));

    private final TrueTypeFont font;
    private final CmapLookup signs;
    private final Map<Integer, Double> widths = new HashMap<>();
    private final Set<Integer> lacking = new TreeSet<>();

    Type() {
        try (InputStream in = open()) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            signs = font.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static InputStream open() {
        InputStream in = PDDocument.class.getResourceAsStream(FILE);
        if (in == null) {
            throw new IllegalStateException("The font is not in the PDF library.");
        }
        return in;
    }

    /** Signs that were asked for and cannot be shown. */
    Set<Integer> lacking() {
        return lacking;
    }

    /** A text made only of what the font has: look-alikes where there are some, else a box. Line feeds stay. */
    String showable(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (c == '\n') {
                out.append('\n');
            } else if (ALIKE.containsKey(c)) {
                out.append(ALIKE.get(c));
            } else if (c < ' ' || c >= 0x7F && c < 0xA0 || Character.getType(c) == Character.FORMAT || c >= 0xFE00 && c <= 0xFE0F) {
                return;
            } else if (Character.isBmpCodePoint(c) && !Character.isSurrogate((char) c) && signs.getGlyphId(c) > 0) {
                out.appendCodePoint(c);
            } else {
                lacking.add(c);
                out.appendCodePoint(STAND_IN);
            }
        });
        return out.toString();
    }

    /** Width of a showable text in points. */
    double width(String text, double size) {
        double sum = 0;
        for (int i = 0; i < text.length(); i++) {
            sum += width(text.charAt(i));
        }
        return sum * size;
    }

    private double width(int sign) {
        return widths.computeIfAbsent(sign, c -> {
            try {
                return font.getAdvanceWidth(signs.getGlyphId(c)) / (double) font.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** Width of the longest piece that is broken only when there is no other way. */
    double longestWord(String text, double size) {
        double longest = 0;
        for (String line : showable(text).split("\n")) {
            for (String piece : pieces(line)) {
                longest = Math.max(longest, width(piece.stripTrailing(), size));
            }
        }
        return longest;
    }

    /** Lines no wider than that, in the order they are seen. */
    List<String> lines(String text, double width, double size) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : showable(text).strip().split("\n", -1)) {
            wrap(paragraph, width, size, lines);
        }
        return lines.stream().map(Type::asSeen).toList();
    }

    private void wrap(String text, double width, double size, List<String> lines) {
        StringBuilder line = new StringBuilder();
        for (String piece : pieces(text)) {
            String rest = piece;
            if (!line.isEmpty() && width(line + rest.stripTrailing(), size) > width) {
                lines.add(line.toString().stripTrailing());
                line.setLength(0);
            }
            while (line.isEmpty() && width(rest.stripTrailing(), size) > width && rest.length() > 1) {
                int fits = fitting(rest, width, size);
                lines.add(rest.substring(0, fits));
                rest = rest.substring(fits);
            }
            line.append(rest);
        }
        lines.add(line.toString().stripTrailing());
    }

    private int fitting(String text, double width, double size) {
        int n = 1;
        while (n < text.length() && width(text.substring(0, n + 1), size) <= width) {
            n++;
        }
        return n;
    }

    /** Pieces between which a line may end: after spaces, and after dashes and slashes inside long words. */
    private static List<String> pieces(String line) {
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int i = 1; i < line.length(); i++) {
            char before = line.charAt(i - 1);
            boolean inside = (before == '-' || before == '/' || before == '_' || before == '\u2013') && i - from > 5 && line.charAt(i) != ' '
                    && Character.isLetter(line.charAt(i));
            if (before == ' ' && line.charAt(i) != ' ' || inside) {
                pieces.add(line.substring(from, i));
                from = i;
            }
        }
        pieces.add(line.substring(from));
        return pieces;
    }

    /** Right-to-left writing put in the order in which it is seen. */
    private static String asSeen(String line) {
        if (!Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        Bidi bidi = new Bidi(line, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        String[] words = new String[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            words[i] = levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, words, 0, runs);
        return String.join("", words);
    }
}
