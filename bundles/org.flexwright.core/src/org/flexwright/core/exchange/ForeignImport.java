package org.flexwright.core.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.exchange.ImportChange.Kind;
import org.flexwright.core.naming.Find;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ParsedReading;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.trial.Weighings;
import org.flexwright.model.Instrument;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;
import org.flexwright.quantity.QuantityException;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;

/**
 * Readings and weighings from a table of another program, whose columns a person names. A cell may carry its unit, else the one in
 * brackets behind the column's name counts, else the usual one. Cells are text and numbers, never formulas. As with own tables it is
 * seen first, and all of it is taken or nothing.
 */
public final class ForeignImport {
    private static final Pattern UNIT = Pattern.compile("[\\[(]([^\\])]+)[\\])]\\s*$");
    private static final Pattern DOUBTFUL = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}(\\s.*)?");
    private static final Pattern PLAIN = Pattern.compile("[+-]?[\\d.,]+([eE][+-]?\\d+)?");
    /** Rows of a table that are looked at; more are no record of one trial. */
    private static final int MOST = 100_000;

    private final String table;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<String, String> headers = new LinkedHashMap<>();
    private final Map<String, String> units = new LinkedHashMap<>();
    private final List<ImportChange> additions = new ArrayList<>();
    private final List<ImportRefusal> refusals = new ArrayList<>();
    private final List<Message> notes = new ArrayList<>();
    private final List<Consumer<Edit>> work = new ArrayList<>();
    private final ImportOptions.Decimal decimal;

    private ForeignImport(String table, ImportOptions.Decimal decimal) {
        this.table = table;
        this.decimal = decimal;
    }

    /**
     * What all readings of a table have in common.
     *
     * @param trial      the trial whose pieces were read
     * @param property   what was read
     * @param key        under which conditions
     * @param session    the session, or null
     * @param instrument the gauge, or null
     * @param at         when, for rows that do not say
     */
    public record Common(Trial trial, PropertyDef property, PropertyKey key, Session session, Instrument instrument, Instant at) {
    }

    /** Readings: the columns {@code part} (code of the piece) and {@code value}; the readings of one piece after one dwell become one measurement. */
    public static ImportPlan readings(Common common, Path file, Map<String, String> named, ImportOptions.Decimal decimal) throws IOException {
        ForeignImport f = new ForeignImport(file.getFileName().toString(), decimal);
        Map<Part, Map<Double, List<ParsedReading>>> read = new LinkedHashMap<>();
        f.rows(file, named, List.of("part", "value"), List.of(), (in, row) -> {
            String code = f.cell(in, "part");
            Part part = common.trial.getParts().stream().filter(p -> code.equalsIgnoreCase(p.getCode())).findFirst().orElse(null);
            String typed = f.number(in, row, "value");
            if (part == null) {
                f.refuse(row, f.headers.get("part"), "foreign.part", code, common.trial.getCode(), common.trial.getParts().stream().map(Part::getCode).toList());
            } else if (typed != null) {
                switch (ReadingParser.parse(common.property, common.key, typed)) {
                    case ReadingInput.Rejected no -> f.refusals.add(new ImportRefusal(f.table, row, f.headers.get("value"), no.sentence()));
                    case ReadingInput.Understood yes -> {
                        read.computeIfAbsent(part, p -> new LinkedHashMap<>()).computeIfAbsent(yes.dwell() == null ? common.key.getDwell() : yes.dwell(),
                                d -> new ArrayList<>()).addAll(yes.readings());
                        f.additions.add(new ImportChange(Kind.ADDED, f.table, row, Names.path(part) + ": " + common.property.title() + " " + typed, "", "",
                                typed));
                    }
                }
            }
        });
        read.forEach((part, dwells) -> dwells.forEach((dwell, readings) -> f.work.add(edit -> {
            PropertyKey key = EcoreUtil.copy(common.key);
            key.setDwell(dwell);
            Measurements.add(edit, part, key, readings.stream().map(r -> r.toReading(edit.now())).toList(), common.session, common.instrument, common.at);
        })));
        return f.plan();
    }

    /** Weighings: the columns {@code material} and any two of {@code gross}, {@code tare} and {@code net}, or net alone; {@code at} if there is one. */
    public static ImportPlan weighings(Trial trial, Step only, Instrument balance, Path file, Map<String, String> named, ImportOptions.Decimal decimal)
            throws IOException {
        ForeignImport f = new ForeignImport(file.getFileName().toString(), decimal);
        List<Step> steps = only == null ? trial.getSteps() : List.of(only);
        f.rows(file, named, List.of("material"), List.of("gross", "tare", "net", "at"), (in, row) -> f.weighing(steps, balance, in, row));
        return f.plan();
    }

    private void weighing(List<Step> steps, Instrument balance, CsvIn in, long row) {
        String material = cell(in, "material");
        List<MaterialUse> uses = called(steps.stream().flatMap(s -> s.getUses().stream()).toList(), material);
        if (uses.size() != 1) {
            refuse(row, headers.get("material"), uses.isEmpty() ? "foreign.material" : "foreign.materials", material, steps.stream().flatMap(s -> s.getUses()
                    .stream()).map(Names::of).distinct().toList());
            return;
        }
        int before = refusals.size();
        Double gross = mass(in, row, "gross");
        Double tare = mass(in, row, "tare");
        Double net = mass(in, row, "net");
        Instant at = at(in, row);
        if (refusals.size() > before) {
            return;
        }
        try {
            double grams = Weighings.net(gross, tare, net);
            additions.add(new ImportChange(Kind.ADDED, table, row, Names.path(uses.get(0).eContainer()) + ": " + Names.of(uses.get(0)) + " " + Values.number(grams)
                    + " g", "", "", Values.number(grams)));
        } catch (RefusedException e) {
            refusals.add(new ImportRefusal(table, row, "", e.sentence()));
            return;
        }
        work.add(edit -> {
            Weighing made = Weighings.add(edit, uses.get(0), gross, tare, net, false, balance);
            if (at != null) {
                edit.set(made, ModelPackage.Literals.WEIGHING__AT, at);
            }
        });
    }

    /** Those called so by material, lot or premix; when there is none, those that do what the name says: A, B, filler. */
    private static List<MaterialUse> called(List<MaterialUse> uses, String name) {
        List<MaterialUse> named = uses.stream().filter(u -> called(u, name)).toList();
        return named.isEmpty() ? uses.stream().filter(u -> Find.isRole(u.getRole(), name)).toList() : named;
    }

    private static boolean called(MaterialUse use, String name) {
        return use.getPremix() != null && (name.equalsIgnoreCase(use.getPremix().getCode()) || name.equalsIgnoreCase(use.getPremix().getTitle())) || use.getGrade() != null && (name.equalsIgnoreCase(use.getGrade().getCode()) || name.equalsIgnoreCase(use.getGrade().getName())) || use.getLot() != null
                && name.equalsIgnoreCase(use.getLot().getCode());
    }

    private Double mass(CsvIn in, long row, String column) {
        if (!columns.containsKey(column) || cell(in, column).isEmpty()) {
            return null;
        }
        String typed = number(in, row, column);
        if (typed == null) {
            return null;
        }
        try {
            return QuantityParser.parse(typed, QuantityKind.MASS, org.flexwright.core.field.FieldUnits.unit(QuantityKind.MASS, "g")).in(
                    org.flexwright.core.field.FieldUnits.unit(QuantityKind.MASS, "g")).value();
        } catch (QuantityException e) {
            refuse(row, headers.get(column), "foreign.mass", e.getMessage());
            return null;
        }
    }

    private Instant at(CsvIn in, long row) {
        if (!columns.containsKey("at") || cell(in, "at").isEmpty()) {
            return null;
        }
        try {
            return Instant.parse(cell(in, "at"));
        } catch (DateTimeException e) {
            refusals.add(new ImportRefusal(table, row, headers.get("at"), Message.of(Values.class, "notAMoment", cell(in, "at"))));
            return null;
        }
    }

    private interface Row {
        void take(CsvIn in, long row);
    }

    private void rows(Path file, Map<String, String> named, List<String> needed, List<String> possible, Row take) throws IOException {
        named.keySet().stream().filter(n -> !needed.contains(n) && !possible.contains(n)).findFirst().ifPresent(n -> {
            throw new RefusedException(Message.of(ForeignImport.class, "foreign.meaning", n, needed, possible));
        });
        if (!Files.isRegularFile(file)) {
            throw new RefusedException(Message.of(ForeignImport.class, "json.none", file));
        }
        try (CsvIn in = CsvIn.open(table, () -> Files.newInputStream(file))) {
            for (String meaning : concat(needed, possible)) {
                String name = named.getOrDefault(meaning, meaning);
                int at = find(in.header(), name);
                if (at >= 0) {
                    columns.put(meaning, at);
                    headers.put(meaning, in.header().get(at));
                    Matcher unit = UNIT.matcher(in.header().get(at));
                    units.put(meaning, unit.find() ? unit.group(1).strip() : "");
                } else if (needed.contains(meaning) || named.containsKey(meaning)) {
                    throw new RefusedException(Message.of(ForeignImport.class, "foreign.column", table, name, meaning, in.header()));
                }
            }
            if (in.guessed()) {
                notes.add(Message.of(ForeignImport.class, "import.encoding", table, in.charset().displayName()));
            }
            while (in.next()) {
                if (in.rowNumber() > MOST) {
                    throw new RefusedException(Message.of(ForeignImport.class, "foreign.long", table, Integer.toString(MOST)));
                }
                if (!in.blank()) {
                    take.take(in, in.rowNumber());
                }
            }
        }
    }

    private static List<String> concat(List<String> a, List<String> b) {
        List<String> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    /** The column of that name, with or without its unit. */
    private static int find(List<String> header, String name) {
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).equalsIgnoreCase(name) || UNIT.matcher(header.get(i)).replaceFirst("").strip().equalsIgnoreCase(name)) {
                return i;
            }
        }
        return -1;
    }

    private String cell(CsvIn in, String meaning) {
        String typed = in.cell(columns.get(meaning));
        return typed.isEmpty() ? "" : CellText.read(typed).strip();
    }

    /** A number as a person would type it, with the column's unit when the cell has none; null when it was refused. */
    private String number(CsvIn in, long row, String meaning) {
        String typed = cell(in, meaning);
        if (DOUBTFUL.matcher(typed).matches() && decimal == ImportOptions.Decimal.ASK || typed.indexOf(',') >= 0 && decimal == ImportOptions.Decimal.POINT) {
            refusals.add(new ImportRefusal(table, row, headers.get(meaning), Message.of(TableImport.class, "import.comma", typed)));
            return null;
        }
        if (decimal == ImportOptions.Decimal.COMMA && typed.indexOf('.') >= 0) {
            refusals.add(new ImportRefusal(table, row, headers.get(meaning), Message.of(TableImport.class, "import.point", typed)));
            return null;
        }
        String point = decimal == ImportOptions.Decimal.COMMA ? typed.replace(',', '.') : typed;
        return PLAIN.matcher(point).matches() && !units.get(meaning).isEmpty() ? point + " " + units.get(meaning) : point;
    }

    private void refuse(long row, String column, String key, Object... args) {
        refusals.add(new ImportRefusal(table, row, column, Message.of(ForeignImport.class, key, args)));
    }

    private ImportPlan plan() {
        return new ImportPlan(additions, refusals, notes, edit -> work.forEach(w -> w.accept(edit)));
    }
}
