package org.flexwright.core.exchange;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Watch;
import org.flexwright.core.Message;
import org.flexwright.core.exchange.Walk.Row;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.UnknownText;
import org.flexwright.model.Project;

/**
 * The whole project as tables (RFC 4180, UTF-8, decimal point): a file for each class that has objects, {@code tables.csv} that names
 * all of them, {@code columns.csv} that describes every column, and {@code README.txt}.
 */
public final class CsvExport {
    /** Table that names the others. */
    static final String TABLES = "tables";
    /** Table that describes the columns of all others. */
    static final String COLUMNS = "columns";
    static final String README = "README.txt";
    private static final int STRIDE = 1 << 10;

    private final Tables tables;

    /** An export that knows the details of these packages; what else is in the project comes out as it is kept. */
    public CsvExport(List<DetailsPackage> packages) {
        tables = new Tables(packages);
    }

    /**
     * Writes into a new folder, or into a zip file when the name ends in .zip; it appears whole or not at all. Throws
     * {@link org.flexwright.core.session.RefusedException} when there is something at that place and
     * {@link java.util.concurrent.CancellationException} when it was cancelled.
     *
     * @return how many rows were written
     */
    public long write(Project project, UnknownText unknown, Path target, Watch watch) throws IOException {
        Content content = new Content(project, unknown);
        return Beside.write(target, sink -> content.write(sink, watch));
    }

    private final class Content {
        private final UnknownText unknown;
        /** By identity: a table is a record, and its hash goes through all its columns. */
        private final Map<Table, List<Row>> rows = new IdentityHashMap<>();
        private final List<String[]> beside = new ArrayList<>();
        private long count;

        Content(Project project, UnknownText unknown) {
            this.unknown = unknown;
            tables.all().forEach(t -> rows.put(t, new ArrayList<>()));
            Walk.each(project, row -> {
                count++;
                Table table = UnknownText.isUnknown(row.object()) ? tables.unread() : tables.of(row.object().eClass());
                rows.get(table).add(row);
                if (!UnknownText.isUnknown(row.object())) {
                    unknown.beside(row.object()).ifPresent(xml -> beside.add(new String[] { text(row.address()), "", "", "", CellText.write(xml) }));
                }
            });
        }

        long write(Beside.Sink sink, Watch watch) throws IOException {
            try (Writer out = writer(sink.file(README))) {
                out.write(Message.of(CsvExport.class, "readme").text());
                out.write('\n');
            }
            table(sink, TABLES, List.of("table", "rows", "class", "about"), out -> {
                for (Table t : tables.all()) {
                    out.row(t.name(), Integer.toString(size(t)), t.className(), CellText.write(about(t)));
                }
            });
            table(sink, COLUMNS, List.of("table", "column", "label", "kind", "unit", "type", "allowed", "help"), out -> {
                for (Table t : tables.all()) {
                    for (Column c : t.columns()) {
                        describe(t, c, out);
                    }
                }
            });
            long[] done = new long[1];
            for (Table t : tables.all()) {
                if (size(t) > 0) {
                    table(sink, t.name(), t.columns().stream().map(Column::header).toList(), out -> rows(t, out, done, watch));
                }
            }
            return count;
        }

        private int size(Table t) {
            return rows.get(t).size() + (t == tables.unread() ? beside.size() : 0);
        }

        private void rows(Table t, CsvOut out, long[] done, Watch watch) throws IOException {
            Column[] columns = t.columns().toArray(Column[]::new);
            for (Row row : rows.get(t)) {
                if (done[0]++ % STRIDE == 0) {
                    watch.check();
                    watch.done(done[0], count);
                }
                for (Column c : columns) {
                    out.cell(cell(c, row));
                }
                out.end();
            }
            if (t == tables.unread()) {
                for (String[] cells : beside) {
                    out.row(cells);
                }
            }
        }

