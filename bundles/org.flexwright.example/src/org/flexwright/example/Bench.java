package org.flexwright.example;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.bench.BenchTaps;
import org.flexwright.core.bench.StepMark;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.reading.ReadingInput;
import org.flexwright.core.reading.ReadingParser;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.trial.Weighings;
import org.flexwright.model.BenchNote;
import org.flexwright.model.Decision;
import org.flexwright.model.GateWord;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.NoteKind;
import org.flexwright.model.Origin;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** The words with which the example is told: everything is typed as a person would type it and read by the same descriptors. */
final class Bench {
    private final Registries registries;
    private final StoryClock clock;
    private ProjectSession project;

    Bench(Registries registries, StoryClock clock) {
        this.registries = registries;
        this.clock = clock;
    }

    /** A clock that stands where the story is. */
    static final class StoryClock extends Clock {
        private Instant now = Instant.EPOCH;

        void at(String moment) {
            now = Bench.moment(moment);
        }

        void at(Instant moment) {
            now = moment;
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    void open(ProjectSession session) {
        project = session;
    }

    ProjectSession session() {
        return project;
    }

    FindingService findings() {
        return registries.findings();
    }

    List<HazardPrompt> prompts(Step step, Trial trial) {
        return registries.prompts(step, trial);
    }

    static Instant moment(String text) {
        return LocalDateTime.parse(text).toInstant(ZoneOffset.UTC);
    }

    void at(String moment) {
        clock.at(moment);
    }

    void at(Instant moment) {
        clock.at(moment);
    }

    void edit(String name, java.util.function.Consumer<Edit> work) {
        project.execute(name, work);
    }

    MaterialGrade grade(String code, String name, String family, PartRole role, String... hazards) {
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        grade.setCode(code);
        grade.setName(name);
        grade.setFamily(family);
        grade.setRole(role);
        grade.getHazards().addAll(List.of(hazards));
        edit("Add material " + code, e -> e.add(e.project(), ModelPackage.Literals.PROJECT__GRADES, grade));
        return grade;
    }

    Lot lot(MaterialGrade grade, String code, String opened, String expires, double price, double grams) {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode(code);
        lot.setOpened(LocalDate.parse(opened));
        lot.setExpires(LocalDate.parse(expires));
        lot.setPrice(price);
        lot.setAmount(grams);
        lot.setSheetDate(LocalDate.parse("2026-01-15"));
        lot.setSheetRevision("4");
        edit("Add lot " + code, e -> e.add(grade, ModelPackage.Literals.MATERIAL_GRADE__LOTS, lot));
        return lot;
    }

    /** A lot that stands there unopened. */
    Lot sealed(MaterialGrade grade, String code, String expires, double price, double grams) {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode(code);
        lot.setExpires(LocalDate.parse(expires));
        lot.setPrice(price);
        lot.setAmount(grams);
        edit("Add lot " + code, e -> e.add(grade, ModelPackage.Literals.MATERIAL_GRADE__LOTS, lot));
        return lot;
    }

    /** The smallest amount these are sold in. */
    void pack(double grams, MaterialGrade... grades) {
        edit("Packs", e -> List.of(grades).forEach(grade -> e.set(grade, ModelPackage.Literals.MATERIAL_GRADE__PACK_SIZE, grams)));
    }

    Registries registries() {
        return registries;
    }

    Instrument instrument(String name, String kind, String unit, double resolution, double accuracy) {
        Instrument instrument = ModelFactory.eINSTANCE.createInstrument();
        instrument.setName(name);
        instrument.setKind(kind);
        instrument.setUnit(unit);
        instrument.setResolution(resolution);
        instrument.setAccuracy(accuracy);
        edit("Add instrument " + name, e -> e.add(e.project(), ModelPackage.Literals.PROJECT__INSTRUMENTS, instrument));
        return instrument;
    }

    Session bench(String code, String at, double roomC, double roomRh, Instrument... instruments) {
        at(at);
        Session session = ModelFactory.eINSTANCE.createSession();
        session.setCode(code);
        session.setAt(moment(at));
        session.setRoomC(roomC);
        session.setRoomRh(roomRh);
        session.setConditioningHours(2.0);
        session.setWho("maker (invented)");
        session.getInstruments().addAll(List.of(instruments));
        edit("Add session " + code, e -> {
            e.add(e.project(), ModelPackage.Literals.PROJECT__SESSIONS, session);
            if (!e.project().getControlPieces().isEmpty()) {
                e.set(session, ModelPackage.Literals.SESSION__CONTROL_PIECE, e.project().getControlPieces().get(0));
            }
        });
        return session;
    }

    Trial trial(String code, String route, String title, String idea) {
        ProcessKind kind = registries.findProcessKind(route).orElseThrow(() -> new IllegalStateException("The example needs the route " + route));
        Trial[] made = new Trial[1];
        edit("New trial " + code, e -> made[0] = Trials.create(e, kind, registries::findStepKind, code, title, idea));
        return made[0];
    }

    Trial copy(Trial from, String code, String title, String idea) {
        Trial[] made = new Trial[1];
        edit("Copy " + from.getCode(), e -> {
            made[0] = Trials.copy(e, from, code, title);
            e.set(made[0], ModelPackage.Literals.TRIAL__IDEA, idea);
        });
        return made[0];
    }

    static Step step(Trial trial, String kind) {
        return trial.getSteps().stream().filter(s -> kind.equals(s.getKind())).findFirst().orElseThrow(() -> new IllegalStateException(trial.getCode()
                + " has no step " + kind));
    }

    /** Sets fields of a step from typed text: name, text, name, text... */
    void set(Trial trial, String kind, String... namesAndTexts) {
        Step step = step(trial, kind);
        EObject details = step.getDetails();
        edit("Plan " + step.getTitle() + " of " + trial.getCode(), e -> {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                EStructuralFeature feature = details.eClass().getEStructuralFeature(namesAndTexts[i]);
                if (!(feature instanceof EAttribute attribute)) {
                    throw new IllegalStateException(kind + " has no field " + namesAndTexts[i]);
                }
                e.set(details, feature, read(attribute, namesAndTexts[i + 1]));
                Provenances.keep(e, details, feature, Origin.TYPED, null, namesAndTexts[i + 1]);
            }
        });
    }

