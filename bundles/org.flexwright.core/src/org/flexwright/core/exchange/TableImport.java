package org.flexwright.core.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.apache.commons.csv.CSVRecord;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;
import org.flexwright.core.Watch;
import org.flexwright.core.Message;
import org.flexwright.core.exchange.ImportChange.Kind;
import org.flexwright.core.exchange.ImportPlan.Slot;
import org.flexwright.core.exchange.Values.NotAValue;
import org.flexwright.core.field.FieldUnits;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.UnknownText;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/**
 * Reads tables as {@link CsvExport} writes them and works out what they would change in a project. Rows are read one after the other;
 * what is as it was is not kept.
 */
public final class TableImport {
    /** How many changes and refusals are listed; the others are counted. */
    public static final int LISTED = 1000;
    private static final int STRIDE = 1 << 9;
    /** So many rows may wait for an owner that comes later. */
    private static final int MOST_WAITING = 100_000;

    private final Tables tables;
    private final Project project;
    private final UnknownText unknown;
    private final Function<EObject, Optional<Message>> frozen;
    private final ImportOptions options;
    private final boolean direct;

    private final List<ImportChange> changes = new ArrayList<>();
    private final Map<Kind, Long> counts = new EnumMap<>(Kind.class);
    private final List<ImportRefusal> refusals = new ArrayList<>();
    private long refused;
    private final List<Message> notes = new ArrayList<>();

    private final Map<String, EObject> present = new HashMap<>();
    private final Map<String, EObject> fresh = new HashMap<>();
    private final Set<EObject> freshObjects = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<EObject> mentioned = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<EClass> complete = new HashSet<>();
    private boolean unreadComplete;
    private final Map<Slot, List<Placed>> lists = new LinkedHashMap<>();
    private final Map<Slot, Object> values = new LinkedHashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final List<EObject> removals = new ArrayList<>();
    private final List<Commas> columnsWithCommas = new ArrayList<>();
    private List<Line> waiting = new ArrayList<>();
    private final Set<EObject> leaving = Collections.newSetFromMap(new IdentityHashMap<>());

    private record Placed(EObject object, int place, long row, String table) {
    }

    private record Link(EObject owner, Column column, String ids, String table, long row) {
    }

    private TableImport(List<DetailsPackage> packages, Project project, UnknownText unknown, Function<EObject, Optional<Message>> frozen,
            ImportOptions options, boolean direct) {
        this.tables = new Tables(packages);
        this.project = project;
        this.unknown = unknown;
        this.frozen = frozen;
        this.options = options;
        this.direct = direct;
    }

    /**
     * Works out what the tables at that place (a folder, a zip file or one table named as in an export) would change; changes nothing.
     * On the thread of the project. Throws {@link RefusedException} when there are no tables, and
     * {@link java.util.concurrent.CancellationException} when it was cancelled.
     */
    public static ImportPlan plan(ProjectSession session, List<DetailsPackage> packages, Path place, ImportOptions options, Watch watch) throws IOException {
        try (TableSource source = TableSource.of(place)) {
            return new TableImport(packages, session.project(), session.unknown(), session::frozen, options, false).run(source, watch);
        }
    }

    /** Makes a new project of exported tables: the same ids, order and values. Throws {@link RefusedException} and makes nothing when anything is refused. */
    public static ProjectSession create(ProjectStore store, List<DetailsPackage> packages, Path place, Path folder, Watch watch) throws IOException {
        ProjectStore.Draft draft = store.draft();
        try (TableSource source = TableSource.of(place)) {
            // an own export is taken as it was, also what a field would not let anybody type
            ImportOptions asItWas = new ImportOptions(false, ImportOptions.Decimal.ASK, false);
            new TableImport(packages, draft.project(), draft.unknown(), o -> Optional.empty(), asItWas, true).run(source, watch).applyDirectly();
        }
        watch.check();
        return store.create(folder, draft);
    }

    private ImportPlan run(TableSource source, Watch watch) throws IOException {
        Walk.each(project, row -> {
            String id = Walk.id(row.object());
            if (id != null) {
                present.put(id, row.object());
            }
        });
        listed(source);
        Progress progress = new Progress(watch, source.size());
        for (Table table : tables.all()) {
            if (source.names().contains(table.name())) {
                table(table, source, progress);
            }
        }
        comeBack();
        columnsWithCommas.forEach(c -> c.settle(this));
        source.names().stream().filter(n -> tables.named(n) == null && !n.equals(CsvExport.TABLES) && !n.equals(CsvExport.COLUMNS))
                .forEach(n -> refuse(n, 0, "", say("import.unknownTable", tables.all().stream().map(Table::name).limit(8).toList())));
        if (direct && Walk.id(project) == null) {
            refuse("project", 0, "", say("import.noProject"));
        }
        removals();
        place();
        link();
        return new ImportPlan(changes, counts, refusals, refused, notes, removals, values);
    }

