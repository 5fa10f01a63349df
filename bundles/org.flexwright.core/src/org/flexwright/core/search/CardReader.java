package org.flexwright.core.search;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.FeatureMap;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.field.Choice;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldUnits;
import org.flexwright.core.field.ModelFields;
import org.flexwright.core.label.LabelCode;
import org.flexwright.core.label.LabelException;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.Acknowledgement;
import org.flexwright.model.Attachment;
import org.flexwright.model.Batch;
import org.flexwright.model.BenchNote;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.Censoring;
import org.flexwright.model.Decision;
import org.flexwright.model.Entry;
import org.flexwright.model.Identified;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
import org.flexwright.model.Part;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Provenance;
import org.flexwright.model.Reading;
import org.flexwright.model.Recipe;
import org.flexwright.model.RunInput;
import org.flexwright.model.RunResult;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.StopOverride;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;

/**
 * Reads what can be found of a thing, on the model thread. It knows the project's own classes where they need care and everything else, plugins'
 * details above all, by their field descriptions; details of absent plugins by the texts in them.
 */
final class CardReader {
    /** What is bookkeeping, or is read elsewhere in a better form. */
    private static final Set<String> SKIPPED = Set.of("id", "sha256", "path", "inputHash", "subject", "journalSeq", "formatVersion", "writtenBy", "invented", "nsURI",
            "boundTo", "origin", "kind", "property", "version", "programVersion", "prompt", "rule", "query", "typedAs", "route", "sheetSource", "ownSource",
            "failed", "partsBy", "partsOf", "pieceKind", "role", "calculation");
    /** Enumerations of core whose words people look for. */
    private static final Set<EAttribute> WORDS = Set.of(ModelPackage.Literals.TRIAL__STATE, ModelPackage.Literals.DECISION__WORD, ModelPackage.Literals.BENCH_NOTE__KIND,
            ModelPackage.Literals.NEED__IMPORTANCE);
    /** What people write in sentences. */
    private static final Set<String> SAID = Set.of("note", "idea", "conclusion", "stateReason", "reason", "failReason", "caption", "text", "job", "limits", "leftOut",
            "sortedAs", "changes", "release", "condition", "title", "open", "cupLabel", "refusal");
    private static final Label KIND = new Label("Kind", "", false);
    private static final Label CODE = new Label("Code", "", false);

    private final Registries registries;
    private final ZoneId zone;
    private final WrittenNumbers written;
    private final Map<EClass, List<Known>> known = new ConcurrentHashMap<>();
    private final Map<Label, Label> labels = new ConcurrentHashMap<>();

    CardReader(Registries registries, ZoneId zone, UnitWords units) {
        this.registries = registries;
        this.zone = zone;
        this.written = new WrittenNumbers(units);
    }

    /** An attribute with its field and unit. */
    private record Known(EAttribute attribute, FieldDescriptor field, Label label, Unit unit) {
    }

    /** The things of a project that have a card of their own. */
    static List<EObject> things(Project project) {
        List<EObject> things = new ArrayList<>();
        things.add(project);
        project.eContents().forEach(thing -> {
            if (ThingKind.of(thing).isPresent()) {
                things.add(thing);
            }
            if (thing instanceof MaterialGrade grade) {
                things.addAll(grade.getLots());
            }
        });
        return things;
    }

    /** Everything of one thing. */
    Card read(EObject thing) {
        Card.Maker card = new Card.Maker(id(thing), ThingKind.of(thing).orElseThrow());
        String code = thing instanceof Recipe recipe ? Names.tab(recipe) : Names.code(thing);
        card.named(code, Names.of(thing));
        card.text(KIND, -1, Names.kind(thing));
        date(card, thing);
        summary(card, thing);
        sticker(card, thing, -1);
        own(card, thing);
        new Walk(card).object(thing, -1);
        return card.card();
    }

    /** Stable address of a thing of the project. */
    static String id(EObject thing) {
        return thing instanceof Project ? "/" : Objects.requireNonNullElse(((Identified) thing).getId(), "");
    }

