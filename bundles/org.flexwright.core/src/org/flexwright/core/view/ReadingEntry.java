package org.flexwright.core.view;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ParsedReading;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.verdict.ControlReading;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.model.Censoring;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.numerics.Descriptive;
import org.flexwright.quantity.QuantityKind;

/**
 * Fast entry of readings, piece by piece, the control piece first. Every reading is one step to undo and in the journal before the next
 * one is asked for. What it shows is read from the model each time, so undo needs nothing else. All calls on the model thread.
 */
public final class ReadingEntry {
    private static final int LAST = 5;

    private final ProjectSession project;
    private final Session bench;
    private final PropertyDef property;
    private final PropertyKey key;
    private final PropertyDef controlProperty;
    private final PropertyKey controlKey;
    private final Instrument instrument;
    private final int wanted;
    private final List<Specimen> pieces;
    private int place;
    private boolean chosen;

    /**
     * Begins at the first piece that wants readings.
     *
     * @param bench      the session at the bench
     * @param key        what is read and under which conditions; copied
     * @param instrument the gauge, or null
     * @param pieces     what is read, in order; the session's control piece is put first when it was read with the same scale before, and then
     *                   under the conditions it is always read, or when it was never read at all
     * @param wanted     readings on each piece before the next one comes up, 1 or more
     * @param properties knows what the control piece is read for
     */
    public ReadingEntry(ProjectSession project, Session bench, PropertyDef property, PropertyKey key, Instrument instrument, List<? extends Specimen> pieces,
            int wanted, PropertyCatalogue properties) {
        this.project = Objects.requireNonNull(project, "project");
        this.bench = Objects.requireNonNull(bench, "bench");
        this.property = Objects.requireNonNull(property, "property");
        this.key = EcoreUtil.copy(key);
        this.instrument = instrument;
        this.wanted = wanted;
        this.pieces = new ArrayList<>(pieces);
        ControlPiece control = bench.getControlPiece();
        Measurement usual = control == null || property.yesNo() ? null : usual(control, properties);
        boolean suits = control != null && !property.yesNo() && (usual != null || control.getMeasurements().isEmpty());
        this.controlKey = usual == null ? this.key : EcoreUtil.copy(usual.getKey());
        this.controlProperty = usual == null ? property : properties.find(usual.getKey().getProperty()).orElse(property);
        if (suits && !this.pieces.contains(control)) {
            this.pieces.add(0, control);
        }
        if (this.pieces.isEmpty() || wanted < 1) {
            throw new IllegalArgumentException("Reading entry needs a piece and at least one reading on it.");
        }
        skipComplete();
    }

    /** How the control piece was last read: for this property, else for another one on the same scale; null when it was not. */
    private Measurement usual(ControlPiece control, PropertyCatalogue properties) {
        List<Measurement> read = control.getMeasurements().stream().filter(m -> m.getKey() != null && m.getKey().getProperty() != null).toList().reversed();
        return read.stream().filter(m -> property.id().equals(m.getKey().getProperty())).findFirst()
                .or(() -> property.kind() == QuantityKind.NUMBER ? Optional.empty()
                        : read.stream().filter(m -> properties.find(m.getKey().getProperty()).filter(p -> p.kind() == property.kind()).isPresent()).findFirst())
                .orElse(null);
    }

    private PropertyDef property(Specimen piece) {
        return piece == bench.getControlPiece() ? controlProperty : property;
    }

    private PropertyKey key(Specimen piece) {
        return piece == bench.getControlPiece() ? controlKey : key;
    }

    /** The pieces in order. */
    public List<Specimen> pieces() {
        return List.copyOf(pieces);
    }

    /** Place of the current piece, from 0. */
    public int place() {
        return place;
    }

    /** The current piece. */
    public Specimen piece() {
        return pieces.get(place);
    }

    /** True when the current piece is the control piece. */
    public boolean isControl() {
        return piece() instanceof ControlPiece;
    }

    /** What to do next, one line: "control piece K1, reading 2 of 5". */
    public String prompt() {
        String code = piece().getCode() == null ? "" : piece().getCode();
        int count = readings(piece()).size();
        if (complete()) {
            return words("complete", code);
        }
        return words(isControl() ? "prompt.control" : "prompt.part", code, String.valueOf(count + 1), String.valueOf(Math.max(wanted, count + 1)));
    }