    /** Rows whose owner came later; what still has none is refused. */
    private void comeBack() {
        int before;
        do {
            List<Line> again = waiting;
            before = again.size();
            waiting = new ArrayList<>();
            again.forEach(Line::take);
        } while (!waiting.isEmpty() && waiting.size() < before);
        List<Line> lost = waiting;
        waiting = null;
        lost.forEach(Line::take);
    }

    /** An export names its empty tables: there is nothing of those classes. */
    private void listed(TableSource source) throws IOException {
        if (!source.names().contains(CsvExport.TABLES)) {
            return;
        }
        try (CsvIn in = CsvIn.open(CsvExport.TABLES, () -> source.open(CsvExport.TABLES))) {
            int name = in.header().indexOf("table");
            int rows = in.header().indexOf("rows");
            while (name >= 0 && rows >= 0 && in.next()) {
                Table t = tables.named(in.cell(name));
                if (t != null && in.cell(rows).strip().equals("0") && !source.names().contains(t.name())) {
                    completed(t);
                } else if (!in.cell(rows).strip().equals("0") && !source.names().contains(in.cell(name)) && !in.blank()) {
                    if (direct) {
                        refuse(in.cell(name), 0, "", say("import.absentTable", in.cell(rows)));
                    } else {
                        notes.add(say("import.leftOut", in.cell(name), in.cell(rows)));
                    }
                }
            }
        }
    }

    private void completed(Table t) {
        if (t.type() == null) {
            unreadComplete = true;
        } else {
            complete.add(t.type());
        }
    }

    private static final class Progress {
        final Watch watch;
        final long whole;
        long before;
        long rows;

        Progress(Watch watch, long whole) {
            this.watch = watch;
            this.whole = whole;
        }

        void row(long position) {
            if (rows++ % STRIDE == 0) {
                watch.check();
                watch.done(Math.min(before + position, whole), whole);
            }
        }

        void tableDone(long size) {
            before += size;
        }
    }

    // --- one table

    private void table(Table table, TableSource source, Progress progress) throws IOException {
        CsvIn opened;
        try {
            opened = CsvIn.open(table.name(), () -> source.open(table.name()));
        } catch (RefusedException e) {
            refuse(table.name(), 0, "", e.sentence());
            return;
        }
        try (CsvIn in = opened) {
            said(table, in);
            Heads heads = heads(table, in);
            if (heads == null) {
                return;
            }
            completed(table);
            Commas commas = new Commas(table.name(), options.decimal());
            columnsWithCommas.add(commas);
            while (in.next()) {
                progress.row(in.position());
                if (in.blank()) {
                    continue;
                }
                if (in.cells() > in.header().size() && extra(in)) {
                    refuse(table.name(), in.rowNumber(), "", say("import.tooManyCells", in.cells(), in.header().size()));
                    continue;
                }
                new Line(table, heads, in.rowNumber(), in.row(), commas).take();
            }
            progress.tableDone(in.position());
        } catch (RefusedException e) {
            refuse(table.name(), 0, "", e.sentence());
        }
    }

    private static boolean extra(CsvIn in) {
        for (int i = in.header().size(); i < in.cells(); i++) {
            if (!in.cell(i).isBlank()) {
                return true;
            }
        }
        return false;
    }

    private void said(Table table, CsvIn in) {
        if (in.guessed()) {
            notes.add(say("import.encoding", table.name(), in.charset().displayName()));
        } else if (!in.charset().equals(java.nio.charset.StandardCharsets.UTF_8)) {
            notes.add(say("import.otherEncoding", table.name(), in.charset().displayName()));
        }
        if (in.separator() != ',') {
            notes.add(say("import.separator", table.name(), in.separator() == '\t' ? say("tab").text() : String.valueOf(in.separator())));
        }
    }

    /** Where a column stands, and the unit its numbers are in when that is not the column's own. */
    private record Head(int at, Unit from) {
    }

    /** The columns that are there; those that tell the row, by their kind. */
    private static final class Heads {
        final Map<Column, Head> columns;
        final int[] at = new int[Column.Kind.values().length];
        /** Columns of values and references, which are most. */
        final List<Map.Entry<Column, Head>> content = new ArrayList<>();
        /** Which feature of an owner's class is meant by what stands in the column in. */
        final Map<EClass, Map<String, EReference>> features = new HashMap<>();

        Heads(Map<Column, Head> columns) {
            this.columns = columns;
            java.util.Arrays.fill(at, -1);
            columns.entrySet().forEach(e -> {
                Column.Kind kind = e.getKey().kind();
                if (kind == Column.Kind.VALUE || kind == Column.Kind.REFERENCE) {
                    content.add(e);
                } else {
                    at[kind.ordinal()] = e.getValue().at();
                }
            });
        }
    }

