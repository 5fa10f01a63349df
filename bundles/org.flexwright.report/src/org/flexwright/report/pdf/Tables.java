package org.flexwright.report.pdf;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.report.doc.Block;
import org.flexwright.report.doc.Tone;

/** Tables as slabs: one a row, a row too high for that in several; the heading comes again on each page. */
final class Tables {
    /** A row of more lines is cut. */
    private static final int MOST_LINES = 24;
    private final Type type;

    Tables(Type type) {
        this.type = type;
    }

    List<Slab> slabs(Block.Table table, double room) {
        double[] widths = TableWidths.of(table, type, room);
        Slab heading = heading(table, widths);
        List<Slab> slabs = new ArrayList<>();
        slabs.add(heading.kept());
        for (int r = 0; r < table.rows().size(); r++) {
            List<Slab> row = row(table, table.rows().get(r), widths);
            for (int i = 0; i < row.size(); i++) {
                int rows = table.rows().size();
                // no row stands alone under its heading, at the foot of a page or at the head of the next
                boolean first = r == 0 && i == 0 && rows > 1;
                boolean lastButOne = r == rows - 2 && i == row.size() - 1;
                Slab slab = row.get(i).repeating(heading);
                slabs.add(first || lastButOne ? slab.kept() : slab);
            }
        }
        slabs.add(Slab.space(8));
        return slabs;
    }

    private Slab heading(Block.Table table, double[] widths) {
        List<Block.Cell> cells = table.columns().stream().map(c -> Block.Cell.of(c.title(), Tone.STRONG)).toList();
        Slab row = row(table, cells, widths).get(0);
        List<Ink> inks = new ArrayList<>();
        inks.add(new Ink.Box(0, 0, total(widths), row.height(), Look.PANEL, Look.NONE, 0));
        inks.add(new Ink.Line(0, 0, total(widths), 0, Look.LINE, 0.6, 0));
        inks.addAll(row.inks());
        return Slab.of(row.height(), inks);
    }

    private static double total(double[] widths) {
        double sum = 0;
        for (double width : widths) {
            sum += width;
        }
        return sum;
    }

    private List<Slab> row(Block.Table table, List<Block.Cell> cells, double[] widths) {
        List<List<String>> lines = new ArrayList<>();
        int most = 1;
        double drawing = 0;
        for (int c = 0; c < widths.length; c++) {
            Block.Cell cell = cells.get(c);
            double inside = (widths[c] - 2 * Look.PAD) / (Look.bold(cell.tone()) ? 1.03 : 1);
            lines.add(type.lines(cell.text(), inside, Look.TABLE));
            most = Math.max(most, lines.get(c).size());
            drawing = Math.max(drawing, cell.drawing() == null ? 0 : cell.drawing().height() * Look.PIXEL + 1);
        }
        List<Slab> slabs = new ArrayList<>();
        for (int from = 0; from < most; from += MOST_LINES) {
            int to = Math.min(most, from + MOST_LINES);
            slabs.add(piece(table, cells, widths, lines, from, to, from == 0 ? drawing : 0, to == most));
        }
        return slabs;
    }

    private Slab piece(Block.Table table, List<Block.Cell> cells, double[] widths, List<List<String>> lines, int from, int to, double drawing, boolean last) {
        double leading = Look.TABLE * Look.LEADING;
        double high = 0;
        for (int c = 0; c < widths.length; c++) {
            int count = Math.max(0, Math.min(to, lines.get(c).size()) - from);
            high = Math.max(high, count * leading + (cells.get(c).drawing() == null ? 0 : drawing));
        }
        double height = 2 * Look.PAD + high;
        List<Ink> inks = new ArrayList<>();
        double x = 0;
        for (int c = 0; c < widths.length; c++) {
            Block.Cell cell = cells.get(c);
            boolean right = table.columns().get(c).number();
            if (cell.drawing() != null && from == 0) {
                inks.addAll(Drawn.inks(cell.drawing(), x + Look.PAD, Look.PAD, widths[c] - 2 * Look.PAD, type));
            }
            boolean bold = Look.bold(cell.tone());
            double above = cell.drawing() == null ? 0 : drawing;
            for (int i = from; i < Math.min(to, lines.get(c).size()); i++) {
                String line = lines.get(c).get(i);
                double at = right ? x + widths[c] - Look.PAD - type.width(line, Look.TABLE) : x + Look.PAD;
                inks.add(new Ink.Words(at, Look.PAD + above + (i - from) * leading + Look.TABLE, line, Look.TABLE, bold, Look.colour(cell.tone())));
            }
            inks.add(new Ink.Line(x, 0, x, height, Look.LINE, 0.6, 0));
            x += widths[c];
        }
        inks.add(new Ink.Line(x, 0, x, height, Look.LINE, 0.6, 0));
        if (last) {
            inks.add(new Ink.Line(0, height, x, height, Look.LINE, 0.6, 0));
        }
        return Slab.of(height, inks);
    }
}
