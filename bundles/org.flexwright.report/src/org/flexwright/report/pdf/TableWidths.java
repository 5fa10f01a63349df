package org.flexwright.report.pdf;

import java.util.List;

import org.flexwright.report.doc.Block;

/** Widths of a table's columns: as wide as the words want when there is room; else each gets its longest word and a share of what is left. */
final class TableWidths {
    private TableWidths() {
    }

    static double[] of(Block.Table table, Type type, double room) {
        int n = table.columns().size();
        double[] least = new double[n];
        double[] wanted = new double[n];
        for (int c = 0; c < n; c++) {
            Block.Column column = table.columns().get(c);
            least[c] = type.longestWord(column.title(), Look.TABLE) * 1.04;
            wanted[c] = widest(column.title(), type) * 1.04;
            for (List<Block.Cell> row : table.rows()) {
                Block.Cell cell = row.get(c);
                double whole = widest(cell.text(), type) * (Look.bold(cell.tone()) ? 1.04 : 1);
                double drawing = cell.drawing() == null ? 0 : cell.drawing().width() * Look.PIXEL;
                wanted[c] = Math.max(wanted[c], Math.max(whole, drawing));
                least[c] = Math.max(least[c], Math.max(drawing, column.number() ? whole : type.longestWord(cell.text(), Look.TABLE) * 1.04));
            }
            least[c] += 2 * Look.PAD + 0.5;
            wanted[c] += 2 * Look.PAD + 0.5;
        }
        return share(least, wanted, room);
    }

    private static double widest(String text, Type type) {
        double widest = 0;
        for (String line : type.showable(text).split("\n")) {
            widest = Math.max(widest, type.width(line, Look.TABLE));
        }
        return widest;
    }

    private static double[] share(double[] least, double[] wanted, double room) {
        double allWanted = sum(wanted);
        double allLeast = sum(least);
        double[] widths = new double[least.length];
        for (int c = 0; c < widths.length; c++) {
            if (allWanted <= room) {
                widths[c] = wanted[c];
            } else if (allLeast >= room) {
                widths[c] = least[c] * room / allLeast;
            } else {
                widths[c] = least[c] + (wanted[c] - least[c]) * (room - allLeast) / (allWanted - allLeast);
            }
        }
        return widths;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