    private Heads heads(Table table, CsvIn in) {
        Map<Column, Head> heads = new LinkedHashMap<>();
        boolean good = true;
        for (int i = 0; i < in.header().size(); i++) {
            String typed = in.header().get(i);
            int bracket = typed.endsWith("]") ? typed.lastIndexOf('[') : -1;
            String name = (bracket < 0 ? typed : typed.substring(0, bracket)).strip();
            Column column = table.columns().stream().filter(c -> c.name().equals(name)).findFirst()
                    .orElseGet(() -> table.columns().stream().filter(c -> c.name().equalsIgnoreCase(name)).findFirst().orElse(null));
            if (column == null) {
                notes.add(say("import.unknownColumn", table.name(), typed.isEmpty() ? say("nameless", i + 1).text() : typed));
                continue;
            }
            if (heads.containsKey(column)) {
                refuse(table.name(), 1, name, say("import.columnTwice"));
                good = false;
                continue;
            }
            String unit = bracket < 0 ? "" : typed.substring(bracket + 1, typed.length() - 1).strip();
            Unit from = null;
            if (!unit.isEmpty() && !unit.equals(column.unit())) {
                QuantityKind kind = column.unit().isEmpty() ? null : column.field().kind();
                from = kind == null ? null : Units.find(kind, unit).orElse(null);
                if (from == null) {
                    refuse(table.name(), 1, typed, column.unit().isEmpty() ? say("import.noUnit", name, unit)
                            : say("import.wrongUnit", unit, kind.humanName(), column.unit()));
                    good = false;
                    continue;
                }
                notes.add(say("import.converted", table.name(), name, unit, column.unit()));
            }
            heads.put(column, new Head(i, from));
        }
        if (table.identified() ? table.type() != ModelPackage.Literals.PROJECT && table.column(Column.Kind.ID).filter(heads::containsKey).isEmpty()
                && table.column(Column.Kind.OWNER).filter(heads::containsKey).isEmpty() : table.column(Column.Kind.OWNER).filter(heads::containsKey).isEmpty()) {
            refuse(table.name(), 1, "", say("import.noKey", table.identified() ? "id" : "owner"));
            good = false;
        }
        return good ? new Heads(heads) : null;
    }

    /** One row. */
    private final class Line {
        private final Table table;
        private final Heads heads;
        private final long row;
        private final CSVRecord cells;
        private final Commas commas;
        private EObject object;
        private boolean isFresh;
        private boolean frozenSaid;
        private EObject ownerOfAdded;

        Line(Table table, Heads heads, long row, CSVRecord cells, Commas commas) {
            this.table = table;
            this.heads = heads;
            this.row = row;
            this.cells = cells;
            this.commas = commas;
        }

        private String cell(Column.Kind kind) {
            int at = heads.at[kind.ordinal()];
            return at < 0 || at >= cells.size() ? "" : cells.get(at);
        }

        private String cell(Head head) {
            return head.at() < cells.size() ? cells.get(head.at()) : "";
        }

        void take() {
            long before = refused;
            if (table.type() == ModelPackage.Literals.PROJECT) {
                project();
            } else if (table.identified()) {
                identified();
            } else {
                placed();
            }
            if (object == null || refused > before) {
                return;
            }
            if (!mentioned.add(object)) {
                refuse(table.name(), row, "", say("import.rowTwice"));
                return;
            }
            if (table.type() != null) {
                cells();
            }
            if (ownerOfAdded != null) {
                added(table.name(), row, ownerOfAdded, object);
            }
        }

        private void project() {
            String id = cell(Column.Kind.ID).strip();
            if (direct) {
                if (id.isEmpty()) {
                    refuse(table.name(), row, "id", say("import.noProject"));
                    return;
                }
                TableImport.this.project.setId(CellText.read(id));
            } else if (!id.isEmpty() && !CellText.read(id).equals(Walk.id(TableImport.this.project))) {
                refuse(table.name(), row, "id", say("import.otherProject", id));
                return;
            }
            object = TableImport.this.project;
            isFresh = direct;
        }

        private void identified() {
            String typed = cell(Column.Kind.ID);
            String id = typed.isEmpty() ? null : CellText.read(typed);
            EObject known = id == null ? null : present.get(id);
            if (id != null && fresh.containsKey(id)) {
                refuse(table.name(), row, "id", say("import.idTwice", id));
                return;
            }
            if (known != null) {
                if (known.eClass() != table.type()) {
                    refuse(table.name(), row, "id", say("import.otherClass", id, Names.kind(known).toLowerCase(java.util.Locale.ROOT)));
                    return;
                }
                object = known;
                where(known);
                return;
            }
            if (id != null && (id.isBlank() || id.indexOf(' ') >= 0 || id.indexOf('/') >= 0 || !goodText(id))) {
                refuse(table.name(), row, "id", say("import.badId", id));
                return;
            }
            EObject made = EcoreUtil.create(table.type());
            if (id != null) {
                made.eSet(table.type().getEIDAttribute(), id);
            }
            if (add(made) && id != null) {
                fresh.put(id, made);
            }
        }