    private void date(Card.Maker card, EObject thing) {
        switch (thing) {
            case Trial trial -> {
                dated(card, trial.getMadeAt(), "made");
                dated(card, trial.getContactAt(), "made");
                dated(card, trial.getSteps().stream().map(Step::getStartedAt).filter(Objects::nonNull).min(Instant::compareTo).orElse(null), "begun");
                dated(card, trial.getCreatedAt(), "planned");
            }
            case Recipe recipe -> dated(card, recipe.getFrozenAt(), "frozen");
            case TargetSheet sheet -> dated(card, sheet.getFrozenAt(), "frozen");
            case Session session -> dated(card, session.getAt(), "held");
            case Batch batch -> dated(card, batch.getCreatedAt(), "planned");
            case Premix premix -> dated(card, premix.getMadeAt(), "made");
            case Attachment file -> dated(card, file.getAddedAt(), "added");
            case StopOverride override -> dated(card, override.getAt(), "decided");
            case Acknowledgement tick -> dated(card, tick.getAt(), "read");
            case Specimen piece -> dated(card, piece.getMadeAt(), "made");
            case Project project -> dated(card, project.getCreatedAt(), "begun");
            case Mould mould -> card.dated(mould.getMadeOn(), "made");
            case Lot lot -> card.dated(lot.getOpened(), "opened");
            default -> {
            }
        }
    }

    private void dated(Card.Maker card, Instant at, String word) {
        card.dated(at == null ? null : day(at), word);
    }

    /** The day of a moment; moments beyond all calendars count as the nearest one. */
    private LocalDate day(Instant at) {
        try {
            return LocalDate.ofInstant(at, zone);
        } catch (java.time.DateTimeException e) {
            return at.isBefore(Instant.EPOCH) ? LocalDate.MIN : LocalDate.MAX;
        }
    }

    private void summary(Card.Maker card, EObject thing) {
        switch (thing) {
            case Trial trial -> card.line(first(trial.getConclusion(), trial.getStateReason(), trial.getIdea(), trial.getNote()));
            case Lot lot -> {
                card.line("of " + Names.of(lot.eContainer()));
                refer(card, -1, "Material", lot.eContainer());
            }
            case StopOverride override -> card.line(first(override.getReason()));
            case MaterialGrade grade -> card.line(first(grade.getFamily(), grade.getNote()));
            case Entry entry -> card.line(first(entry.getNote()));
            default -> card.line("");
        }
    }

    private static String first(String... texts) {
        for (String text : texts) {
            if (text != null && !text.isBlank()) {
                return text;
            }
        }
        return "";
    }

    /** What stands on the label of the thing, where it can have one. */
    private void sticker(Card.Maker card, EObject thing, int place) {
        boolean labelled = switch (thing) {
            case Trial trial -> true;
            case Part part -> part.eContainer() instanceof Trial trial && trial.eContainer() instanceof Project;
            case Lot lot -> true;
            case Batch batch -> true;
            case Recipe recipe -> true;
            default -> false;
        };
        if (labelled && project(thing) instanceof Project project) {
            try {
                card.text(label("Label", "", false), place, LabelCode.of(project, (Entry) thing).text());
            } catch (LabelException e) {
                return; // a thing without a code has no label
            }
        }
    }

    private static Project project(EObject thing) {
        EObject at = thing;
        while (at != null && !(at instanceof Project)) {
            at = at.eContainer();
        }
        return (Project) at;
    }

    /** What the fields do not tell. */
    private void own(Card.Maker card, EObject thing) {
        switch (thing) {
            case Trial trial -> {
                card.text(label("Route", "", false), -1, registries.findProcessKind(trial.getRoute() == null ? "" : trial.getRoute()).map(k -> k.title() + " (" + k.id()
                        + ")").orElse(trial.getRoute()));
            }
            case Recipe recipe -> card.text(CODE, -1, Names.tab(recipe));
            case TargetSheet sheet -> card.text(CODE, -1, "v" + sheet.getVersion());
            case StopOverride override -> {
                card.text(label("Rule", "", false), -1, registries.findRule(override.getRule() == null ? "" : override.getRule()).map(r -> r.title() + " (" + r.id() + ")")
                        .orElse(override.getRule()));
                subject(card, override);
            }
            case Acknowledgement tick -> card.text(label("Caution", "", false), -1, tick.getPrompt());
            default -> {
            }
        }
    }

    private void subject(Card.Maker card, StopOverride override) {
        // looked for only here: overrides are few
        for (EObject thing : things(project(override))) {
            EObject about = inside(thing, override.getSubject());
            if (about != null) {
                card.text(label("About", "", false), -1, Names.path(about));
                for (EObject at = about; at instanceof Identified named && !(at instanceof Project); at = at.eContainer()) {
                    card.uses(named.getId());
                }
                card.opens(id(about));
                return;
            }
        }
        card.uses(override.getSubject());
    }

