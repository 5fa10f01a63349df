package org.flexwright.example;

import java.time.LocalDate;

import java.util.List;
import java.util.Collections;

import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.trial.Acknowledgements;
import org.flexwright.core.trial.Attachments;
import org.flexwright.core.trial.Moulds;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Importance;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.Need;
import org.flexwright.model.PartRole;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.model.Trial;

/** What stands before the trials: the job, the shelf, the reference part, the targets. */
final class Story {
    static final String CAST = "moulding.cast";
    static final String VAT = "vatprint.vat";
    static final String FILAMENT = "filament.extrude";

    static final String PEAK = "testing.peak-force";
    static final String LEAST = "testing.least-force";
    static final String RATIO = "testing.snap-ratio";
    static final String INVERTED = "testing.rests-inverted";
    static final String RETURN = "testing.return-time";
    static final String PRESSES = "testing.presses-to-tear";
    static final String HARD = "testing.apparent-hardness";
    static final String SHORE = "testing.shore-a";
    static final String SUPPORT = "smooth base, rim free";
    static final String TABLE = "steel table";
    private static final double DWELL = 3;

    final Bench bench;
    Instrument durometer;
    Instrument balance;
    Instrument forceGauge;
    Instrument camera;
    ControlPiece control;
    Mould thickMould;
    Lot partA;
    Lot partB;
    Lot powder;
    Lot siliconeA;
    Lot siliconeB;
    Lot resin;
    Lot oldResin;
    Lot strand;
    ReferencePart reference;

    Story(Bench bench) {
        this.bench = bench;
    }

    void job() {
        bench.edit("Describe the job", e -> {
            e.set(e.project(), ModelPackage.Literals.PROJECT__INVENTED, true);
            e.set(e.project(), ModelPackage.Literals.PROJECT__JOB, "Invented example. A community workshop keeps a palm switch alive for a user with"
                    + " little hand strength. The rubber dome under the pad has worn out and is no longer made. Eight to be made now, ten more"
                    + " next year.");
            need(e, "presses softly: little hand strength", Importance.MUST);
            need(e, "clicks clearly: the user must feel it happened", Importance.MUST);
            need(e, "comes back at once and never stays in", Importance.MUST);
            need(e, "lasts for years of daily use", Importance.MUST);
            need(e, "quiet", Importance.NICE);
            need(e, "touches skin only through a cover", Importance.MUST);
        });
    }

    private static void need(org.flexwright.core.session.Edit e, String text, Importance importance) {
        Need need = ModelFactory.eINSTANCE.createNeed();
        need.setText(text);
        need.setImportance(importance);
        e.add(e.project(), ModelPackage.Literals.PROJECT__NEEDS, need);
    }

    void stock() {
        durometer = bench.instrument("hand durometer A", "durometer", "Shore A", 0.5, 1);
        bench.edit("What is known of the durometer", e -> {
            e.set(durometer, ModelPackage.Literals.INSTRUMENT__SCALE, "A");
            e.set(durometer, ModelPackage.Literals.INSTRUMENT__CHECKED_ON, LocalDate.parse("2026-01-30"));
            e.set(durometer, ModelPackage.Literals.INSTRUMENT__CHECK_EVERY_DAYS, 365.0);
            e.set(durometer, ModelPackage.Literals.INSTRUMENT__CHECK_NOTE, "read 60.5 on the maker's test block of 60 (invented)");
        });
        balance = bench.instrument("bench balance", "balance", "g", 0.01, 0.02);
        forceGauge = bench.instrument("force gauge 10 N", "force gauge", "N", 0.005, 0.01);
        camera = bench.instrument("phone camera 240/s", "camera", "s", 0.004, 0.01);
        control = ModelFactory.eINSTANCE.createControlPiece();
        control.setCode("K1");
        control.setPieceKind(PieceKind.TEST_PIECE);
        control.setThickness(8.0);
        control.setNote("Kept button of a firm rubber, read at the start of each session.");
        control.setMadeAt(Bench.moment("2025-11-03T10:00"));
        bench.edit("Add control piece", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__CONTROL_PIECES, control));