        private boolean goodText(String id) {
            try {
                Values.read(table.type().getEIDAttribute(), id);
                return true;
            } catch (NotAValue e) {
                return false;
            }
        }

        /** A known object stays with its owner; its place may be another. */
        private void where(EObject known) {
            String owner = cell(Column.Kind.OWNER);
            String feature = cell(Column.Kind.IN).strip();
            EObject is = known.eContainer();
            if (!owner.isEmpty() && find(CellText.read(owner)) != is || !feature.isEmpty() && !feature.equals(known.eContainingFeature().getName())) {
                refuse(table.name(), row, "owner", say("import.moved", Names.path(is)));
                return;
            }
            note(is, known.eContainmentFeature(), known);
        }

        private void note(EObject owner, EReference feature, EObject child) {
            if (!feature.isMany()) {
                return;
            }
            lists.computeIfAbsent(new Slot(owner, feature), s -> new ArrayList<>()).add(new Placed(child, placeCell(), row, table.name()));
        }

        /** The place from 1; 0 when none is given. */
        private int placeCell() {
            String typed = cell(Column.Kind.PLACE).strip();
            if (typed.isEmpty()) {
                return 0;
            }
            Double d = Values.number(typed);
            if (d == null || d < 1 || d != Math.rint(d) || d > Integer.MAX_VALUE) {
                refuse(table.name(), row, "place", say("import.place", typed));
                return 0;
            }
            return d.intValue();
        }

        private EReference feature(EObject owner) {
            String name = cell(Column.Kind.IN).strip();
            EReference known = heads.features.computeIfAbsent(owner.eClass(), c -> new HashMap<>()).get(name);
            if (known != null) {
                return known;
            }
            EReference found = search(owner, name);
            if (found != null) {
                heads.features.get(owner.eClass()).put(name, found);
            }
            return found;
        }

        private EReference search(EObject owner, String name) {
            List<EReference> fitting = owner.eClass().getEAllContainments().stream().filter(r -> !Tables.inOwnersRow(r))
                    .filter(r -> table.type() == null ? r.getEReferenceType() == org.eclipse.emf.ecore.EcorePackage.Literals.EOBJECT
                            : fits(r, table.type())).toList();
            if (name.isEmpty() && fitting.size() == 1) {
                return fitting.get(0);
            }
            EReference found = fitting.stream().filter(r -> r.getName().equals(name)).findFirst().orElse(null);
            if (found == null) {
                refuse(table.name(), row, "in", say("import.in", name, Names.kind(owner).toLowerCase(java.util.Locale.ROOT), fitting.stream().map(
                        EReference::getName).toList()));
            }
            return found;
        }

        private static boolean fits(EReference r, EClass type) {
            return r.getEReferenceType() == org.eclipse.emf.ecore.EcorePackage.Literals.EOBJECT
                    ? type.getEPackage() != ModelPackage.eINSTANCE : r.getEReferenceType().isSuperTypeOf(type);
        }

        private EObject owner() {
            String typed = cell(Column.Kind.OWNER);
            EObject owner = typed.isEmpty() ? null : find(CellText.read(typed));
            if (owner == null && !typed.isEmpty() && waiting != null && waiting.size() < MOST_WAITING) {
                waiting.add(this);
            } else if (owner == null) {
                refuse(table.name(), row, "owner", typed.isEmpty() ? say("import.ownerNone") : say("import.owner", typed));
            }
            return owner;
        }

        /** Puts a new object where its row says. */
        private boolean add(EObject made) {
            EObject owner = owner();
            EReference feature = owner == null ? null : feature(owner);
            return feature != null && add(made, owner, feature);
        }

        private boolean add(EObject made, EObject owner, EReference feature) {
            if (!thaw(owner)) {
                return false;
            }
            object = made;
            isFresh = true;
            freshObjects.add(made);
            if (feature.isMany()) {
                note(owner, feature, made);
            } else if (freshObjects.contains(owner) || direct && owner == TableImport.this.project) {
                if (owner.eGet(feature) != null) {
                    refuse(table.name(), row, "owner", say("import.onlyOne", feature.getName()));
                    return false;
                }
                owner.eSet(feature, made);
            } else {
                if (values.put(new Slot(owner, feature), made) != null) {
                    refuse(table.name(), row, "owner", say("import.onlyOne", feature.getName()));
                    return false;
                }
            }
            ownerOfAdded = owner;
            return true;
        }