    private static EObject inside(EObject thing, String id) {
        if (id == null || thing instanceof Project) {
            return null;
        }
        if (id.equals(id(thing))) {
            return thing;
        }
        for (var all = thing.eAllContents(); all.hasNext();) {
            if (all.next() instanceof Identified one && id.equals(one.getId())) {
                return one;
            }
        }
        return null;
    }

    /** The name of another thing, which stands here because it is referred to. */
    private void refer(Card.Maker card, int place, String called, EObject other) {
        if (!(other instanceof Identified named)) {
            return;
        }
        card.uses(named.getId());
        switch (other) {
            case Lot lot -> {
                card.text(label("Lot", "", false), place, lot.getCode());
                if (lot.eContainer() instanceof MaterialGrade) {
                    card.uses(((MaterialGrade) lot.eContainer()).getId());
                }
            }
            case Attachment file -> {
                card.text(label("File", "", false), place, file.getFileName());
                card.text(label("Caption", "", true), place, file.getCaption());
            }
            case MaterialGrade grade -> card.text(label(called, "", false), place, joined(grade.getCode(), grade.getName(), grade.getFamily()));
            case Mould mould -> card.text(label(called, "", false), place, joined(mould.getCode(), mould.getName()));
            case Premix premix -> {
                card.text(label(called, "", false), place, joined(premix.getCode(), premix.getTitle()));
                // a lot is used wherever a blend of it is
                premix.getIngredients().forEach(part -> {
                    refer(card, place, "Material", part.getGrade());
                    refer(card, place, "Lot", part.getLot());
                });
            }
            case Recipe recipe -> card.text(label(called, "", false), place, Names.tab(recipe));
            case Trial trial -> card.text(label(called, "", false), place, trial.getCode());
            case Session session -> card.text(label("Session", "", false), place, joined(session.getCode(), session.getWho()));
            case Instrument gauge -> card.text(label("Instrument", "", false), place, gauge.getName());
            case Specimen piece -> card.text(label(called, "", false), place, piece.getCode());
            default -> {
            }
        }
    }

    private static String joined(String... words) {
        StringBuilder all = new StringBuilder();
        for (String word : words) {
            if (word != null && !word.isBlank()) {
                all.append(all.isEmpty() ? "" : "  ").append(word);
            }
        }
        return all.toString();
    }

    private Label label(String words, String property, boolean said) {
        return labels.computeIfAbsent(new Label(words, property, said), l -> l);
    }

    private List<Known> known(EClass type) {
        return known.computeIfAbsent(type, this::describe);
    }

    private List<Known> describe(EClass type) {
        List<Known> fields = new ArrayList<>();
        boolean core = type.getEPackage() == ModelPackage.eINSTANCE;
        for (EAttribute attribute : type.getEAllAttributes()) {
            if (core && SKIPPED.contains(attribute.getName()) && !WORDS.contains(attribute) || attribute.isDerived() || attribute.isTransient()) {
                continue;
            }
            try {
                FieldDescriptor field = FieldDescriptors.of(attribute);
                FieldDescriptor one = field.columns().isEmpty() ? field : field.columns().get(0);
                fields.add(new Known(attribute, one, label(field.label(), "", core && SAID.contains(attribute.getName())), FieldUnits.unit(one.kind(), one.unit())));
            } catch (IllegalArgumentException e) {
                continue; // a type no field can take is nothing people read
            }
        }
        return List.copyOf(fields);
    }

    /** Goes through a thing and what is inside it. */
    private final class Walk {
        private final Card.Maker card;
        private final Set<String> referred = new TreeSet<>();

        Walk(Card.Maker card) {
            this.card = card;
        }

        void object(EObject object, int outer) {
            int place = place(object, outer);
            if (object instanceof AnyType unknown) {
                unknown(unknown, place);
                return;
            }
            attributes(object, place);
            references(object, place);
            if (object instanceof Specimen piece) {
                piece(piece, place);
            }
            if (object instanceof Project) {
                return;
            }
            for (EObject child : object.eContents()) {
                boolean elsewhere = child instanceof Provenance || child instanceof PropertyKey || child instanceof Reading || child instanceof RunInput
                        || child instanceof Lot && object.eContainer() instanceof Project;
                if (!elsewhere) {
                    object(child, place);
                }
            }
        }

