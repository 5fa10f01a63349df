package org.flexwright.core.gauge;

import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.trial.Codes;
import org.flexwright.core.verdict.GaugeAmounts;
import org.flexwright.model.GaugeCell;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Reading;

/** Changes of gauge studies. Each throws {@link RefusedException} with one sentence when it cannot be. */
public final class GaugeStudies {
    /** More pieces or persons than this are a typing mistake. */
    private static final int MOST = 200;

    private GaugeStudies() {
    }

    /** The next free code: G1, G2... */
    public static String nextCode(Project project) {
        return Codes.next("G", 1, project.getGaugeStudies().stream().map(GaugeStudy::getCode).toList());
    }

    /** Adds a study that is filled in; without a code it gets the next free one, without a time it is now. */
    public static GaugeStudy add(Edit edit, GaugeStudy study) {
        String free = nextCode(edit.project());
        String code = study.getCode() == null || study.getCode().isBlank() ? free : study.getCode().strip();
        if (edit.project().getGaugeStudies().stream().anyMatch(s -> code.equalsIgnoreCase(s.getCode()))) {
            throw refused("taken", code, free);
        }
        study.setCode(code);
        if (study.getAt() == null) {
            study.setAt(edit.now().truncatedTo(ChronoUnit.MINUTES));
        }
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__GAUGE_STUDIES, study);
        return study;
    }

    /** Adds a piece, to be read by every person there is; or by nobody yet. Cells that stood under no piece become its own. */
    public static void addPiece(Edit edit, GaugeStudy study, String piece) {
        String name = named(piece, "piece.empty", study);
        GaugeTable table = GaugeTable.of(study);
        if (table.pieces().stream().anyMatch(name::equalsIgnoreCase)) {
            throw refused("piece.twice", code(study), name);
        }
        refuseMany(table.pieces().size(), study);
        if (table.pieces().equals(List.of(""))) {
            study.getCells().forEach(cell -> edit.set(cell, ModelPackage.Literals.GAUGE_CELL__PIECE, name));
            return;
        }
        List<String> persons = table.persons().isEmpty() ? List.of("") : table.persons();
        persons.forEach(who -> cell(edit, study, name, who));
    }

    /** Adds a person, to read every piece there is. Readings that stood under no name become this person's. */
    public static void addPerson(Edit edit, GaugeStudy study, String who) {
        String name = named(who, "person.empty", study);
        GaugeTable table = GaugeTable.of(study);
        if (table.persons().stream().anyMatch(name::equalsIgnoreCase)) {
            throw refused("person.twice", code(study), name);
        }
        refuseMany(table.persons().size(), study);
        if (table.persons().equals(List.of(""))) {
            study.getCells().forEach(cell -> edit.set(cell, ModelPackage.Literals.GAUGE_CELL__WHO, name));
            return;
        }
        (table.pieces().isEmpty() ? List.of("") : table.pieces()).forEach(piece -> cell(edit, study, piece, name));
    }

    /** Takes a piece out with all its readings. */
    public static void removePiece(Edit edit, GaugeStudy study, String piece) {
        study.getCells().stream().filter(c -> GaugeTable.name(c.getPiece()).equalsIgnoreCase(GaugeTable.name(piece))).toList().forEach(edit::remove);
    }

    /** Takes a person out with all readings. */
    public static void removePerson(Edit edit, GaugeStudy study, String who) {
        study.getCells().stream().filter(c -> GaugeTable.name(c.getWho()).equalsIgnoreCase(GaugeTable.name(who))).toList().forEach(edit::remove);
    }

    /** Adds readings of a person on a piece; both are added when they are not there yet. */
    public static GaugeCell read(Edit edit, GaugeStudy study, String piece, String who, List<Reading> readings) {
        if (readings.isEmpty()) {
            throw refused("nothing", code(study));
        }
        GaugeTable table = GaugeTable.of(study);
        if (table.persons().equals(List.of("")) && !GaugeTable.name(who).isEmpty()) {
            addPerson(edit, study, who);
        }
        String name = named(piece, "piece.empty", study);
        if (GaugeTable.of(study).pieces().equals(List.of(""))) {
            addPiece(edit, study, name);
        }
        GaugeCell cell = GaugeTable.of(study).cell(name, who).orElseGet(() -> cell(edit, study, name, GaugeTable.name(who)));
        readings.forEach(reading -> edit.add(cell, ModelPackage.Literals.GAUGE_CELL__READINGS, reading));
        return cell;
    }

    /** Makes these the readings that count in a cell: those at its beginning that are the same stay, those left out with a reason stay too. */
    public static void put(Edit edit, GaugeStudy study, String piece, String who, List<Reading> readings) {
        GaugeTable table = GaugeTable.of(study);
        List<Reading> there = table.counting(piece, who);
        int same = 0;
        while (same < there.size() && same < readings.size() && same(there.get(same), readings.get(same))) {
            same++;
        }
        there.subList(same, there.size()).forEach(edit::remove);
        if (same < readings.size()) {
            read(edit, study, piece, who, readings.subList(same, readings.size()));
        }
    }

    private static boolean same(Reading one, Reading other) {
        return Objects.equals(one.getValue(), other.getValue()) && one.getCensoring() == other.getCensoring();
    }

    /** Leaves a reading out with a reason; it stays in the record. */
    public static void leaveOut(Edit edit, Reading reading, String reason) {
        if (GaugeTable.name(reason).isEmpty()) {
            throw refused("reason");
        }
        edit.set(reading, ModelPackage.Literals.READING__LEFT_OUT, reason.strip());
    }

    /** Takes the last reading of a cell back. */
    public static void takeBack(Edit edit, GaugeCell cell) {
        if (!cell.getReadings().isEmpty()) {
            edit.remove(cell.getReadings().get(cell.getReadings().size() - 1));
        }
    }

    private static GaugeCell cell(Edit edit, GaugeStudy study, String piece, String who) {
        GaugeCell cell = ModelFactory.eINSTANCE.createGaugeCell();
        cell.setPiece(piece.isEmpty() ? null : piece);
        cell.setWho(who.isEmpty() ? null : who);
        edit.add(study, ModelPackage.Literals.GAUGE_STUDY__CELLS, cell);
        return cell;
    }

    /** Puts the repeatability with the gauge as its own spread, with where it comes from. */
    public static void keepWithGauge(Edit edit, GaugeResult result) {
        GaugeStudy study = result.table().study();
        Instrument gauge = study.getInstrument();
        if (gauge == null) {
            throw refused("noGauge", code(study));
        }
        double spread = inUnit(result).orElseThrow(() -> refused("otherUnit", Objects.toString(gauge.getName(), ""), Objects.toString(gauge.getUnit(), ""), result.property()
                .title()));
        edit.set(gauge, ModelPackage.Literals.INSTRUMENT__SPREAD, spread);
        edit.set(gauge, ModelPackage.Literals.INSTRUMENT__SPREAD_FROM, GaugeAnalysis.say("from", code(study), study.getAt() == null ? ""
                : study.getAt().atZone(ZoneId.systemDefault()).toLocalDate().toString(), String.valueOf(result.errorDf())).text());
        edit.set(gauge, ModelPackage.Literals.INSTRUMENT__STUDY, study);
    }

    /** True when what stands with the gauge is what this study says now. */
    public static boolean keptWithGauge(GaugeResult result) {
        Instrument gauge = result.table().study().getInstrument();
        return gauge != null && gauge.getStudy() == result.table().study() && gauge.getSpread() != null
                && inUnit(result).stream().anyMatch(spread -> spread == gauge.getSpread());
    }

    /** What is kept: rounded as far as its own interval tells, so that no digits are invented. */
    private static OptionalDouble inUnit(GaugeResult result) {
        OptionalDouble spread = GaugeAmounts.inUnitOf(result.table().study().getInstrument(), result.ownSpread(), result.property());
        return spread.isEmpty() ? spread : OptionalDouble.of(Double.parseDouble(FieldText.rounded(spread.getAsDouble(), spread.getAsDouble() / 10)));
    }

    private static String named(String typed, String key, GaugeStudy study) {
        if (GaugeTable.name(typed).isEmpty()) {
            throw refused(key, code(study));
        }
        return typed.strip();
    }

    private static void refuseMany(int there, GaugeStudy study) {
        if (there >= MOST) {
            throw refused("many", code(study), String.valueOf(MOST));
        }
    }

    private static String code(GaugeStudy study) {
        return study.getCode() == null ? GaugeAnalysis.say("study").text() : study.getCode();
    }

    private static RefusedException refused(String key, Object... args) {
        return new RefusedException(GaugeAnalysis.say(key, args));
    }
}