        /** A row without an id: told by owner and place. */
        private void placed() {
            EObject owner = owner();
            if (owner == null) {
                return;
            }
            if (table.type() == null && cell(Column.Kind.IN).isBlank()) {
                beside(owner);
                return;
            }
            EReference feature = feature(owner);
            if (feature == null) {
                return;
            }
            int place = feature.isMany() ? placeCell() : 0;
            boolean ownerFresh = freshObjects.contains(owner) || direct && owner == TableImport.this.project;
            EObject there = ownerFresh ? null : there(owner, feature, place);
            if (table.type() == null) {
                unreadable(owner, feature, there);
                return;
            }
            if (there != null && there.eClass() == table.type()) {
                object = there;
                note(owner, feature, there);
                return;
            }
            add(EcoreUtil.create(table.type()), owner, feature);
        }

        private EObject there(EObject owner, EReference feature, int place) {
            if (!feature.isMany()) {
                return (EObject) owner.eGet(feature);
            }
            List<?> all = (List<?>) owner.eGet(feature);
            return place < 1 || place > all.size() ? null : (EObject) all.get(place - 1);
        }

        private void unreadable(EObject owner, EReference feature, EObject there) {
            String xml = contentCell();
            if (xml == null) {
                return;
            }
            if (there != null && UnknownText.isUnknown(there) && unknown.text(there).equals(xml)) {
                object = there;
                note(owner, feature, there);
                return;
            }
            try {
                add(unknown.read(xml), owner, feature);
            } catch (RefusedException e) {
                refuse(table.name(), row, "content", e.sentence());
            }
        }

        private void beside(EObject owner) {
            String xml = contentCell();
            if (xml == null || unknown.beside(owner).filter(xml::equals).isPresent()) {
                return;
            }
            if (!freshObjects.contains(owner) && !(direct && owner == TableImport.this.project)) {
                refuse(table.name(), row, "content", say("import.beside"));
                return;
            }
            try {
                unknown.readBeside(owner, xml);
            } catch (RefusedException e) {
                refuse(table.name(), row, "content", e.sentence());
            }
        }

        private String contentCell() {
            String typed = cell(Column.Kind.CONTENT);
            if (typed.isEmpty()) {
                refuse(table.name(), row, "content", say("import.noContent"));
                return null;
            }
            return lineEnds(CellText.read(typed));
        }

        private static String lineEnds(String xml) {
            return xml.replace("\r\n", "\n");
        }

        // --- values

        private boolean thaw(EObject touched) {
            if (direct || freshObjects.contains(touched)) {
                return true;
            }
            Optional<Message> why = frozen.apply(touched);
            if (why.isPresent() && !frozenSaid) {
                frozenSaid = true;
                refuse(table.name(), row, "", why.get());
            }
            return why.isEmpty();
        }

        private void cells() {
            EReference inside = null;
            List<Map.Entry<Column, Head>> group = new ArrayList<>();
            for (Map.Entry<Column, Head> e : heads.content) {
                Column c = e.getKey();
                if (c.inside() != null) {
                    inside = c.inside();
                    group.add(e);
                } else if (c.kind() == Column.Kind.REFERENCE) {
                    reference(c, cell(e.getValue()));
                } else {
                    value(object, c, e.getValue());
                }
            }
            if (inside != null) {
                inside(inside, group);
            }
        }

        private void inside(EReference r, List<Map.Entry<Column, Head>> group) {
            EObject held = (EObject) object.eGet(r);
            boolean empty = group.stream().allMatch(e -> cell(e.getValue()).isEmpty());
            if (empty && held == null) {
                return;
            }
            if (empty) {
                long all = table.columns().stream().filter(c -> c.inside() == r).count();
                if (group.size() == all && thaw(object)) {
                    values.put(new Slot(object, r), null);
                    changed(object, r.getName(), Names.kind(held), "");
                }
                return;
            }
            if (held != null) {
                group.forEach(e -> value(held, e.getKey(), e.getValue()));
                return;
            }
            EObject made = EcoreUtil.create(r.getEReferenceType());
            freshObjects.add(made);
            group.forEach(e -> value(made, e.getKey(), e.getValue()));
            if (isFresh) {
                object.eSet(r, made);
            } else if (thaw(object)) {
                values.put(new Slot(object, r), made);
                changed(object, r.getName(), "", Names.kind(made));
            }
        }

        private void value(EObject on, Column c, Head head) {
            String typed = cell(head);
            if (typed.isEmpty() && isFresh) {
                return;
            }
            try {
                Object value = read(on, c, typed, head.from());
                if (value != Commas.LATER) {
                    set(on, c, value, typed);
                }
            } catch (NotAValue e) {
                refuse(table.name(), row, c.header(), e.sentence());
            }
        }

