package org.flexwright.core.field;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;

/** Turns values into text that {@link FieldReader} understands again. */
final class FieldPrinter {

    private FieldPrinter() {
    }

    static String print(FieldDescriptor d, Object value) {
        if (value == null) {
            return "";
        }
        return switch (d.type()) {
            case QUANTITY -> value instanceof Estimate e ? FieldUnits.print(e.likely(), d.kind(), d.unit())
                    : FieldUnits.print(((Number) value).doubleValue(), d.kind(), d.unit());
            case FLAG -> Message.of(FieldPrinter.class, Boolean.TRUE.equals(value) ? "yes" : "no").text();
            case CHOICE -> d.choices().stream().filter(c -> c.value().equals(value)).map(Choice::label).findFirst().orElse(String.valueOf(value));
            case LIST -> ((Collection<?>) value).stream().map(v -> print(d.columns().get(0), v)).collect(Collectors.joining("; "));
            case TABLE -> ((Collection<?>) value).stream().map(row -> row(d.columns(), row)).collect(Collectors.joining("\n"));
            case INTEGER, TEXT, DATE, INSTANT, FILE -> String.valueOf(value);
        };
    }

    private static String row(List<FieldDescriptor> columns, Object row) {
        Map<String, Object> cells = Rows.cells(columns, row);
        return columns.stream().map(c -> quoted(print(c, cells.get(c.name())))).collect(Collectors.joining("; "));
    }

    private static String quoted(String cell) {
        return cell.matches("(?s).*[;\\t\\n|\"].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