    private static Object read(EAttribute attribute, String typed) {
        return switch (FieldDescriptors.of(attribute).read(typed)) {
            case FieldInput.Read read -> read.value();
            case FieldInput.Rejected no -> throw new IllegalStateException(no.sentence());
        };
    }

    /** Plans a material; a planned mass in g. */
    MaterialUse use(Trial trial, String kind, PartRole role, Lot lot, double planned) {
        Step step = step(trial, kind);
        MaterialUse known = step.getUses().stream().filter(u -> u.getRole() == role).findFirst().orElse(null);
        MaterialUse use = known == null ? ModelFactory.eINSTANCE.createMaterialUse() : known;
        edit("Plan material of " + trial.getCode(), e -> {
            if (known == null) {
                use.setRole(role);
                e.add(step, ModelPackage.Literals.STEP__USES, use);
            }
            e.set(use, ModelPackage.Literals.MATERIAL_USE__LOT, lot);
            e.set(use, ModelPackage.Literals.MATERIAL_USE__GRADE, lot.eContainer());
            e.set(use, ModelPackage.Literals.MATERIAL_USE__PLANNED, planned);
        });
        return use;
    }

    void weigh(MaterialUse use, double net, boolean correction, Instrument balance) {
        edit("Weigh", e -> Weighings.add(e, use, null, null, net, correction, balance));
    }