        private Object read(EObject on, Column c, String typed, Unit from) throws NotAValue {
            if (typed.isEmpty()) {
                return c.many() ? List.of() : c.attribute().getDefaultValue();
            }
            if (c.many() || Values.isText(c.attribute())) {
                return Values.read(c.attribute(), CellText.read(typed));
            }
            String plain = CellText.read(typed).strip();
            if (plain.isEmpty()) {
                return c.attribute().getDefaultValue();
            }
            if (Values.isNumber(c.attribute())) {
                if (plain.indexOf(',') >= 0) {
                    return commas.later(this, on, c, plain, from);
                }
                Double number = Values.number(plain);
                if (number == null) {
                    throw new NotAValue("notANumber", typed);
                }
                if (options.decimal() == ImportOptions.Decimal.COMMA && plain.indexOf('.') >= 0) {
                    throw new NotAValue(say("import.point", plain));
                }
                commas.point(c, plain);
                return converted(c, number, from);
            }
            return Values.parse(c.attribute(), plain);
        }

        void set(EObject on, Column c, Object value, String typed) {
            Object now = on.eGet(c.feature());
            if (Objects.equals(now, value)) {
                return;
            }
            if (options.bounds()) {
                try {
                    Values.bounds(c.field(), value);
                } catch (NotAValue e) {
                    refuse(table.name(), row, c.header(), e.sentence());
                    return;
                }
            }
            if (freshObjects.contains(on) || direct) {
                on.eSet(c.feature(), value);
            } else if (thaw(on)) {
                String from = Values.of(on, c.attribute());
                values.put(new Slot(on, c.feature()), value);
                changed(on, c.header(), from == null ? "" : from, typed);
            }
        }

        private void reference(Column c, String typed) {
            String ids = typed.isEmpty() ? "" : CellText.read(typed).strip();
            String now = isFresh ? "" : CsvExport.ids(object.eGet(c.feature()));
            if (!ids.equals(now) && thaw(object)) {
                links.add(new Link(object, c, ids, table.name(), row));
                if (!isFresh) {
                    changed(object, c.header(), now, ids);
                }
            }
        }

        private void changed(EObject on, String column, String from, String to) {
            TableImport.this.changed(table.name(), row, on, column, from, to);
        }

        long row() {
            return row;
        }
    }

    private static Object converted(Column c, double number, Unit from) throws NotAValue {
        if (from == null) {
            return number;
        }
        double v = new org.flexwright.quantity.Quantity(number, from).in(FieldUnits.unit(c.field().kind(), c.unit())).value();
        if (!Double.isFinite(v)) {
            throw new NotAValue("notANumber", Values.number(number));
        }
        return v;
    }

    /** Numbers with a comma, looked at when the whole column is known: 2,5 can only be two and a half, 1,250 could be both. */
    private static final class Commas {
        // by identity: a column is a record, and its hash goes through all that describes its field
        static final Object LATER = new Object();
        private final String table;
        private final ImportOptions.Decimal decimal;
        private final Map<Column, List<Waiting>> waiting = new IdentityHashMap<>();
        private final Set<Column> points = Collections.newSetFromMap(new IdentityHashMap<>());
        private final Set<Column> sure = Collections.newSetFromMap(new IdentityHashMap<>());

        private record Waiting(Line line, long row, EObject on, String typed, Unit from) {
        }

        Commas(String table, ImportOptions.Decimal decimal) {
            this.table = table;
            this.decimal = decimal;
        }

        void point(Column c, String typed) {
            if (typed.indexOf('.') >= 0) {
                points.add(c);
            }
        }

        Object later(Line line, EObject on, Column c, String typed, Unit from) throws NotAValue {
            int comma = typed.indexOf(',');
            Double number = typed.indexOf(',', comma + 1) >= 0 || typed.indexOf('.') >= 0 ? null : Values.number(typed.replace(',', '.'));
            if (number == null || decimal == ImportOptions.Decimal.POINT) {
                throw new NotAValue("notANumber", typed);
            }
            if (decimal == ImportOptions.Decimal.COMMA) {
                return converted(c, number, from);
            }
            if (!typed.matches("[+-]?[1-9]\\d{0,2},\\d{3}")) {
                sure.add(c);
            }
            waiting.computeIfAbsent(c, k -> new ArrayList<>()).add(new Waiting(line, line.row(), on, typed, from));
            return LATER;
        }

