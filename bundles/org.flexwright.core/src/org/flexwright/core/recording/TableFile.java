package org.flexwright.core.recording;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.Watch;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.session.RefusedException;
import org.flexwright.model.ChannelRole;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/**
 * Columns of figures out of a text file, read as a stream: what is kept are the figures, never the text. Lines without any figure behind the
 * last row are a footer and are passed over; anywhere else they are refused, as is every row that has a hole, too few or too many columns, or a
 * time before the one above.
 */
final class TableFile {
    /** More figures than these are refused: 8 bytes each, so that reading stays well within 512 MiB. */
    static final int MOST_FIGURES = 24_000_000;
    /** A line this long is no row of a table. */
    private static final int LONGEST_LINE = 1 << 20;
    private static final int BUFFER = 1 << 18;

    private final String fileName;
    private final TableFormat format;
    private final boolean blanks;
    private final boolean decimalComma;
    private final byte separator;
    private final ColumnUse[] uses;
    private final boolean[] clock;
    private final int[] slot;
    private final Column[] columns;
    private final int mostRows;
    private final int timeColumn;
    private long line;
    private int rows;
    private int width;
    private double lastTime = Double.NEGATIVE_INFINITY;
    /** A line without figures that is a footer as long as no figures follow. */
    private RefusedException footer;

    private TableFile(String fileName, TableFormat format, List<ColumnUse> used) {
        this.fileName = fileName;
        this.format = format;
        this.blanks = format.blanks();
        this.decimalComma = format.decimalComma();
        this.separator = (byte) format.character();
        this.uses = used.toArray(ColumnUse[]::new);
        this.clock = new boolean[uses.length];
        this.columns = new Column[uses.length];
        int widest = 0;
        int time = -1;
        for (int i = 0; i < uses.length; i++) {
            columns[i] = new Column();
            clock[i] = uses[i].role() == ChannelRole.TIME;
            time = clock[i] ? i : time;
            widest = Math.max(widest, uses[i].column());
        }
        this.timeColumn = time;
        this.slot = new int[widest];
        Arrays.fill(slot, -1);
        for (int i = 0; i < uses.length; i++) {
            slot[uses[i].column() - 1] = i;
        }
        this.mostRows = MOST_FIGURES / uses.length;
    }

    /**
     * Reads the columns that a kind can use, in the units it wants.
     *
     * @param bytes    the raw file from its beginning; not closed
     * @param fileName for sentences
     * @param size     bytes of the file, 0 when not known
     */
    static RecordingData read(InputStream bytes, String fileName, long size, TableFormat format, List<ColumnUse> columns, List<ChannelWish> wishes, Watch watch)
            throws IOException {
        List<ColumnUse> used = columns.stream().filter(c -> c.role() != ChannelRole.OTHER).toList();
        InputStream plain = TextBytes.plain(bytes);
        if (plain == null) {
            throw refused("binary", fileName);
        }
        TableFile table = new TableFile(fileName, format, used);
        table.lines(plain, size, watch);
        if (table.rows == 0) {
            throw table.footer != null ? table.footer : refused("rows.none", fileName, format.skipLines());
        }
        List<RecordingData.Channel> channels = new ArrayList<>();
        for (int i = 0; i < used.size(); i++) {
            ColumnUse use = used.get(i);
            ChannelWish wish = wishes.stream().filter(w -> w.role() == use.role()).findFirst().orElseThrow(() -> refused("role.unasked", use.column()));
            double[] values = table.columns[i].take(table.rows);
            convert(values, use, wish);
            channels.add(new RecordingData.Channel(use.role(), use.name(), wish.unit(), values));
        }
        return new RecordingData(channels, 0);
    }

    private static void convert(double[] values, ColumnUse use, ChannelWish wish) {
        Unit from = unit(use, wish);
        Unit to = Units.find(wish.kind(), wish.unit()).orElseThrow(() -> new IllegalStateException("No unit " + wish.unit() + " of " + wish.kind()));
        double sign = use.reversed() ? -1 : 1;
        if (from.equals(to) && sign > 0) {
            return;
        }
        // offsets first: only temperatures have them, and they are never turned round
        double factor = from.factor() / to.factor();
        double offset = (from.offset() - to.offset()) / to.factor();
        for (int i = 0; i < values.length; i++) {
            values[i] = sign * (values[i] * factor + offset);
        }
    }

    /** The unit a column is in; refused when nobody said it, or when it is none of the kind. */
    static Unit unit(ColumnUse use, ChannelWish wish) {
        if (use.unit() == null) {
            throw refused("unit.unsaid", use.column(), use.name(), wish.title(), wish.unit());
        }
        String said = use.unit().strip();
        if (said.isEmpty() && wish.kind() == QuantityKind.FRACTION) {
            throw refused("unit.unsaid", use.column(), use.name(), wish.title(), wish.unit());
        }
        Optional<Unit> found = Units.find(wish.kind(), said);
        return found.orElseThrow(() -> refused("unit.other", use.column(), use.name(), said, wish.kind().withArticle(), wish.unit()));
    }

