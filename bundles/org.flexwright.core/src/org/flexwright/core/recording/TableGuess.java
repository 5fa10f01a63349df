package org.flexwright.core.recording;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.flexwright.core.Message;
import org.flexwright.model.ChannelRole;

/**
 * What the beginning of a table file lets one guess, and what has to be asked. A guess is never taken silently where the file does not say
 * it: a column without a unit stays without one until a person gives it.
 *
 * @param format  how lines are cut
 * @param columns every column of the file; those that no wish fits have the meaning OTHER
 * @param preview the first lines as they stand in the file
 * @param rows    the first rows of figures, cut into cells, for a preview
 * @param asked   what has to be said before the file can be taken in, one sentence each; empty when nothing
 */
public record TableGuess(TableFormat format, List<ColumnUse> columns, List<String> preview, List<List<String>> rows, List<Message> asked) {
    /** Bigger files are refused: the raw file becomes part of the project. */
    public static final long MOST_BYTES = 512L << 20;
    private static final char FIGURE = '1';
    private static final int PREVIEW_LINES = 2000;
    private static final int PREVIEW_ROWS = 20;
    private static final List<String> SEPARATORS = List.of(TableFormat.TAB, ";", "|", ",", TableFormat.BLANKS, ":");

    public TableGuess {
        columns = List.copyOf(columns);
        preview = List.copyOf(preview);
        rows = List.copyOf(rows);
        asked = List.copyOf(asked);
    }

    /**
     * Looks at the beginning of a file. Throws RefusedException with one sentence when it is no table: empty, too big, no text, no columns of
     * figures.
     */
    public static TableGuess of(Path file, RecordingKind kind) {
        List<String> lines = beginning(file);
        TableFormat best = best(lines, null, null, null);
        if (best == null) {
            throw TableFile.refused(one(lines) ? "columns.one" : "columns.none", file.getFileName());
        }
        return read(file, lines, best, kind);
    }

    /** The way of cutting lines that makes most of them rows of figures, with what is given kept; null when none does. */
    private static TableFormat best(List<String> lines, String separator, Boolean decimalComma, Integer skipLines) {
        List<String> separators = separator != null ? List.of(separator) : said(lines) != null ? List.of(said(lines)) : SEPARATORS;
        TableFormat best = null;
        double most = 0;
        for (String each : separators) {
            for (boolean comma : decimalComma == null ? new boolean[] { false, true } : new boolean[] { decimalComma }) {
                Run run = run(lines, new TableFormat(each, comma, 0));
                if (run.score() > most) {
                    most = run.score();
                    best = new TableFormat(each, comma, skipLines == null ? run.from : skipLines);
                }
            }
        }
        return best;
    }

    /** The same file with another way of cutting lines, given by a person. Throws RefusedException when that gives no columns of figures. */
    public static TableGuess of(Path file, RecordingKind kind, TableFormat format) {
        if (!TableFormat.isSeparator(format.separator())) {
            throw TableFile.refused("separator.none", format.separator());
        }
        return read(file, beginning(file), format, kind);
    }

    /** How lines are cut when only the separator or the decimal sign is given; null leaves it to the file. */
    public static TableGuess of(Path file, RecordingKind kind, String separator, Boolean decimalComma, Integer skipLines) {
        if (separator != null && !TableFormat.isSeparator(separator)) {
            throw TableFile.refused("separator.none", separator);
        }
        if (separator == null && decimalComma == null && skipLines == null) {
            return of(file, kind);
        }
        List<String> lines = beginning(file);
        TableFormat best = best(lines, separator, decimalComma, skipLines);
        if (best == null) {
            throw TableFile.refused(one(lines) ? "columns.one" : "columns.none", file.getFileName());
        }
        return read(file, lines, best, kind);
    }

    private static List<String> beginning(Path file) {
        String name = file.getFileName().toString();
        try (InputStream in = Files.newInputStream(file)) {
            long size = Files.size(file);
            if (size == 0) {
                throw TableFile.refused("file.empty", name);
            }
            if (size > MOST_BYTES) {
                throw TableFile.refused("file.big", name, size >> 20, MOST_BYTES >> 20);
            }
            byte[] head = in.readNBytes(TextBytes.HEAD);
            Charset charset = TextBytes.charset(head);
            if (charset == null) {
                throw TableFile.refused("binary", name);
            }
            List<String> lines = new ArrayList<>(TextBytes.text(head, charset).lines().limit(PREVIEW_LINES).toList());
            if (size > head.length && lines.size() > 1 && lines.size() < PREVIEW_LINES) {
                lines.remove(lines.size() - 1);
            }
            return lines;
        } catch (IOException e) {
            throw TableFile.refused("file.unreadable", name);
        }
    }

    /** A first line {@code sep=;} says the separator, as spreadsheets write it. */
    private static String said(List<String> lines) {
        String first = lines.isEmpty() ? "" : lines.get(0).strip().toLowerCase(Locale.ROOT);
        return first.length() == 5 && first.startsWith("sep=") && TableFormat.isSeparator(first.substring(4)) ? first.substring(4) : null;
    }

    private static boolean one(List<String> lines) {
        return lines.stream().filter(l -> isFigure(l.strip(), true) || isFigure(l.strip(), false)).count() * 2 > lines.size();
    }

