package org.flexwright.core.view;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ParsedReading;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.verdict.ControlReading;
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
    private final Instrument instrument;
    private final int wanted;
    private final List<Specimen> pieces;
    private int place;

    /**
     * Begins at the first piece that wants readings.
     *
     * @param bench      the session at the bench
     * @param key        what is read and under which conditions; copied
     * @param instrument the gauge, or null
     * @param pieces     what is read, in order; the session's control piece is put first when it was read for this before or never at all
     * @param wanted     readings on each piece before the next one comes up, 1 or more
     */
    public ReadingEntry(ProjectSession project, Session bench, PropertyDef property, PropertyKey key, Instrument instrument, List<? extends Specimen> pieces,
            int wanted) {
        this.project = Objects.requireNonNull(project, "project");
        this.bench = Objects.requireNonNull(bench, "bench");
        this.property = Objects.requireNonNull(property, "property");
        this.key = EcoreUtil.copy(key);
        this.instrument = instrument;
        this.wanted = wanted;
        this.pieces = new ArrayList<>(pieces);
        ControlPiece control = bench.getControlPiece();
        if (control != null && suits(control) && !this.pieces.contains(control)) {
            this.pieces.add(0, control);
        }
        if (this.pieces.isEmpty() || wanted < 1) {
            throw new IllegalArgumentException("Reading entry needs a piece and at least one reading on it.");
        }
        skipComplete();
    }

    private boolean suits(ControlPiece control) {
        return !property.yesNo()
                && (control.getMeasurements().isEmpty() || control.getMeasurements().stream().anyMatch(m -> m.getKey() != null && property.id().equals(m.getKey().getProperty())));
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
     * Takes what was typed; several readings may be separated by semicolons. The next piece comes up when this one has its readings.
     *
     * @return one sentence when it was not accepted, else empty
     */
    public String type(String text) {
        if (project.readOnly()) {
            return project.readOnlyReason();
        }
        switch (ReadingParser.parse(property, key, text)) {
            case ReadingInput.Rejected rejected -> {
                return rejected.sentence().text();
            }
            case ReadingInput.Understood understood -> {
                if (understood.dwell() != null) {
                    key.setDwell(understood.dwell());
                }
                project.execute(words("step", property.title(), text.strip()), edit -> add(edit, understood.readings()));
                if (readings(piece()).size() >= wanted) {
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
        fresh.setKey(EcoreUtil.copy(key));
        fresh.setKnowledge(Knowledge.MEASURED);
        fresh.setSession(bench);
        fresh.setInstrument(instrument);
        fresh.setAt(now);
        fresh.getReadings().addAll(readings);
        edit.add(piece(), ModelPackage.Literals.SPECIMEN__MEASUREMENTS, fresh);
    }

    private Measurement measurement(Specimen piece) {
        return piece.getMeasurements().stream().filter(m -> m.getSession() == bench && m.getInstrument() == instrument && m.getKey() != null
                && property.id().equals(m.getKey().getProperty()) && PartValues.differences(key, m.getKey(), property).isEmpty()).findFirst().orElse(null);
    }

    private List<Reading> readings(Specimen piece) {
        Measurement measurement = measurement(piece);
        return measurement == null ? List.of() : measurement.getReadings().stream().filter(r -> r.getLeftOut() == null || r.getLeftOut().isBlank()).toList();
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

    /** Goes to a piece. */
    public void goTo(int newPlace) {
        place = Objects.checkIndex(newPlace, pieces.size());
    }

    /** Takes the last step back and returns to the first piece that then wants readings, if the current one has all. */
    public void undo() {
        project.undo();
        Specimen wanting = pieces.stream().filter(p -> readings(p).size() < wanted).findFirst().orElse(piece());
        if (readings(piece()).size() >= wanted || readings(piece()).isEmpty()) {
            place = pieces.indexOf(wanting);
        }
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

    /** Median of the current piece's readings in the canonical unit; empty without readings, or when it is only a bound. */
    public OptionalDouble median() {
        double[] values = numbers();
        return values.length == 0 || values.length < readings(piece()).size() ? OptionalDouble.empty() : OptionalDouble.of(Descriptive.median(values));
    }

    /** Largest less smallest reading of the current piece; empty for fewer than two. */
    public OptionalDouble spread() {
        double[] values = numbers();
        return values.length < 2 ? OptionalDouble.empty() : OptionalDouble.of(Descriptive.range(values));
    }

    private double[] numbers() {
        return readings(piece()).stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE).mapToDouble(Reading::getValue).toArray();
    }

    /** Median and spread in words: "median 48 Shore A, spread 2"; empty without readings. */
    public String summary() {
        if (median().isEmpty()) {
            return "";
        }
        String middle = FieldText.number(median().getAsDouble(), property.kind(), "");
        return spread().isEmpty() ? words("median", middle) : words("medianSpread", middle, FieldText.number(spread().getAsDouble(), property.kind(), ""));
    }

    /** What the last readings on the current piece look like: readings all alike, one far from the others, one between two steps of the gauge. */
    public List<String> hints() {
        return ReadingHints.of(property, instrument, readings(piece())).stream().map(Message::text).toList();
    }

    /** One sentence when the control piece reads off by more than it may; else empty. */
    public String controlNote() {
        return ControlReading.of(bench, property).filter(ControlReading::off).map(c -> words("controlOff", c.sentence())).orElse("");
    }

    private static String words(String name, Object... args) {
        return Message.of(ReadingEntry.class, "entry." + name, args).text();
    }
}