        private int place(EObject object, int outer) {
            boolean named = object.eContainer() != null && ThingKind.of(object).isEmpty() && (object instanceof Step || object instanceof Specimen || object instanceof Target
                    || object instanceof BenchNote || object instanceof Decision || object instanceof MouldCast || object instanceof Trial
                    || object instanceof CalculationRun || object instanceof MaterialValue || object instanceof MaterialGrade || object instanceof Lot);
            if (!named) {
                return outer;
            }
            String called = switch (object) {
                case Step step -> first(step.getTitle(), step.getKind(), "step");
                case Specimen piece -> first(piece.getCode(), "piece");
                case BenchNote note -> "note";
                case Decision decision -> "decision";
                case CalculationRun run -> "calculation";
                case MaterialValue value -> "value";
                default -> Names.tab(object);
            };
            return card.place(id(object), called);
        }

        private void unknown(AnyType details, int place) {
            texts(details.getAnyAttribute(), place);
            texts(details.getMixed(), place);
        }

        private void texts(FeatureMap entries, int place) {
            for (FeatureMap.Entry entry : entries) {
                Label called = label(entry.getEStructuralFeature().getName(), "", false);
                if (entry.getValue() instanceof AnyType inner) {
                    unknown(inner, place);
                } else if (entry.getValue() != null && !(entry.getValue() instanceof EObject)) {
                    card.text(called, place, String.valueOf(entry.getValue()));
                }
            }
        }

        private void attributes(EObject object, int place) {
            Map<String, FieldDescriptor> special = special(object);
            for (Known field : known(object.eClass())) {
                Object value = object.eGet(field.attribute);
                if (value == null) {
                    continue;
                }
                FieldDescriptor now = special.get(field.attribute.getName());
                Unit unit = now == null ? field.unit : FieldUnits.unit(now.kind(), now.unit());
                if (value instanceof List<?> all) {
                    all.forEach(one -> value(field, unit, place, one));
                } else {
                    value(field, unit, place, value);
                }
            }
            switch (object) {
                case Step step -> card.text(label("Step", "", false), place, step.getKind() == null ? null : registries.findStepKind(step.getKind()).map(k -> k.title())
                        .orElse(step.getKind()));
                case Measurement measurement -> key(measurement.getKey(), place);
                case Target target -> key(target.getKey(), place);
                case MaterialValue value -> card.text(label("Property", "", false), place, property(value.getProperty()));
                case CalculationRun run -> card.text(label("Calculation", "", false), place, run.getCalculation() == null ? null : registries.findCalculation(run
                        .getCalculation()).map(c -> c.info().title()).orElse(run.getCalculation()));
                case RunResult result -> result(result, place);
                default -> {
                }
            }
        }

        /** Fields whose unit hangs on something else. */
        private Map<String, FieldDescriptor> special(EObject object) {
            if (!(object instanceof Target) && !(object instanceof MaterialValue) && !(object instanceof Instrument)) {
                return Map.of();
            }
            Map<String, FieldDescriptor> fields = new java.util.HashMap<>();
            ModelFields.of(object, registries.properties()).forEach(f -> fields.put(f.name(), f));
            return fields;
        }

        private String property(String id) {
            return id == null ? null : registries.findProperty(id).map(PropertyDef::title).orElse(id);
        }

        private void key(PropertyKey key, int place) {
            if (key != null) {
                card.text(label("Property", "", false), place, property(key.getProperty()));
                card.text(label("Spot", "", false), place, key.getSpot());
                card.text(label("Support", "", false), place, key.getSupport());
            }
        }

        private void result(RunResult result, int place) {
            if (result.getLow() != null && result.getHigh() != null && result.getUnit() != null) {
                List<Unit> units = written.units(result.getUnit());
                if (units.size() == 1) {
                    Unit unit = units.get(0);
                    double low = unit.toCanonical(result.getLow());
                    double high = unit.toCanonical(result.getHigh());
                    card.number(label(Objects.toString(result.getName(), "Result"), "", false), place, unit.kind(), Card.Sort.ENTERED, Math.min(low, high), Math.max(low,
                            high));
                }
            }
        }

        private void value(Known field, Unit unit, int place, Object value) {
            switch (value) {
                case String text -> {
                    card.text(field.label, place, text);
                    if (field.label.said()) {
                        written.in(text, (range, u) -> card.number(field.label, place, u.kind(), Card.Sort.WRITTEN, range, range));
                    }
                }
                case Double number -> {
                    double canonical = unit.toCanonical(number);
                    card.number(field.label, place, unit.kind(), Card.Sort.ENTERED, canonical, canonical);
                }
                case Integer number -> card.number(field.label, place, QuantityKind.COUNT, Card.Sort.ENTERED, number, number);
                case Boolean yes -> card.text(field.label, place, yes ? field.label.words() : null);
                case Enumerator word -> word(field, place, word);
                case LocalDate day -> card.text(field.label, place, day.toString());
                default -> {
                    return; // moments are found by the day of the thing
                }
            }
        }