        void settle(TableImport to) {
            waiting.forEach((c, all) -> {
                Waiting first = all.get(0);
                if (points.contains(c)) {
                    to.refuse(table, first.row, c.header(), say("import.bothSigns", first.typed));
                } else if (!sure.contains(c)) {
                    to.refuse(table, first.row, c.header(), say("import.comma", first.typed));
                } else {
                    for (Waiting w : all) {
                        try {
                            w.line.set(w.on, c, converted(c, Values.number(w.typed.replace(',', '.')), w.from), w.typed);
                        } catch (NotAValue e) {
                            to.refuse(table, w.row, c.header(), e.sentence());
                        }
                    }
                    to.notes.add(say("import.commaTaken", table, c.header()));
                }
            });
        }
    }

    // --- the whole

    private EObject find(String address) {
        if (address.equals("/")) {
            return project;
        }
        String[] parts = address.split("/");
        EObject o = parts.length == 0 || parts[0].isEmpty() ? project : fresh.getOrDefault(parts[0], present.get(parts[0]));
        for (int i = 1; i < parts.length && o != null; i++) {
            o = step(o, parts[i]);
        }
        return o;
    }

    private EObject step(EObject owner, String part) {
        int dot = part.lastIndexOf('.');
        String name = dot < 0 ? part : part.substring(0, dot);
        if (!(owner.eClass().getEStructuralFeature(name) instanceof EReference r) || !r.isContainment() || r.isMany() == dot < 0) {
            return null;
        }
        Slot slot = new Slot(owner, r);
        if (!r.isMany()) {
            return values.get(slot) instanceof EObject made ? made : settled((EObject) owner.eGet(r));
        }
        Double index = Values.number(part.substring(dot + 1));
        if (index == null) {
            return null;
        }
        for (Placed p : lists.getOrDefault(slot, List.of())) {
            if (p.place == index.intValue() + 1) {
                return p.object;
            }
        }
        List<?> all = (List<?>) owner.eGet(r);
        return index < 0 || index >= all.size() ? null : settled((EObject) all.get(index.intValue()));
    }

    /** What is there already may still be replaced by a row to come, unless a row has spoken of it or none is left. */
    private EObject settled(EObject there) {
        return there == null || waiting == null || mentioned.contains(there) || freshObjects.contains(there) ? there : null;
    }

    /** What a class's table does not hold any more. */
    private void removals() {
        if (!options.remove() || direct) {
            return;
        }
        Walk.each(project, row -> {
            EObject o = row.object();
            boolean whole = UnknownText.isUnknown(o) ? unreadComplete : complete.contains(o.eClass());
            if (row.in() != null && whole && !mentioned.contains(o)) {
                leaving.add(o);
                // a single one that is replaced goes by itself; what goes with its owner needs no word of its own
                boolean withOwner = leaving.contains(o.eContainer());
                boolean replaced = !row.in().isMany() && values.get(new Slot(o.eContainer(), row.in())) != null;
                if (!withOwner && !replaced) {
                    Optional<Message> why = frozen.apply(o.eContainer());
                    if (why.isEmpty()) {
                        why = frozen.apply(o);
                    }
                    if (why.isPresent()) {
                        refuse(tables.of(o.eClass()).name(), 0, "", why.get());
                    } else {
                        removals.add(o);
                        change(new ImportChange(Kind.REMOVED, (UnknownText.isUnknown(o) ? tables.unread() : tables.of(o.eClass())).name(), 0, about(o), "", "", ""));
                    }
                }
            } else if (leaving.contains(o.eContainer())) {
                leaving.add(o);
                if (mentioned.contains(o)) {
                    refuse(tables.of(o.eClass()).name(), 0, "", say("import.ownerGoes", Names.path(o.eContainer()), about(o)));
                }
            }
        });
    }