        MaterialGrade a = bench.grade("PU-A", "polyurethane 45 part A (isocyanate side)", "pu-60a", PartRole.COMPONENT_A, "H317", "H334", "H315");
        MaterialGrade b = bench.grade("PU-B", "polyurethane 45 part B (polyol side)", "pu-60a", PartRole.COMPONENT_B, "H317");
        value(a, "materials.density", "g/cm3", 1.05, 1.052, "weighed 10.0 ml in a syringe");
        value(a, "mixing.nco-content", "%", 12.0, null, null);
        value(b, "materials.density", "g/cm3", 1.10, null, null);
        value(b, "mixing.hydroxyl-value", "", 170, null, null);
        partA = bench.lot(a, "A-2511", "2026-02-20", "2026-11-30", 31, 1000);
        partB = bench.lot(b, "B-2511", "2026-02-20", "2027-11-30", 27, 1000);
        bench.pack(500, a, b);
        MaterialGrade silica = bench.grade("POW", "fine silica powder", null, PartRole.FILLER, "H373");
        value(silica, "materials.density", "g/cm3", 2.2, null, null);
        powder = bench.lot(silica, "P-01", "2025-10-01", "2028-10-01", 12, 500);
        siliconeA = bench.lot(bench.grade("SIL-A", "addition silicone 45 part A", "silicone-add-60a", PartRole.COMPONENT_A), "SA-7", "2026-03-01",
                "2026-12-31", 24, 500);
        siliconeB = bench.lot(bench.grade("SIL-B", "addition silicone 45 part B", "silicone-add-60a", PartRole.COMPONENT_B), "SB-7", "2026-03-01",
                "2026-12-31", 24, 500);
        MaterialGrade soft = bench.grade("RES", "soft photopolymer resin", "photopolymer-50a", PartRole.SINGLE, "H317", "H319", "H412");
        oldResin = bench.lot(soft, "R-2409", "2024-09-10", "2025-09-30", 55, 500);
        resin = bench.lot(soft, "R-2601", "2026-02-09", "2027-01-31", 55, 500);
        strand = bench.lot(bench.grade("FIL", "flexible filament 74A", "tpu-70a", PartRole.SINGLE), "F-33", "2026-01-12", "2029-01-01", 42, 500);
    }

    /** The mould for the wall of 1.5 mm, and a second bottle of A, what work and cups count; invented like everything else. */
    void workshop() {
        thickMould = ModelFactory.eINSTANCE.createMould();
        thickMould.setName("dome, wall 1.5 mm, four cavities");
        thickMould.setMaterial("vat print, baked, barrier coat");
        thickMould.setMadeOn(LocalDate.parse("2026-04-14"));
        thickMould.setCavities(4);
        thickMould.setCastsBefore(2);
        thickMould.setCastsLimit(25);
        thickMould.setTurnMinutes(17.5 * 60);
        thickMould.setPrice(48.0);
        thickMould.setNote("Two trial casts with wax before the first good one.");
        bench.sealed((MaterialGrade) partA.eContainer(), "A-2604", "2027-08-31", 33, 1000);
        bench.edit("Add mould, hour and cup", e -> {
            Moulds.add(e, thickMould);
            e.set(e.project(), ModelPackage.Literals.PROJECT__HOURLY_RATE, 18.0);
            e.set(e.project(), ModelPackage.Literals.PROJECT__CUP_PRICE, 0.60);
        });
    }

    /** A cast is counted. */
    void cast(Mould mould, Trial trial, int parts) {
        bench.edit("Count the cast of " + trial.getCode(), e -> Moulds.cast(e, mould, trial, "wax, two thin coats", true, parts));
    }

    private void value(MaterialGrade grade, String property, String unit, double sheet, Double own, String how) {
        MaterialValue value = ModelFactory.eINSTANCE.createMaterialValue();
        value.setProperty(property);
        value.setUnit(unit);
        value.setSheetValue(sheet);
        value.setSheetSource("invented data sheet, January 2026");
        value.setOwnValue(own);
        value.setOwnSource(how);
        bench.edit("Note " + property + " of " + grade.getCode(), e -> e.add(grade, ModelPackage.Literals.MATERIAL_GRADE__VALUES, value));
    }

    /** A session that begins with the control piece; {@code controlReads} as typed. */
    Session session(String code, String at, double roomC, double roomRh, String controlReads) {
        Session session = bench.bench(code, at, roomC, roomRh, durometer, balance, forceGauge, camera);
        bench.read(control, shore(PieceKind.TEST_PIECE), controlReads, session, durometer);
        return session;
    }

    static PropertyKey shore(PieceKind kind) {
        return Bench.key(SHORE, kind, "middle", TABLE, DWELL);
    }

    static PropertyKey flange() {
        return Bench.key(HARD, PieceKind.PART, "flange", TABLE, DWELL);
    }

    static PropertyKey dome(String property) {
        return Bench.key(property, PieceKind.PART, null, SUPPORT, null);
    }

    void reference() {
        Session session = session("S1", "2026-02-05T18:30", 21.5, 42, "61;60.5;61;60.5;61");
        reference = ModelFactory.eINSTANCE.createReferencePart();
        reference.setCode("REF");
        reference.setName("last good dome");
        reference.setPieceKind(PieceKind.PART);
        reference.setCondition("Works, crown shiny, no cracks under the lens. Twelve years old: hardness and force may have grown with age.");
        reference.setAgeYears(12.0);
        reference.setThickness(1.45);
        bench.edit("Add reference part", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__REFERENCE_PARTS, reference));
        bench.read(reference, Bench.key("testing.wall", PieceKind.PART, "five spots", null, null), "1.38;1.42;1.45;1.48;1.52", session, null);
        bench.read(reference, Bench.key("testing.mass", PieceKind.PART, null, null, null), "1.31", session, balance);
        bench.read(reference, flange(), "51;51.5;51;50.5;51", session, durometer);
        estimated(bench.read(reference, Bench.key(HARD, PieceKind.PART, "crown", TABLE, DWELL), "49;48;49.5;49;50", session, durometer));
        bench.read(reference, dome(PEAK), "0.80;0.81;0.80", session, forceGauge);
        bench.read(reference, dome(LEAST), "0.19;0.19;0.20", session, forceGauge);
        bench.read(reference, dome(RATIO), "0.76", session, forceGauge);
        bench.read(reference, dome(INVERTED), "no", session, null);
        bench.read(reference, dome(RETURN), "0.1", session, camera);
        Attachments.copyIn(bench.session(), "reference-section.png", DomePictures.section(1.45, 0x444B52, false, false, false), AttachmentKind.PHOTO,
                "Drawn, not photographed: section of the reference part, bar 10 mm", reference);
    }

    private void estimated(Measurement measurement) {
        bench.edit("Curved crown: estimated", e -> e.set(measurement, ModelPackage.Literals.MEASUREMENT__KNOWLEDGE, Knowledge.ESTIMATED));
    }

    void targets() {
        bench.at("2026-02-06T19:00");
        bench.edit("Target sheet v1", e -> {
            TargetSheets.add(e, between(dome(PEAK), 0.70, 0.90, 3, 1.2), null);
            TargetSheets.add(e, nominal(flange(), 51, 1), null);
            TargetSheets.freeze(e, TargetSheets.current(e.project()), "maker (invented)");
        });
        bench.at("2026-02-20T19:00");
        bench.edit("Target sheet v2", e -> {
            TargetSheets.newVersion(e, "v1 asked for hardness 51 ± 1: tighter than the spread of the gauge. Hardness is a means, not an end.");
            var sheet = TargetSheets.current(e.project());
            e.remove(sheet.getTargets().get(1));
            TargetSheets.add(e, limit(dome(RATIO), TargetRule.AT_LEAST, 0.60, null, 3), null);
            TargetSheets.add(e, limit(dome(INVERTED), TargetRule.NEVER, null, null, 3), null);
            TargetSheets.add(e, limit(dome(RETURN), TargetRule.AT_MOST, null, 0.3, 2), null);
            TargetSheets.add(e, between(flange(), 45, 55, 0.5, null), null);
            TargetSheets.add(e, limit(dome(PRESSES), TargetRule.AT_LEAST, 5000.0, null, 2), null);
            TargetSheets.freeze(e, sheet, "maker (invented)");
        });
    }

    private static Target between(PropertyKey key, double low, double high, double weight, Double rejectAbove) {
        Target target = limit(key, TargetRule.BETWEEN, low, high, weight);
        target.setRejectAbove(rejectAbove);
        return target;
    }

    private static Target nominal(PropertyKey key, double nominal, double tolerance) {
        Target target = limit(key, TargetRule.NOMINAL, null, null, 2);
        target.setNominal(nominal);
        target.setTolerance(tolerance);
        return target;
    }

    private static Target limit(PropertyKey key, TargetRule rule, Double low, Double high, double weight) {
        Target target = ModelFactory.eINSTANCE.createTarget();
        target.setKey(key);
        target.setRule(rule);
        target.setLow(low);
        target.setHigh(high);
        target.setWeight(weight);
        return target;
    }

    /** Force, ratio, return and inversion of one dome, as typed. */
    void dome(Specimen part, Session session, String peak, String least, String ratio, String back, String inverted) {
        bench.read(part, dome(PEAK), peak, session, forceGauge);
        if (least != null) {
            bench.read(part, dome(LEAST), least, session, forceGauge);
        }
        if (ratio != null) {
            bench.read(part, dome(RATIO), ratio, session, forceGauge);
        }
        if (back != null) {
            bench.read(part, dome(RETURN), back, session, camera);
        }
        bench.read(part, dome(INVERTED), inverted, session, null);
    }

    /** The invented maker read the invented sheets and said so. */
    void acknowledge(Trial trial, Session session, String kind) {
        Step step = Bench.step(trial, kind);
        bench.edit("Acknowledge cautions of " + trial.getCode(), e -> {
            for (HazardPrompt prompt : bench.prompts(step, trial)) {
                List<Lot> lots = Acknowledgements.lots(step);
                for (Lot lot : lots.isEmpty() ? Collections.<Lot>singletonList(null) : lots) {
                    Acknowledgements.add(e, prompt.id(), session, lot, step, "maker (invented)", LocalDate.parse("2026-01-15"), "4",
                            prompt.needsSheet());
                }
            }
        });
    }
}