        private void word(Known field, int place, Enumerator word) {
            boolean core = field.attribute.getEContainingClass().getEPackage() == ModelPackage.eINSTANCE;
            if ((!core || WORDS.contains(field.attribute)) && !word.getName().equalsIgnoreCase("UNKNOWN")) {
                String text = field.field.choices().stream().filter(c -> c.value() == word).map(Choice::label).findFirst().orElse(word.getLiteral());
                card.text(field.label, place, text.toLowerCase(Locale.ROOT));
            }
        }

        private void references(EObject object, int place) {
            for (EReference reference : object.eClass().getEAllReferences()) {
                if (reference.isContainment() || reference.isContainer() || reference.getEReferenceType() == EcorePackage.Literals.EOBJECT || !object.eIsSet(reference)) {
                    continue;
                }
                String called = called(reference);
                if (object.eGet(reference) instanceof List<?> many) {
                    many.forEach(one -> once(place, called, one));
                } else {
                    once(place, called, object.eGet(reference));
                }
            }
            if (object instanceof Part) {
                sticker(card, object, place);
            }
        }

        /** The same session or gauge of many readings at one place is read once. */
        private void once(int place, String called, Object other) {
            if (other instanceof Identified named && referred.add(place + called + named.getId())) {
                refer(card, place, called, named);
            }
        }

        private void piece(Specimen piece, int place) {
            if (piece.isFailed()) {
                card.text(label("State", "", false), place, "failed part");
            }
            List<Measurement> all = piece.getMeasurements();
            for (int i = 0; i < all.size(); i++) {
                Measurement one = all.get(i);
                PropertyDef def = one.getKey() == null || one.getKey().getProperty() == null ? null : registries.findProperty(one.getKey().getProperty()).orElse(null);
                if (def == null || one.getKnowledge() != Knowledge.MEASURED) {
                    loose(one, def, place);
                } else if (firstAlike(all, i, def)) {
                    measured(piece, one, def, place);
                }
            }
        }

        /** True when no measurement before it was of the same property under the same conditions. */
        private static boolean firstAlike(List<Measurement> all, int place, PropertyDef def) {
            for (int i = 0; i < place; i++) {
                Measurement before = all.get(i);
                if (before.getKnowledge() == Knowledge.MEASURED && before.getKey() != null && def.id().equals(before.getKey().getProperty())
                        && PartValues.differences(all.get(place).getKey(), before.getKey(), def).isEmpty()) {
                    return false;
                }
            }
            return true;
        }

        private void measured(Specimen piece, Measurement one, PropertyDef def, int place) {
            PartValue value = PartValues.of(piece, one.getKey(), def);
            Label called = label(def.title(), def.id(), false);
            if (value == null || value.notComparable()) {
                return;
            }
            if (def.yesNo()) {
                if (value.readings() > 0) {
                    card.number(called, place, QuantityKind.NUMBER, value.yes() > 0 ? Card.Sort.YES : Card.Sort.NO, value.yes() > 0 ? 1 : 0, value.yes() > 0 ? 1 : 0);
                }
            } else if (value.hasNumber()) {
                card.number(called, place, def.kind(), Card.Sort.MEDIAN, value.low(), value.high());
                readings(one, called, def.kind(), place, value.value(), Card.Sort.READING);
            }
        }

        private void loose(Measurement one, PropertyDef def, int place) {
            String id = one.getKey() == null ? null : one.getKey().getProperty();
            Label called = label(def != null ? def.title() + ", estimated" : Objects.toString(id, "Reading"), "", false);
            readings(one, called, def == null ? QuantityKind.NUMBER : def.kind(), place, Double.NaN, Card.Sort.ENTERED);
        }

        private void readings(Measurement one, Label called, QuantityKind kind, int place, double but, Card.Sort sort) {
            Set<Double> seen = new TreeSet<>();
            for (Reading reading : one.getReadings()) {
                if (reading.getLeftOut() != null && !reading.getLeftOut().isBlank()) {
                    card.text(label("Left out", "", true), place, reading.getLeftOut());
                } else if (reading.getValue() != null && reading.getCensoring() == Censoring.NONE && reading.getValue() != but && seen.add(reading.getValue())) {
                    card.number(called, place, kind, sort, reading.getValue(), reading.getValue());
                }
            }
        }
    }

    private static String called(EStructuralFeature reference) {
        String spaced = reference.getName().replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
        return Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
    }
}