    /** Brings every list that was spoken of into its order. */
    private void place() {
        lists.forEach((slot, placed) -> {
            EObject owner = slot.owner();
            if (leaving.contains(owner)) {
                return;
            }
            @SuppressWarnings("unchecked")
            List<EObject> now = (List<EObject>) owner.eGet(slot.feature());
            List<Placed> ordered = new ArrayList<>(placed);
            boolean inOrder = true;
            for (int i = 1; i < ordered.size() && inOrder; i++) {
                inOrder = ordered.get(i - 1).place <= ordered.get(i).place && ordered.get(i).place > 0;
            }
            if (!inOrder) {
                ordered.sort(Comparator.comparingInt(p -> p.place == 0 ? Integer.MAX_VALUE : p.place));
            }
            for (int i = 1; i < ordered.size(); i++) {
                Placed p = ordered.get(i);
                if (p.place > 0 && p.place == ordered.get(i - 1).place) {
                    refuse(p.table, p.row, "place", say("import.placeTwice", Integer.toString(p.place)));
                }
            }
            boolean ownerFresh = freshObjects.contains(owner) || direct && owner == project;
            if (ownerFresh) {
                InternalEList<EObject> list = (InternalEList<EObject>) now;
                ordered.forEach(p -> list.addUnique(p.object));
                return;
            }
            Set<EObject> spoken = Collections.newSetFromMap(new IdentityHashMap<>());
            // what has no place of its own stays where it is, or comes last
            ordered.stream().filter(p -> p.place > 0 || freshObjects.contains(p.object)).forEach(p -> spoken.add(p.object));
            List<EObject> after = new ArrayList<>();
            for (EObject o : now) {
                if (!spoken.contains(o) && !leaving.contains(o)) {
                    after.add(o);
                }
            }
            for (Placed p : ordered) {
                if (spoken.contains(p.object)) {
                    after.add(p.place == 0 ? after.size() : Math.min(p.place - 1, after.size()), p.object);
                }
            }
            List<EObject> staying = now.stream().filter(o -> !leaving.contains(o)).toList();
            if (!same(staying, after)) {
                Optional<Message> why = frozen.apply(owner);
                if (why.isPresent()) {
                    refuse(placed.get(0).table, placed.get(0).row, "place", why.get());
                    return;
                }
                values.put(slot, after);
                List<EObject> kept = after.stream().filter(o -> !freshObjects.contains(o)).toList();
                if (!same(staying, kept)) {
                    change(new ImportChange(Kind.MOVED, placed.get(0).table, placed.get(0).row, Names.path(owner), slot.feature().getName(), "", ""));
                }
            }
        });
    }

    private static boolean same(List<EObject> a, List<EObject> b) {
        if (a.size() != b.size()) {
            return false;
        }
        for (int i = 0; i < a.size(); i++) {
            if (a.get(i) != b.get(i)) {
                return false;
            }
        }
        return true;
    }

    /** References may go to rows that came later. */
    private void link() {
        for (Link l : links) {
            EStructuralFeature f = l.column.feature();
            List<EObject> targets = new ArrayList<>();
            for (String id : l.ids.isEmpty() ? new String[0] : l.ids.split("\\s+")) {
                EObject target = fresh.getOrDefault(id, present.get(id));
                if (target == null || leaving.contains(target)) {
                    refuse(l.table, l.row, l.column.header(), say("import.dangling", id));
                } else if (!f.getEType().isInstance(target)) {
                    refuse(l.table, l.row, l.column.header(), say("import.wrongTarget", id, Names.kind(target).toLowerCase(java.util.Locale.ROOT), ((EClass) f
                            .getEType()).getName()));
                } else if (!targets.contains(target)) {
                    targets.add(target);
                }
            }
            if (targets.size() > 1 && !f.isMany()) {
                refuse(l.table, l.row, l.column.header(), say("import.oneId"));
                continue;
            }
            Object value = f.isMany() ? targets : targets.isEmpty() ? null : targets.get(0);
            if (freshObjects.contains(l.owner) || direct) {
                if (refused == 0) {
                    l.owner.eSet(f, value);
                }
            } else {
                values.put(new Slot(l.owner, f), value);
            }
        }
    }

    private void added(String table, long row, EObject owner, EObject made) {
        change(Kind.ADDED, () -> new ImportChange(Kind.ADDED, table, row, Names.path(owner) + ": " + called(made), "", "", ""));
    }

    private void changed(String table, long row, EObject on, String column, String from, String to) {
        change(Kind.CHANGED, () -> new ImportChange(Kind.CHANGED, table, row, about(on), column, from, to));
    }

    /** A new thing by its kind, and its name when it has one. */
    private static String called(EObject made) {
        if (UnknownText.isUnknown(made)) {
            return say("details").text();
        }
        String kind = Names.kind(made).toLowerCase(java.util.Locale.ROOT);
        String name = Names.of(made);
        return name.toLowerCase(java.util.Locale.ROOT).contains(kind) ? kind : kind + " " + name;
    }

    private static String about(EObject o) {
        String path = Names.path(o);
        String kind = UnknownText.isUnknown(o) ? say("details").text() : Names.kind(o).toLowerCase(java.util.Locale.ROOT);
        return path.endsWith(kind) ? path : path + " (" + kind + ")";
    }

    private void change(ImportChange c) {
        change(c.kind(), () -> c);
    }

    private void change(Kind kind, java.util.function.Supplier<ImportChange> c) {
        counts.merge(kind, 1L, Long::sum);
        if (changes.size() < LISTED) {
            changes.add(c.get());
        }
    }

    private void refuse(String table, long row, String column, Message why) {
        refused++;
        if (refusals.size() < LISTED) {
            refusals.add(new ImportRefusal(table, row, column, why));
        }
    }

    private static Message say(String key, Object... args) {
        return Message.of(TableImport.class, key, args);
    }
}
