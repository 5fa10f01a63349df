package org.flexwright.core.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.bench.BenchGate.Asked;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Acknowledgements;
import org.flexwright.core.trial.Attachments;
import org.flexwright.core.trial.Moulds;
import org.flexwright.core.trial.PlanException;
import org.flexwright.core.trial.Trials;
import org.flexwright.core.trial.Weighings;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.BenchNote;
import org.flexwright.model.Decision;
import org.flexwright.model.GateWord;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.NoteKind;
import org.flexwright.model.Origin;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.model.Weighing;

/**
 * What taps at the bench do. Each is one edit, in the journal and flushed before {@link #tap} returns. What is refused changes nothing and
 * says in one sentence what is allowed: {@link PlanException}.
 */
public final class BenchTaps {
    private static final Pattern SHEET = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})\\s+(\\S.*)");

    private BenchTaps() {
    }

    /**
     * Does what a tap of the screen offers.
     *
     * @param place key of the screen it was offered on; null for the one to do now
     * @param key   key of the tap
     * @param given number, choice, reason or words as text; empty for a touch
     * @throws PlanException when the screen does not offer it, or what was given is not allowed
     */
    public static void tap(ProjectSession session, Bench bench, Trial trial, Instant now, String place, String key, String given) {
        BenchScreen screen = bench.view(trial, now, place);
        BenchTap tap = screen.tap(key).orElseThrow(() -> refused(Say.REFUSED_NOT_HERE, key, screen.title(),
                String.join(", ", screen.taps().stream().map(BenchTap::key).toList())));
        String value = given == null ? "" : given.strip();
        if (tap.kind() == BenchTap.Kind.REASON && value.isEmpty()) {
            throw refused(Say.REFUSED_REASON, tap.label());
        }
        String name = Say.EDIT.text(trial.getCode(), tap.label());
        if (key.equals("undo")) {
            if (!session.canUndo()) {
                throw refused(Say.REFUSED_UNDO);
            }
            session.undo();
        } else if (key.equals("photo")) {
            photo(session, trial, step(trial, screen.place()), Path.of(value));
        } else {
            session.execute(name, edit -> perform(edit, bench, trial, screen, tap, value));
        }
    }

    private static void perform(Edit edit, Bench bench, Trial trial, BenchScreen screen, BenchTap tap, String value) {
        Step step = step(trial, screen.place());
        String[] key = tap.key().split("/", 2);
        switch (key[0]) {
            case "start" -> start(edit, step);
            case "finish" -> finish(edit, bench, step);
            case "skip" -> skip(edit, step, value);
            case "contact" -> contact(edit, trial, edit.now());
            case "contactAgo" -> contactAgo(edit, trial, (Double) read(tap.field(), value));
            case "weigh" -> weigh(edit, step.getUses().get(screen.place().use()), null, null, (Double) read(tap.field(), value),
                    mends(bench, trial, step, screen.place().use()), null);
            case "correct" -> weigh(edit, step.getUses().get(Integer.parseInt(key[1])), null, null, (Double) read(tap.field(), value), true, null);
            case "field" -> field(edit, step, key[1], value, null);
            case "asPlanned", "asTimed" -> field(edit, step, key[1], screen.tap("field/" + key[1]).orElseThrow().offered(),
                    key[0].equals("asTimed") ? Origin.MEASURED : Origin.TYPED);
            case "ask" -> field(edit, asked(bench.answerable(screen, trial, edit.now()), key[1]), key[1], value, null);
            case "ack" -> acknowledge(edit, bench, trial, step, value);
            case "go" -> decide(edit, bench, trial, step, GateWord.GO, value);
            case "hold" -> decide(edit, bench, trial, step, GateWord.HOLD, value);
            case "dump" -> decide(edit, bench, trial, step, GateWord.DUMP, value);
            case "note" -> note(edit, trial, step, NoteKind.NOTE, value, null);
            case "odd" -> note(edit, trial, step, NoteKind.ODD, value, null);
            case "room" -> room(edit, trial, step, key[1], value);
            case "made" -> Trials.status(edit, trial, TrialState.MADE, null);
            default -> throw new IllegalStateException("No such tap: " + tap.key());
        }
    }

    /** True when the mixture is complete and asks for more of this material. */
    private static boolean mends(Bench bench, Trial trial, Step step, int use) {
        return Targets.of(step, trial, bench.registries()).addition(use).isPresent();
    }

    private static Step step(Trial trial, BenchPlace place) {
        return place.step() < trial.getSteps().size() ? trial.getSteps().get(place.step()) : null;
    }

    private static Step asked(List<Asked> asked, String feature) {
        return asked.stream().filter(a -> a.point().answer().equals(feature)).map(Asked::step).filter(Objects::nonNull).findFirst().orElseThrow();
    }

    private static Object read(FieldDescriptor field, String value) {
        FieldInput input = field.withOptional(false).read(value);
        if (input instanceof FieldInput.Rejected rejected) {
            throw new PlanException(Say.REFUSED_VALUE.with(rejected.sentence()));
        }
        return ((FieldInput.Read) input).value();
    }

    private static PlanException refused(Say why, Object... args) {
        return new PlanException(why.with(args));
    }

    private static void needsReason(String reason, String what) {
        if (reason == null || reason.isBlank()) {
            throw refused(Say.REFUSED_REASON, what);
        }
    }

    private static Trial trialOf(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof Trial trial) {
                return trial;
            }
        }
        throw new IllegalArgumentException("Not in a trial.");
    }

    /** Begins a step now; where the plan puts it at contact, this is contact. Throws PlanException when it has begun. */
    public static void start(Edit edit, Step step) {
        if (step.getState() != StepState.PLANNED) {
            throw refused(Say.REFUSED_STARTED, Places.title(step));
        }
        Trial trial = trialOf(step);
        BenchRooms.use(edit, trial, step);
        Trials.start(edit, step);
        if (step.isUnconfirmed()) {
            Trials.confirmAsPlanned(edit, step);
        }
        if (step.getPlannedStart() != null && step.getPlannedStart() == 0 && trial.getContactAt() == null) {
            contact(edit, trial, edit.now());
        }
    }

    /** Ends a step now, beginning it first when it was not begun. The end of a step that fills the trial's mould counts as a cast. */
    public static void finish(Edit edit, Bench bench, Step step) {
        if (step.getState() == StepState.PLANNED) {
            start(edit, step);
        }
        Trials.finish(edit, step);
        Trial trial = trialOf(step);
        Mould mould = trial.getMould();
        boolean fills = bench.registries().findStepKind(step.getKind()).filter(k -> k.fillsMould()).isPresent();
        if (fills && mould != null && mould.getCasts().stream().noneMatch(c -> c.getTrial() == trial)) {
            Moulds.cast(edit, mould, trial, null, null, mould.getCavities());
        }
    }

    /** Leaves a step out; needs a reason. */
    public static void skip(Edit edit, Step step, String reason) {
        needsReason(reason, Say.TAP_SKIP.text());
        edit.set(step, ModelPackage.Literals.STEP__STATE, StepState.SKIPPED);
        edit.set(step, ModelPackage.Literals.ENTRY__NOTE, Say.SKIPPED_NOTE.text(reason.strip()));
    }

    /** Says when the components first met; in place of what was said before. Throws PlanException for a moment that lies ahead. */
    public static void contact(Edit edit, Trial trial, Instant at) {
        if (at.isAfter(edit.now())) {
            throw refused(Say.REFUSED_AHEAD);
        }
        edit.set(trial, ModelPackage.Literals.TRIAL__CONTACT_AT, at);
        if (trial.getState() == TrialState.PLANNED) {
            edit.set(trial, ModelPackage.Literals.TRIAL__STATE, TrialState.MAKING);
        }
    }

    /** Says how many minutes ago the components met. */
    public static void contactAgo(Edit edit, Trial trial, double minutes) {
        contact(edit, trial, edit.now().minus(Duration.ofMillis(Math.round(minutes * 60_000))));
    }

    /**
     * Adds a weighing; the step begins with its first one. When it brings the second of two components that react into the cup, and contact
     * was not said yet, this is contact.
     *
     * @param gross   as the balance shows with the cup, or null
     * @param tare    what it showed before, or null
     * @param net     what was added, or null when gross and tare say it
     * @param mends   true when it mends the mixture
     * @param balance the balance, or null
     */
    public static Weighing weigh(Edit edit, MaterialUse use, Double gross, Double tare, Double net, boolean mends, Instrument balance) {
        Trial trial = trialOf(use);
        if (use.eContainer() instanceof Step step && step.getState() == StepState.PLANNED) {
            start(edit, step);
        }
        boolean contact = Contact.made(use) && TimeLine.contactOf(trial) == null;
        Weighing weighing = Weighings.add(edit, use, gross, tare, net, mends, balance);
        if (contact) {
            contact(edit, trial, edit.now());
        }
        return weighing;
    }

    /**
     * Enters what happened into a field of the step's details.
     *
     * @param typed  as a person types it, in the field's unit when it names none
     * @param origin where it comes from; null: measured for numbers, typed for words
     */
    public static void field(Edit edit, Step step, String name, String typed, Origin origin) {
        EObject details = step.getDetails();
        FieldDescriptor field = Offers.field(details, name);
        if (field == null) {
            throw refused(Say.REFUSED_FIELD, name, Places.title(step));
        }
        Object value = read(field, typed);
        EStructuralFeature feature = details.eClass().getEStructuralFeature(name);
        edit.set(details, feature, value);
        Origin from = origin != null ? origin : field.type() == org.flexwright.core.field.FieldType.QUANTITY ? Origin.MEASURED : Origin.TYPED;
        Provenances.keep(edit, details, feature, from, null, typed);
    }

    /**
     * Acknowledges the open cautions of a step for every lot in it, in its session.
     *
     * @param sheet date and revision of the data sheet that was read, {@code 2026-01-15 4}; empty when the lots say which came with them
     */
    public static void acknowledge(Edit edit, Bench bench, Trial trial, Step step, String sheet) {
        Session session = BenchRooms.use(edit, trial, step);
        String who = edit.who().isEmpty() ? session.getWho() : edit.who();
        Matcher read = SHEET.matcher(sheet == null ? "" : sheet.strip());
        boolean typed = read.matches();
        if (!typed && sheet != null && !sheet.isBlank()) {
            throw refused(Say.REFUSED_SHEET, sheet.strip());
        }
        List<HazardPrompt> open = bench.registries().prompts(step, trial).stream().filter(p -> !Places.acknowledged(step, p, edit.now())).toList();
        List<Lot> lots = Acknowledgements.lots(step);
        for (HazardPrompt prompt : open) {
            for (Lot lot : lots.isEmpty() ? Collections.<Lot>singletonList(null) : lots) {
                Optional<Sheets.Sheet> known = typed ? Optional.of(new Sheets.Sheet(date(read.group(1)), read.group(2)))
                        : lot == null ? Sheets.newest(step) : Sheets.of(lot);
                Acknowledgements.add(edit, prompt.id(), session, lot, step, who, known.map(Sheets.Sheet::date).orElse(null),
                        known.map(Sheets.Sheet::revision).orElse(null), prompt.needsSheet());
            }
        }
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw refused(Say.REFUSED_SHEET, text);
        }
    }

    /**
     * Writes down what was decided at a gate, with what stood against it: to go on begins the step, to dump discards the trial.
     *
     * @param step   the step whose gate it is, or null
     * @param reason needed to hold, to dump, and to go on against an open or unknown point
     * @throws PlanException when the reason is missing
     */
    public static Decision decide(Edit edit, Bench bench, Trial trial, Step step, GateWord word, String reason) {
        BenchGate gate = step == null || step.getState() != StepState.PLANNED ? null : bench.gate(step, trial, edit.now());
        List<GatePoint> against = gate == null ? List.of() : gate.against();
        if (word != GateWord.GO || !against.isEmpty()) {
            needsReason(reason, against.isEmpty() || word != GateWord.GO ? word.getLiteral() : Say.REASON_AGAINST.text(against.getFirst().title()));
        }
        Decision decision = ModelFactory.eINSTANCE.createDecision();
        decision.setWord(word);
        decision.setAt(edit.now());
        decision.setWho(edit.who().isEmpty() ? null : edit.who());
        decision.setReason(reason == null || reason.isBlank() ? null : reason.strip());
        against.forEach(p -> decision.getOpen().add(Say.OPEN_POINT.text(p.title(), p.sentence().text())));
        decision.setStep(step);
        edit.add(trial, ModelPackage.Literals.TRIAL__DECISIONS, decision);
        if (word == GateWord.GO && step != null && step.getState() == StepState.PLANNED) {
            start(edit, step);
        } else if (word == GateWord.DUMP) {
            Trials.status(edit, trial, TrialState.DISCARDED, reason);
        }
        return decision;
    }

    /**
     * Keeps a note, a picture or that something was odd; words may come later.
     *
     * @param step       the step it was noticed in, or null
     * @param words      the words, or empty
     * @param attachment the picture, or null
     */
    public static BenchNote note(Edit edit, Trial trial, Step step, NoteKind kind, String words, Attachment attachment) {
        BenchNote note = ModelFactory.eINSTANCE.createBenchNote();
        note.setKind(kind);
        note.setAt(edit.now());
        note.setStep(step);
        note.setNote(words == null || words.isBlank() ? null : words.strip());
        note.setAttachment(attachment);
        edit.add(trial, ModelPackage.Literals.TRIAL__NOTES, note);
        return note;
    }

    /** Copies a picture into the project and keeps it as a note of the trial. */
    public static void photo(ProjectSession session, Trial trial, Step step, Path file) {
        Attachment attachment = Attachments.copyIn(session, file, AttachmentKind.PHOTO, null, step == null ? trial : step);
        session.execute(Say.EDIT.text(trial.getCode(), Say.TAP_PHOTO.text()), edit -> note(edit, trial, step, NoteKind.PHOTO, "", attachment));
    }

    /** Copies the picture of a note that was kept without it into the project. */
    public static void attach(ProjectSession session, Trial trial, BenchNote note, Path file) {
        Attachment attachment = Attachments.copyIn(session, file, AttachmentKind.PHOTO, null, note.getStep() == null ? trial : note.getStep());
        session.execute(Say.EDIT.text(trial.getCode(), Say.TAP_PHOTO.text()), edit -> edit.set(note, ModelPackage.Literals.BENCH_NOTE__ATTACHMENT, attachment));
    }

    /** Says later what a note was; needs words. */
    public static void sort(Edit edit, BenchNote note, String as) {
        needsReason(as, Say.SORT.text());
        edit.set(note, ModelPackage.Literals.BENCH_NOTE__SORTED_AT, edit.now());
        edit.set(note, ModelPackage.Literals.BENCH_NOTE__SORTED_AS, as.strip());
    }

    private static void room(Edit edit, Trial trial, Step step, String name, String typed) {
        var feature = (org.eclipse.emf.ecore.EAttribute) ModelPackage.Literals.SESSION.getEStructuralFeature(name);
        Object value = read(FieldDescriptors.of(feature), typed);
        Session session = BenchRooms.use(edit, trial, step);
        edit.set(session, feature, value);
        Provenances.keep(edit, session, feature, Origin.MEASURED, null, typed);
    }
}
