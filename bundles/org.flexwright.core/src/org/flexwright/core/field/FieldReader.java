package org.flexwright.core.field;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.quantity.QuantityException;

/** Turns typed text into values. */
final class FieldReader {
    private static final Set<String> YES = Set.of("yes", "y", "true", "on", "1", "x");
    private static final Set<String> NO = Set.of("no", "n", "false", "off", "0");

    private FieldReader() {
    }

    /** A typed text that is not acceptable; carries the sentence. */
    private static final class NotAccepted extends Exception {
        private static final long serialVersionUID = 1L;

        NotAccepted(String key, Object... args) {
            super(Message.of(FieldReader.class, key, args).text());
        }

        NotAccepted(Message why) {
            super(why.text());
        }
    }

    static FieldInput read(FieldDescriptor d, String typed) {
        try {
            Object value = value(d, typed, d.label());
            return new FieldInput.Read(value, FieldPrinter.print(d, value));
        } catch (NotAccepted e) {
            return new FieldInput.Rejected(e.getMessage());
        }
    }

    private static Object value(FieldDescriptor d, String typed, String where) throws NotAccepted {
        if (typed.isBlank()) {
            if (d.optional()) {
                return null;
            }
            throw new NotAccepted("missing", where);
        }
        return switch (d.type()) {
            case QUANTITY -> quantity(d, typed, where);
            case INTEGER -> integer(d, typed, where);
            case TEXT, FILE -> typed;
            case CHOICE -> choice(d, typed, where);
            case FLAG -> flag(typed, where);
            case DATE -> date(typed, where);
            case INSTANT -> instant(typed, where);
            case LIST -> list(d, typed, where);
            case TABLE -> table(d, typed, where);
        };
    }

    private static Double quantity(FieldDescriptor d, String typed, String where) throws NotAccepted {
        double value;
        try {
            value = FieldUnits.read(typed, d.kind(), d.unit());
        } catch (QuantityException e) {
            throw new NotAccepted("notUnderstood", where, e.getMessage());
        }
        bounds(d, value, where);
        return value;
    }

    private static Integer integer(FieldDescriptor d, String typed, String where) throws NotAccepted {
        String digits = typed.replaceAll("[\\s\\u00a0\\u202f]", "").replace('\u2212', '-');
        int value;
        try {
            value = Integer.parseInt(digits);
        } catch (NumberFormatException e) {
            throw new NotAccepted("notWhole", where, typed);
        }
        bounds(d, value, where);
        return value;
    }

    private static void bounds(FieldDescriptor d, double value, String where) throws NotAccepted {
        boolean low = d.minOpen() ? value <= d.min() : value < d.min();
        if (low || value > d.max()) {
            throw new NotAccepted("outside", where, allowed(d), FieldPrinter.print(d, d.type() == FieldType.INTEGER ? (Object) (int) value : value));
        }
    }

    static String allowed(FieldDescriptor d) {
        boolean low = d.min() > Double.NEGATIVE_INFINITY;
        boolean high = d.max() < Double.POSITIVE_INFINITY;
        if (low && high) {
            return words(d.minOpen() ? "aboveTo" : "fromTo", bound(d, d.min()), bound(d, d.max()));
        }
        if (low) {
            return words(d.minOpen() ? "above" : "atLeast", bound(d, d.min()));
        }
        return high ? words("atMost", bound(d, d.max())) : "";
    }

    private static String bound(FieldDescriptor d, double value) {
        return FieldUnits.print(value, d.kind(), d.unit());
    }

    private static Object choice(FieldDescriptor d, String typed, String where) throws NotAccepted {
        for (Choice choice : d.choices()) {
            if (choice.matches(typed)) {
                return choice.value();
            }
        }
        throw new NotAccepted("notAChoice", where, d.choices().stream().map(Choice::literal).collect(Collectors.joining(", ")), typed);
    }

    private static Boolean flag(String typed, String where) throws NotAccepted {
        String word = typed.toLowerCase(Locale.ROOT);
        if (YES.contains(word)) {
            return true;
        }
        if (NO.contains(word)) {
            return false;
        }
        throw new NotAccepted("notAFlag", where, typed);
    }

    private static LocalDate date(String typed, String where) throws NotAccepted {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeException e) {
            throw new NotAccepted("notADate", where, typed);
        }
    }

    private static Instant instant(String typed, String where) throws NotAccepted {
        String iso = typed.replaceFirst("\\s+", "T");
        try {
            return iso.matches(".*(Z|[+-]\\d\\d:?\\d\\d)$") && iso.contains("T") ? java.time.OffsetDateTime.parse(iso).toInstant()
                    : LocalDateTime.parse(iso).atZone(ZoneId.systemDefault()).toInstant();
        } catch (DateTimeException e) {
            throw new NotAccepted("notAMoment", where, typed);
        }
    }

    private static List<Object> list(FieldDescriptor d, String typed, String where) throws NotAccepted {
        FieldDescriptor element = d.columns().get(0).withOptional(false);
        List<Object> values = new ArrayList<>();
        String[] parts = typed.split("[;\\n]");
        for (String part : parts) {
            values.add(value(element, part.strip(), words("element", where, values.size() + 1)));
        }
        countBounds(d, values.size(), where);
        return values;
    }

    private static List<Map<String, Object>> table(FieldDescriptor d, String typed, String where) throws NotAccepted {
        List<Map<String, Object>> rows = new ArrayList<>();
        TableText text;
        try {
            text = TableText.parse(d.columns(), typed);
        } catch (TableText.Malformed e) {
            throw new NotAccepted("notUnderstood", where, e.why().text());
        }
        for (List<String> cells : text.rows()) {
            int number = rows.size() + 1;
            if (cells.size() > text.columns().size()) {
                throw new NotAccepted("tooManyCells", where, number, text.columns().size(), cells.size());
            }
            Map<String, Object> row = new LinkedHashMap<>();
            for (FieldDescriptor column : d.columns()) {
                int at = text.columns().indexOf(column);
                String cell = at < 0 || at >= cells.size() ? "" : cells.get(at).strip();
                row.put(column.name(), value(column, cell.isEmpty() ? column.def() : cell, words("cell", where, number, column.label())));
            }
            rows.add(row);
        }
        countBounds(d, rows.size(), where);
        return rows;
    }

    /** The bounds of a list or table are the number of its entries. */
    private static void countBounds(FieldDescriptor d, int size, String where) throws NotAccepted {
        if (size < d.min() || size > d.max()) {
            throw new NotAccepted("outsideCount", where, allowed(d), size);
        }
    }

    private static String words(String key, Object... args) {
        return Message.of(FieldReader.class, key, args).text();
    }
}