    /** Rows of which the same columns hold figures: first line, line behind the last, rows, columns, columns with figures. */
    private record Run(int from, int to, int rows, int columns, int figures) {
        /** Rows count, and columns without figures count against it: they come about by the wrong separator too. */
        double score() {
            double share = (double) figures / Math.max(columns, 1);
            return figures < 2 ? 0 : rows * share * share;
        }
    }

    /** The best run of rows. */
    private static Run run(List<String> lines, TableFormat format) {
        Run best = new Run(0, 0, 0, 0, 0);
        Run now = best;
        String same = "";
        for (int i = 0; i < lines.size(); i++) {
            if (!isPassedOver(lines.get(i))) {
                String shape = shape(lines.get(i), format);
                int figures = (int) shape.chars().filter(c -> c == FIGURE).count();
                now = shape.equals(same) && figures > 0 ? new Run(now.from, i + 1, now.rows + 1, shape.length(), figures) : new Run(i, i + 1, 1, shape.length(), figures);
                same = shape;
                best = now.score() > best.score() ? now : best;
            }
        }
        return best;
    }

    private static boolean isPassedOver(String line) {
        String s = line.strip();
        return s.isEmpty() || s.startsWith("#") || s.startsWith("%") || s.startsWith("//");
    }

    /** A letter a cell, to the last one that is filled: figure, other, empty. */
    private static String shape(String line, TableFormat format) {
        StringBuilder shape = new StringBuilder();
        int filled = 0;
        for (String cell : cells(line, format)) {
            shape.append(cell.isEmpty() ? ' ' : isFigure(cell, format.decimalComma()) ? FIGURE : 'x');
            filled = cell.isEmpty() ? filled : shape.length();
        }
        return shape.substring(0, filled);
    }

    private static boolean isFigure(String cell, boolean decimalComma) {
        byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
        double value = FigureBytes.read(bytes, 0, bytes.length, decimalComma, true);
        // an instrument's own word for no figure does not hide the row: the reading refuses it with its line
        return value == value || cell.equalsIgnoreCase("nan");
    }

    /** The cells of a line; blanks and quotes round each are taken off. */
    static List<String> cells(String line, TableFormat format) {
        String from = format.blanks() ? line.strip() : line;
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        char separator = format.character();
        for (int i = 0; i <= from.length(); i++) {
            char c = i < from.length() ? from.charAt(i) : separator;
            if (c == '"') {
                quoted = !quoted;
            } else if (i == from.length() || !quoted && (c == separator || c == '\t' && format.blanks())) {
                if (!(format.blanks() && cell.isEmpty())) {
                    cells.add(cell.toString().strip());
                }
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        return cells;
    }

    private static TableGuess read(Path file, List<String> lines, TableFormat format, RecordingKind kind) {
        List<List<String>> rows = new ArrayList<>();
        int width = 0;
        for (int i = format.skipLines(); i < lines.size() && rows.size() < PREVIEW_ROWS; i++) {
            if (!isPassedOver(lines.get(i))) {
                List<String> cells = cells(lines.get(i), format);
                rows.add(cells);
                width = Math.max(width, shape(lines.get(i), format).length());
            }
        }
        if (rows.isEmpty()) {
            throw TableFile.refused("rows.none", file.getFileName(), format.skipLines());
        }
        List<Heading> headings = Heading.of(lines, format, width);
        List<ColumnUse> columns = new ArrayList<>();
        Set<ChannelRole> taken = new HashSet<>();
        for (int i = 0; i < width; i++) {
            Heading heading = headings.get(i);
            ChannelWish wish = heading.wish(kind.channels(), taken);
            ChannelRole role = wish == null ? ChannelRole.OTHER : wish.role();
            if (wish != null) {
                taken.add(role);
            }
            String unit = heading.unit(wish);
            int place = i;
            boolean clock = role == ChannelRole.TIME && rows.stream().allMatch(r -> place < r.size() && r.get(place).contains(":"));
            columns.add(new ColumnUse(role, i + 1, heading.text(), clock ? "s" : unit, false));
        }
        return new TableGuess(format, columns, lines.subList(0, Math.min(lines.size(), format.skipLines() + PREVIEW_ROWS)), rows, asked(columns, kind));
    }

    /** What columns with these meanings leave to be asked, one sentence each. */
    public static List<Message> asked(List<ColumnUse> columns, RecordingKind kind) {
        List<Message> asked = new ArrayList<>();
        Set<ChannelRole> roles = new HashSet<>();
        for (ColumnUse use : columns) {
            if (use.role() != ChannelRole.OTHER && !roles.add(use.role())) {
                asked.add(Message.of(Recordings.class, "role.twice", org.flexwright.core.naming.Names.word(use.role()), use.column()));
            }
        }
        kind.missing(roles).ifPresent(asked::add);
        for (ColumnUse use : columns) {
            kind.channels().stream().filter(w -> w.role() == use.role() && use.unit() == null).findFirst().ifPresent(wish -> asked.add(Message.of(Recordings.class,
                    "unit.unsaid", use.column(), use.name(), wish.title(), wish.unit())));
        }
        return asked;
    }
}
