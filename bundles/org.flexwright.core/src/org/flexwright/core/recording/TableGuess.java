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
    private static final int PREVIEW_LINES = 200;
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
        TableFormat best = null;
        long most = 0;
        for (String separator : said(lines) == null ? SEPARATORS : List.of(said(lines))) {
            for (boolean comma : new boolean[] { false, true }) {
                TableFormat format = new TableFormat(separator, comma, 0);
                int[] run = run(lines, format);
                long cells = run[2] >= 2 ? (long) (run[1] - run[0]) : 0;
                if (cells > most) {
                    most = cells;
                    best = new TableFormat(separator, comma, run[0]);
                }
            }
        }
        String name = file.getFileName().toString();
        if (best == null) {
            throw TableFile.refused(one(lines) ? "columns.one" : "columns.none", name);
        }
        return read(lines, best, kind);
    }

    /** The same file with another way of cutting lines, given by a person. Throws RefusedException when that gives no columns of figures. */
    public static TableGuess of(Path file, RecordingKind kind, TableFormat format) {
        if (!TableFormat.isSeparator(format.separator())) {
            throw TableFile.refused("separator.none", format.separator());
        }
        return read(beginning(file), format, kind);
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
        TableFormat best = null;
        long most = -1;
        for (String each : separator == null ? SEPARATORS : List.of(separator)) {
            for (boolean comma : decimalComma == null ? new boolean[] { false, true } : new boolean[] { decimalComma }) {
                TableFormat format = new TableFormat(each, comma, 0);
                int[] run = run(lines, format);
                long count = run[2] >= 2 ? run[1] - run[0] : 0;
                if (count > most) {
                    most = count;
                    best = new TableFormat(each, comma, skipLines == null ? run[0] : skipLines);
                }
            }
        }
        return read(lines, best, kind);
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

    /** The longest run of rows of figures with the same number of columns: first line, line behind it, columns. */
    private static int[] run(List<String> lines, TableFormat format) {
        int[] best = { 0, 0, 0 };
        int begin = -1;
        int columns = 0;
        for (int i = 0; i <= lines.size(); i++) {
            if (i < lines.size() && isPassedOver(lines.get(i))) {
                continue;
            }
            int here = i < lines.size() ? figures(lines.get(i), format) : 0;
            if (here != columns || here == 0) {
                if (begin >= 0 && i - begin > best[1] - best[0]) {
                    best = new int[] { begin, i, columns };
                }
                begin = here > 0 ? i : -1;
                columns = here;
            }
        }
        return best;
    }

    private static boolean isPassedOver(String line) {
        String s = line.strip();
        return s.isEmpty() || s.startsWith("#") || s.startsWith("%") || s.startsWith("//");
    }

    /** How many cells a row of figures has; 0 when any filled cell is no figure. */
    private static int figures(String line, TableFormat format) {
        List<String> cells = cells(line, format);
        int filled = 0;
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                if (!isFigure(cells.get(i), format.decimalComma())) {
                    return 0;
                }
                filled = i + 1;
            }
        }
        return filled;
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

    private static TableGuess read(List<String> lines, TableFormat format, RecordingKind kind) {
        List<List<String>> rows = new ArrayList<>();
        int width = 0;
        for (int i = format.skipLines(); i < lines.size() && rows.size() < PREVIEW_ROWS; i++) {
            if (!isPassedOver(lines.get(i))) {
                List<String> cells = cells(lines.get(i), format);
                rows.add(cells);
                width = Math.max(width, (int) cells.stream().filter(c -> !c.isEmpty()).count());
            }
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