        private String cell(Column c, Row row) {
            return switch (c.kind()) {
                case OWNER -> text(row.owner());
                case IN -> row.in().getName();
                case PLACE -> row.place() == 0 ? "" : Integer.toString(row.place());
                case CLASS -> text(UnknownText.className(row.object()));
                case CONTENT -> CellText.write(unknown.text(row.object()));
                case ID, VALUE, REFERENCE -> {
                    EObject object = c.inside() == null ? row.object() : (EObject) row.object().eGet(c.inside());
                    yield object == null ? "" : c.kind() == Column.Kind.REFERENCE ? text(ids(object.eGet(c.feature()))) : value(c, object);
                }
            };
        }
    }

    /** Ids and names come from files of strangers: they are written like any other text. */
    private static String text(String plain) {
        return plain.isEmpty() ? "" : CellText.write(plain);
    }

    private static String value(Column c, EObject object) {
        String text = Values.of(object, c.attribute());
        return text == null ? "" : c.many() || Values.isText(c.attribute()) ? CellText.write(text) : text;
    }

    static String ids(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof List<?> many) {
            StringBuilder b = new StringBuilder();
            for (Object o : many) {
                b.append(b.isEmpty() ? "" : " ").append(Walk.id((EObject) o));
            }
            return b.toString();
        }
        return Walk.id((EObject) value);
    }

    private static String about(Table t) {
        String words = t.type() == null ? null : EcoreUtil.getDocumentation(t.type());
        return words == null ? Message.of(CsvExport.class, t.type() == null ? "about.unread" : "about.none").text() : words;
    }

    private static void describe(Table t, Column c, CsvOut out) throws IOException {
        FieldDescriptor f = c.field();
        String documentation = c.feature() == null ? null : EcoreUtil.getDocumentation(c.feature());
        String help = f != null && !f.help().isEmpty() ? f.help()
                : documentation != null ? documentation : c.feature() == null ? Message.of(CsvExport.class, "column." + c.kind()).text() : "";
        out.row(t.name(), c.header(), f == null ? "" : CellText.write(f.label()), f == null ? "" : f.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                c.unit(), type(c), f == null ? "" : f.allowed().isEmpty() ? "" : CellText.write(f.allowed()), help.isEmpty() ? "" : CellText.write(help));
    }

    private static String type(Column c) {
        return switch (c.kind()) {
            case REFERENCE -> Message.of(CsvExport.class, c.many() ? "type.ids" : "type.id").text();
            case VALUE -> {
                String one = c.attribute().getEAttributeType() instanceof org.eclipse.emf.ecore.EEnum e
                        ? String.join(" | ", e.getELiterals().stream().map(org.eclipse.emf.ecore.EEnumLiteral::getLiteral).toList())
                        : Message.of(CsvExport.class, "type." + plainType(c)).text();
                yield c.many() ? Message.of(CsvExport.class, "type.many", one).text() : one;
            }
            case PLACE -> Message.of(CsvExport.class, "type.whole").text();
            default -> Message.of(CsvExport.class, "type.text").text();
        };
    }

    private static String plainType(Column c) {
        Class<?> type = c.attribute().getEAttributeType().getInstanceClass();
        if (type == Double.class || type == double.class) {
            return "number";
        }
        if (type == Boolean.class || type == boolean.class) {
            return "yesNo";
        }
        if (type == java.time.Instant.class) {
            return "moment";
        }
        if (type == java.time.LocalDate.class) {
            return "date";
        }
        return type == String.class ? "text" : "whole";
    }

    private interface Fill {
        void into(CsvOut out) throws IOException;
    }

    private static void table(Beside.Sink sink, String name, List<String> header, Fill fill) throws IOException {
        try (CsvOut out = new CsvOut(writer(sink.file(name + ".csv")))) {
            out.row(header.toArray(String[]::new));
            fill.into(out);
        }
    }

    private static Writer writer(OutputStream out) {
        return new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), 1 << 16);
    }
}
