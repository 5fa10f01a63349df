package org.flexwright.core.field;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.flexwright.core.Message;

/**
 * Typed rows taken apart: rows end at a line end or a {@code |}, cells at a semicolon or tab; in a text with neither, at a comma. A
 * first row of column names or labels sets the order of the columns.
 */
record TableText(List<FieldDescriptor> columns, List<List<String>> rows) {

    /** The text is no table. */
    static final class Malformed extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Message why;

        Malformed(Message why) {
            super(why.text());
            this.why = why;
        }

        Message why() {
            return why;
        }
    }

    static TableText parse(List<FieldDescriptor> columns, String typed) throws Malformed {
        List<List<String>> rows = records(typed, columns.size());
        if (rows.isEmpty()) {
            return new TableText(columns, rows);
        }
        List<FieldDescriptor> header = header(columns, rows.get(0));
        return header == null ? new TableText(columns, rows) : new TableText(header, rows.subList(1, rows.size()));
    }

    private static List<List<String>> records(String typed, int width) throws Malformed {
        String lines = typed.indexOf('\n') < 0 ? typed.replace('|', '\n') : typed;
        // A comma between numbers may be a decimal sign: it separates cells only when nothing else does and there is something to separate.
        char delimiter = lines.indexOf('\t') >= 0 ? '\t' : lines.indexOf(';') >= 0 || width == 1 ? ';' : ',';
        CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).setIgnoreSurroundingSpaces(true).get();
        List<List<String>> rows = new ArrayList<>();
        try (var parser = format.parse(new StringReader(lines))) {
            for (CSVRecord row : parser) {
                if (row.stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(row.toList());
                }
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            throw new Malformed(Message.of(TableText.class, "quotes"));
        }
        return rows;
    }

    /** The columns in the order the first row names them, or null when it is no header. */
    private static List<FieldDescriptor> header(List<FieldDescriptor> columns, List<String> first) {
        List<FieldDescriptor> order = new ArrayList<>();
        for (String cell : first) {
            String wanted = plain(cell);
            FieldDescriptor column = columns.stream().filter(c -> plain(c.name()).equals(wanted) || plain(c.label()).equals(wanted)).findFirst()
                    .orElse(null);
            if (column == null || order.contains(column)) {
                return null;
            }
            order.add(column);
        }
        return order;
    }

    /** Unit in brackets and capitals aside. */
    private static String plain(String text) {
        return text.strip().replaceFirst("\\s*[\\[(][^\\])]*[\\])]$", "").toLowerCase(Locale.ROOT);
    }
}
