package org.flexwright.core.view;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A table without widgets.
 *
 * @param columns the columns
 * @param rows    cells as text, each row as long as {@code columns}
 */
public record TableModel(List<Column> columns, List<List<String>> rows) {

    /**
     * A column.
     *
     * @param title  words above it, with the unit
     * @param number true when its cells are numbers: right-aligned, and sorted by value
     */
    public record Column(String title, boolean number) {
        public Column {
            Objects.requireNonNull(title, "title");
        }

        /** A column of words. */
        public static Column text(String title) {
            return new Column(title, false);
        }

        /** A column of numbers. */
        public static Column number(String title) {
            return new Column(title, true);
        }
    }

    public TableModel {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        int width = columns.size();
        if (rows.stream().anyMatch(r -> r.size() != width)) {
            throw new IllegalArgumentException("Every row needs " + width + " cells.");
        }
    }

    /** The table as CSV: comma, decimal point, quotes where needed, line feeds. A cell that a spreadsheet would run as a formula is kept as text. */
    public String csv() {
        StringBuilder csv = new StringBuilder(line(columns.stream().map(Column::title).toList()));
        rows.forEach(row -> csv.append(line(row)));
        return csv.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(TableModel::cell).collect(Collectors.joining(",", "", "\n"));
    }

    private static String cell(String text) {
        boolean formula = text.matches("(?s)[=@\\t\\r].*") || text.matches("(?s)[+-].*") && !text.matches("[+-]?[0-9.]+([eE][+-]?[0-9]+)?");
        String kept = formula ? "'" + text : text;
        return kept.matches("(?s).*[,\"\\r\\n].*") ? '"' + kept.replace("\"", "\"\"") + '"' : kept;
    }
}