    /** True when every piece has its readings. */
    public boolean complete() {
        return pieces.stream().allMatch(p -> readings(p).size() >= wanted);
    }

    /**
     * Takes what was typed; several readings may be separated by semicolons. The next piece comes up when this one has its readings. When all
     * have theirs nothing more is taken, unless a piece was chosen by {@link #goTo}.
     *
     * @return one sentence when it was not accepted, else empty
     */
    public String type(String text) {
        if (project.readOnly()) {
            return project.readOnlyReason();
        }
        if (!chosen && complete()) {
            return words("enough");
        }
        switch (ReadingParser.parse(property(piece()), key(piece()), text)) {
            case ReadingInput.Rejected rejected -> {
                return rejected.sentence().text();
            }
            case ReadingInput.Understood understood -> {
                if (understood.dwell() != null) {
                    key(piece()).setDwell(understood.dwell());
                }
                try {
                    project.execute(step(text.strip()), edit -> add(edit, understood.readings()));
                } catch (RefusedException | StoreException e) {
                    return e.getMessage();
                }
                if (readings(piece()).size() >= wanted) {
                    chosen = false;
                    skipComplete();
                }
                return "";
            }
        }
    }

    private void add(Edit edit, List<ParsedReading> parsed) {
        Instant now = edit.now();
        List<Reading> readings = parsed.stream().map(r -> r.toReading(now)).toList();
        Measurement measurement = measurement(piece());
        if (measurement != null) {
            readings.forEach(r -> edit.add(measurement, ModelPackage.Literals.MEASUREMENT__READINGS, r));
            return;
        }
        Measurement fresh = ModelFactory.eINSTANCE.createMeasurement();
        fresh.setId(edit.newId());
        fresh.setKey(EcoreUtil.copy(key(piece())));
        fresh.setKnowledge(Knowledge.MEASURED);
        fresh.setSession(bench);
        fresh.setInstrument(instrument);
        fresh.setAt(now);
        fresh.getReadings().addAll(readings);
        edit.add(piece(), ModelPackage.Literals.SPECIMEN__MEASUREMENTS, fresh);
    }

    private Measurement measurement(Specimen piece) {
        return piece.getMeasurements().stream().filter(m -> m.getSession() == bench && m.getInstrument() == instrument && m.getKey() != null
                && property(piece).id().equals(m.getKey().getProperty()) && PartValues.differences(key(piece), m.getKey(), property(piece)).isEmpty()).findFirst().orElse(null);
    }

    private List<Reading> readings(Specimen piece) {
        Measurement measurement = measurement(piece);
        return measurement == null ? List.of() : measurement.getReadings().stream().filter(Measurements::counts).toList();
    }

    /** Goes on to the first piece after this one that wants readings; stays when there is none. */
    private void skipComplete() {
        for (int i = 0; i < pieces.size(); i++) {
            int at = (place + i) % pieces.size();
            if (readings(pieces.get(at)).size() < wanted) {
                place = at;
                return;
            }
        }
    }

    /** Goes to a piece; there more readings are taken than are wanted. */
    public void goTo(int newPlace) {
        place = Objects.checkIndex(newPlace, pieces.size());
        chosen = true;
    }

    private String step(String typed) {
        return words("step", property.title(), typed);
    }

    /**
     * Takes the last reading back and returns to the first piece that then wants readings, if the current one has all. Nothing else is taken
     * back than readings of this kind.
     *
     * @return one sentence when there is none to take back, else empty
     */
    public String undo() {
        if (!project.canUndo() || !project.undoName().startsWith(step(""))) {
            return words("noUndo");
        }
        project.undo();
        chosen = false;
        Specimen wanting = pieces.stream().filter(p -> readings(p).size() < wanted).findFirst().orElse(piece());
        if (readings(piece()).size() >= wanted || readings(piece()).isEmpty()) {
            place = pieces.indexOf(wanting);
        }
        return "";
    }

    /** Leaves out the last reading of the current piece, for a reason; it stays in the record. */
    public void leaveOutLast(String reason) {
        List<Reading> readings = readings(piece());
        if (!readings.isEmpty() && !reason.isBlank()) {
            Reading last = readings.get(readings.size() - 1);
            project.execute(words("leaveOut"), edit -> edit.set(last, ModelPackage.Literals.READING__LEFT_OUT, reason.strip()));
        }
    }