    /** Every step of the trial was done in that session, as planned. */
    void done(Trial trial, Session session, String... kinds) {
        List<String> all = List.of(kinds);
        for (Step step : trial.getSteps()) {
            if (all.isEmpty() || all.contains(step.getKind())) {
                edit("Done: " + step.getTitle() + " of " + trial.getCode(), e -> {
                    e.set(step, ModelPackage.Literals.STEP__SESSION, session);
                    e.set(step, ModelPackage.Literals.STEP__STATE, StepState.DONE);
                    e.set(step, ModelPackage.Literals.STEP__STARTED_AT, session.getAt());
                    if (step.isUnconfirmed()) {
                        Trials.confirmAsPlanned(e, step);
                    }
                });
            }
        }
    }

    /** A step began and ended so many minutes after a moment. */
    void timed(Trial trial, String kind, Instant zero, double from, double to) {
        Step step = step(trial, kind);
        edit("Times of " + step.getTitle() + " of " + trial.getCode(), e -> {
            e.set(step, ModelPackage.Literals.STEP__STARTED_AT, StepMark.after(zero, from));
            e.set(step, ModelPackage.Literals.STEP__ENDED_AT, StepMark.after(zero, to));
        });
    }

    /** Something noticed at the bench in a step. */
    BenchNote noted(Trial trial, String kind, NoteKind noteKind, Instant at, String words) {
        clock.at(at);
        BenchNote[] note = new BenchNote[1];
        edit("Note in " + trial.getCode(), e -> note[0] = BenchTaps.note(e, trial, step(trial, kind), noteKind, words, null));
        return note[0];
    }

    /** What was decided at a step, with what stood against it. */
    void decided(Trial trial, String kind, GateWord word, Instant at, String reason, String... open) {
        clock.at(at);
        Decision decision = ModelFactory.eINSTANCE.createDecision();
        decision.setWord(word);
        decision.setAt(at);
        decision.setWho("maker (invented)");
        decision.setReason(reason);
        decision.getOpen().addAll(List.of(open));
        decision.setStep(step(trial, kind));
        edit("Decide in " + trial.getCode(), e -> e.add(trial, ModelPackage.Literals.TRIAL__DECISIONS, decision));
    }

    Part part(Trial trial, String code, PieceKind kind, Double thickness, String madeAt) {
        Part[] made = new Part[1];
        edit("Add part " + code + " of " + trial.getCode(), e -> made[0] = Trials.addPart(e, trial, code, kind, thickness, moment(madeAt)));
        return made[0];
    }

    /** Conditions of a reading; null where they do not matter. */
    static PropertyKey key(String property, PieceKind kind, String spot, String support, Double dwell) {
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(property);
        key.setPieceKind(kind);
        key.setSpot(spot);
        key.setSupport(support);
        key.setDwell(dwell);
        return key;
    }

    Measurement read(Specimen piece, PropertyKey key, String readings, Session session, Instrument gauge) {
        var def = registries.findProperty(key.getProperty()).orElseThrow(() -> new IllegalStateException("The example needs " + key.getProperty()));
        List<Reading> parsed = switch (ReadingParser.parse(def, readings)) {
            case ReadingInput.Understood yes -> yes.readings().stream().map(r -> r.toReading(session.getAt())).toList();
            case ReadingInput.Rejected no -> throw new IllegalStateException(no.sentence().text());
        };
        Measurement[] made = new Measurement[1];
        edit("Read " + def.title() + " of " + piece.getCode(), e -> {
            made[0] = Measurements.add(e, piece, key, parsed, session, gauge, session.getAt());
            e.set(made[0], ModelPackage.Literals.MEASUREMENT__PIECE_C, session.getRoomC());
        });
        return made[0];
    }

    void conclude(Trial trial, String sentence, double cost, double hours) {
        edit("Conclude " + trial.getCode(), e -> {
            Trials.conclude(e, trial, sentence);
            e.set(trial, ModelPackage.Literals.TRIAL__COST, cost);
            e.set(trial, ModelPackage.Literals.TRIAL__HOURS, hours);
        });
    }
}