    private void lines(InputStream in, long size, Watch watch) throws IOException {
        byte[] buffer = new byte[BUFFER];
        int held = 0;
        long done = 0;
        boolean afterReturn = false;
        while (true) {
            if (held == buffer.length) {
                if (held >= LONGEST_LINE) {
                    throw refused("line.long", fileName, line + 1);
                }
                buffer = Arrays.copyOf(buffer, held * 2);
            }
            watch.check();
            int n = in.read(buffer, held, buffer.length - held);
            if (n < 0) {
                break;
            }
            done += n;
            watch.done(Math.min(done, size), size);
            int end = held + n;
            int start = 0;
            for (int i = held; i < end; i++) {
                byte b = buffer[i];
                if (b == '\n' || b == '\r') {
                    if (!(b == '\n' && afterReturn && i == start)) {
                        row(buffer, start, i);
                    }
                    start = i + 1;
                }
                afterReturn = b == '\r';
            }
            System.arraycopy(buffer, start, buffer, 0, end - start);
            held = end - start;
        }
        if (held > 0) {
            row(buffer, 0, held);
        }
    }

    private void row(byte[] b, int from, int to) {
        line++;
        if (line <= format.skipLines()) {
            return;
        }
        int start = from;
        int end = to;
        while (start < end && (b[start] == ' ' || b[start] == '\t' && blanks)) {
            start++;
        }
        while (end > start && (b[end - 1] == ' ' || b[end - 1] == '\f' || b[end - 1] == 0x1a || b[end - 1] == '\t' && blanks)) {
            end--;
        }
        if (start == end || isComment(b, start, end)) {
            return;
        }
        int column = 0;
        int filled = 0;
        int figures = 0;
        int cell = start;
        int hole = -1;
        boolean quoted = false;
        for (int i = start; i <= end; i++) {
            boolean last = i == end;
            if (!last && b[i] == '"') {
                quoted = !quoted;
            }
            if (last || !quoted && (b[i] == separator || b[i] == '\t' && blanks)) {
                if (!(blanks && i == cell)) {
                    if (i > cell) {
                        filled = column + 1;
                    }
                    int at = column < slot.length ? slot[column] : -1;
                    if (at >= 0) {
                        double value = FigureBytes.read(b, cell, i, decimalComma, clock[at]);
                        if (value == value) {
                            figures++;
                        } else if (hole < 0) {
                            hole = column;
                        }
                        columns[at].next = value;
                    }
                    column++;
                }
                cell = i + 1;
            }
        }
        if (figures == 0) {
            footer = footer == null ? new RefusedException(noFigures(b, start, end)) : footer;
            return;
        }
        if (footer != null) {
            throw footer;
        }
        if (column < slot.length) {
            throw refused("row.short", fileName, line, column, slot.length);
        }
        if (hole >= 0) {
            throw refused("cell.none", fileName, line, text(cellText(b, start, end, hole)), hole + 1, uses[slot[hole]].name());
        }
        if (width == 0) {
            width = filled;
        } else if (filled != width) {
            throw refused("row.ragged", fileName, line, filled, width);
        }
        if (timeColumn >= 0) {
            double time = columns[timeColumn].next;
            if (time < lastTime) {
                throw refused("time.back", fileName, line, FieldText.digits(lastTime), FieldText.digits(time));
            }
            lastTime = time;
        }
        if (rows == mostRows) {
            throw refused("rows.many", fileName, String.format(Locale.ROOT, "%,d", mostRows), uses.length);
        }
        for (Column c : columns) {
            c.keep(rows);
        }
        rows++;
    }

    private static boolean isComment(byte[] b, int start, int end) {
        return b[start] == '#' || b[start] == '%' || b[start] == '/' && end > start + 1 && b[start + 1] == '/';
    }

    private Message noFigures(byte[] b, int start, int end) {
        return Message.of(Recordings.class, "line.noFigures", fileName, line, text(new String(b, start, end - start, StandardCharsets.UTF_8)));
    }

    private String cellText(byte[] b, int start, int end, int column) {
        List<String> cells = TableGuess.cells(new String(b, start, end - start, StandardCharsets.UTF_8), format);
        return column < cells.size() ? cells.get(column) : "";
    }

    /** A foreign text as it may stand in a sentence. */
    private static String text(String foreign) {
        String one = foreign.strip().replaceAll("\\p{Cntrl}", " ");
        return one.length() > 40 ? one.substring(0, 40) + "…" : one;
    }

    static RefusedException refused(String key, Object... args) {
        return new RefusedException(Message.of(Recordings.class, key, args));
    }

    /** Figures of one column as they come, in blocks, so that none is ever copied more than once. */
    private static final class Column {
        private static final int BLOCK = 1 << 16;
        private List<double[]> blocks = new ArrayList<>();
        private double[] block;
        private double next;

        void keep(int row) {
            int place = row & BLOCK - 1;
            if (place == 0) {
                block = new double[BLOCK];
                blocks.add(block);
            }
            block[place] = next;
        }

        /** All of them; what was kept is given up. */
        double[] take(int rows) {
            double[] all = new double[rows];
            for (int i = 0; i < blocks.size(); i++) {
                System.arraycopy(blocks.get(i), 0, all, i * BLOCK, Math.min(BLOCK, rows - i * BLOCK));
                blocks.set(i, null);
            }
            blocks = List.of();
            return all;
        }
    }
}