    /** The last readings of the current piece as text, the newest last. */
    public List<String> lastFive() {
        List<Reading> readings = readings(piece());
        return readings.subList(Math.max(0, readings.size() - LAST), readings.size()).stream().map(r -> ReadingPrinter.print(property, r)).toList();
    }

    /**
     * A reading with the piece it was read on.
     *
     * @param piece code of the piece
     * @param text  the reading with its unit
     */
    public record Read(String piece, String text) {
    }

    /** The last five readings of all pieces, the newest last: the one that completed a piece stays in sight when the next piece comes up. */
    public List<Read> recent() {
        record Placed(Specimen piece, Reading reading) {
        }
        List<Placed> all = pieces.stream().flatMap(p -> readings(p).stream().map(r -> new Placed(p, r)))
                .sorted(Comparator.comparing((Placed p) -> p.reading().getAt() == null ? Instant.MIN : p.reading().getAt())).toList();
        return all.subList(Math.max(0, all.size() - LAST), all.size()).stream()
                .map(p -> new Read(p.piece().getCode() == null ? "" : p.piece().getCode(), ReadingPrinter.print(property(p.piece()), p.reading()))).toList();
    }

    /** How many readings of those wanted a piece has: {@code 3/5}. */
    public String progress(Specimen piece) {
        return readings(piece).size() + "/" + wanted;
    }

    /** The piece read just before the current one, with its median and spread: "P1: median 48 Shore A, spread 2"; empty when there is none. */
    public String before() {
        List<Read> recent = recent();
        if (recent.isEmpty()) {
            return "";
        }
        Specimen last = pieces.stream().filter(p -> recent.getLast().piece().equals(p.getCode())).findFirst().orElse(piece());
        String words = last == piece() ? "" : summary(last);
        return words.isEmpty() ? "" : words("before", last.getCode(), words);
    }

    /** Median of the current piece's readings in the canonical unit; empty without readings, or when it is only a bound. */
    public OptionalDouble median() {
        return median(piece());
    }

    private OptionalDouble median(Specimen piece) {
        double[] values = numbers(piece);
        return values.length == 0 || values.length < readings(piece).size() ? OptionalDouble.empty() : OptionalDouble.of(Descriptive.median(values));
    }

    /** Largest less smallest reading of the current piece; empty for fewer than two. */
    public OptionalDouble spread() {
        return spread(piece());
    }

    private OptionalDouble spread(Specimen piece) {
        double[] values = numbers(piece);
        return values.length < 2 ? OptionalDouble.empty() : OptionalDouble.of(Descriptive.range(values));
    }

    private double[] numbers(Specimen piece) {
        return readings(piece).stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE).mapToDouble(Reading::getValue).toArray();
    }

    /** Median and spread in words: "median 48 Shore A, spread 2"; empty without readings. */
    public String summary() {
        return summary(piece());
    }

    private String summary(Specimen piece) {
        if (median(piece).isEmpty()) {
            return "";
        }
        String middle = FieldText.number(median(piece).getAsDouble(), property.kind(), "");
        return spread(piece).isEmpty() ? words("median", middle) : words("medianSpread", middle, FieldText.number(spread(piece).getAsDouble(), property.kind(), ""));
    }

    /** What the last readings on the current piece look like: readings all alike, one far from the others, one between two steps of the gauge. */
    public List<String> hints() {
        return ReadingHints.of(property(piece()), instrument, readings(piece())).stream().map(Message::text).toList();
    }

    /** One sentence when the control piece reads off by more than it may; else empty. */
    public String controlNote() {
        return ControlReading.of(bench, controlProperty).filter(ControlReading::off).map(c -> words("controlOff", c.sentence())).orElse("");
    }

    /** The same in a few words for a view that is read from afar: "▲ control off, 2 Shore A above"; empty when it is not off. */
    public String controlShort() {
        return ControlReading.of(bench, controlProperty).filter(ControlReading::off).map(c -> words(c.difference() > 0 ? "offAbove" : "offBelow", Doubts.word(),
                FieldText.number(Math.abs(c.difference()), c.property().kind(), ""))).orElse("");
    }

    private static String words(String name, Object... args) {
        return Message.of(ReadingEntry.class, "entry." + name, args).text();
    }
}
