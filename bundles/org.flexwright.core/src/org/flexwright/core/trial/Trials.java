package org.flexwright.core.trial;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.flexwright.core.Message;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.session.Edit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;

/** Trials: begun from a route, copied from another, carried through and concluded. All changes go through an {@link Edit}. */
public final class Trials {
    private Trials() {
    }

    /** The next free code: T01, T02... */
    public static String nextCode(Project project) {
        return Codes.next("T", 2, project.getTrials().stream().map(Trial::getCode).toList());
    }

    /** The next free code of a part: P1, P2... */
    public static String nextPartCode(Trial trial) {
        return Codes.next("P", 1, trial.getParts().stream().map(Part::getCode).toList());
    }

    /**
     * Begins a trial on a route, with its usual steps and their usual planned values.
     *
     * @param code      code of the trial, or null for the next free one
     * @param stepKinds finds a step kind; a step whose plugin is absent gets no details
     */
    public static Trial create(Edit edit, ProcessKind route, Function<String, Optional<StepKind>> stepKinds, String code, String title,
            String idea) {
        Trial trial = fresh(edit, code, title);
        trial.setIdea(idea);
        trial.setRoute(route.id());
        route.steps().forEach(planned -> trial.getSteps().add(StepPlans.of(edit, route, planned, stepKinds.apply(planned.kind()))));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial);
        return trial;
    }

    /** A trial as the route plans it, for estimates before one is begun; it is in no project and must not be put into one. */
    public static Trial sketch(ProcessKind route, Function<String, Optional<StepKind>> stepKinds) {
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setRoute(route.id());
        route.steps().forEach(planned -> trial.getSteps().add(StepPlans.sketch(route, planned, stepKinds.apply(planned.kind()))));
        return trial;
    }

    /** Copies a trial's plan, not what happened: every step of the copy is unconfirmed until {@link #confirmAsPlanned}. */
    public static Trial copy(Edit edit, Trial from, String code, String title) {
        Trial trial = fresh(edit, code, title == null ? from.getTitle() : title);
        trial.setRoute(from.getRoute());
        trial.setIdea(from.getIdea());
        trial.setBasedOn(from);
        from.getSteps().forEach(step -> trial.getSteps().add(StepPlans.copy(edit, step, from.getCode())));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial);
        return trial;
    }

    private static Trial fresh(Edit edit, String code, String title) {
        List<String> taken = edit.project().getTrials().stream().map(Trial::getCode).toList();
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode(Codes.free(code == null ? nextCode(edit.project()) : code.strip(), taken, "code.taken", nextCode(edit.project())));
        trial.setTitle(title);
        trial.setState(TrialState.PLANNED);
        trial.setCreatedAt(edit.now());
        return trial;
    }

    /** Adds a step of a kind at a place, with the defaults of its fields. */
    public static Step addStep(Edit edit, Trial trial, StepKind kind, int index) {
        Step step = StepPlans.of(kind);
        edit.add(trial, ModelPackage.Literals.TRIAL__STEPS, index, step);
        return step;
    }

    /** Moves a step one place earlier or later; at the end of the list it stays. */
    public static void moveStep(Edit edit, Step step, int by) {
        Trial trial = (Trial) step.eContainer();
        int to = Math.clamp(trial.getSteps().indexOf(step) + by, 0, trial.getSteps().size() - 1);
        edit.move(trial, ModelPackage.Literals.TRIAL__STEPS, step, to);
    }

    /** Takes a step out of the plan. Throws PlanException when it was begun or something was weighed in it: the record stays. */
    public static void removeStep(Edit edit, Step step) {
        boolean weighed = step.getUses().stream().anyMatch(use -> !use.getWeighings().isEmpty());
        if (step.getStartedAt() != null || step.getState() == StepState.RUNNING || step.getState() == StepState.DONE || weighed) {
            throw PlanException.of("step.begun", step.getTitle() == null ? step.getKind() : step.getTitle());
        }
        edit.remove(step);
    }

    /** Says that a step was done, or shall be done, as it is planned: its copied values count from now on. */
    public static void confirmAsPlanned(Edit edit, Step step) {
        edit.set(step, ModelPackage.Literals.STEP__UNCONFIRMED, false);
        edit.set(step, ModelPackage.Literals.STEP__CONFIRMED_BY, edit.who());
        edit.set(step, ModelPackage.Literals.STEP__CONFIRMED_AT, edit.now());
    }

    /** Starts a step now; the trial is then being made. */
    public static void start(Edit edit, Step step) {
        edit.set(step, ModelPackage.Literals.STEP__STATE, StepState.RUNNING);
        edit.set(step, ModelPackage.Literals.STEP__STARTED_AT, edit.now());
        if (step.eContainer() instanceof Trial trial && trial.getState() == TrialState.PLANNED) {
            edit.set(trial, ModelPackage.Literals.TRIAL__STATE, TrialState.MAKING);
        }
    }

    /** Ends a step now. */
    public static void finish(Edit edit, Step step) {
        edit.set(step, ModelPackage.Literals.STEP__STATE, StepState.DONE);
        edit.set(step, ModelPackage.Literals.STEP__ENDED_AT, edit.now());
    }

    /** Sets where a trial stands; failed and discarded need a reason. */
    public static void status(Edit edit, Trial trial, TrialState state, String reason) {
        boolean needsReason = state == TrialState.FAILED || state == TrialState.DISCARDED;
        if (needsReason && (reason == null || reason.isBlank())) {
            throw PlanException.of("status.reason", trial.getCode(), state.getLiteral());
        }
        edit.set(trial, ModelPackage.Literals.TRIAL__STATE, state);
        edit.set(trial, ModelPackage.Literals.TRIAL__STATE_REASON, needsReason ? reason.strip() : null);
        if (state == TrialState.MADE && trial.getMadeAt() == null) {
            edit.set(trial, ModelPackage.Literals.TRIAL__MADE_AT, edit.now());
        }
    }

    /** Writes down what was learned, in one sentence. */
    public static void conclude(Edit edit, Trial trial, String sentence) {
        if (sentence == null || sentence.isBlank()) {
            throw PlanException.of("conclusion.empty", trial.getCode());
        }
        edit.set(trial, ModelPackage.Literals.TRIAL__CONCLUSION, sentence.strip());
    }

    /**
     * Adds a part or test piece.
     *
     * @param code      code within the trial, or null for the next free one
     * @param thickness in mm at the spot that is measured, or null
     * @param madeAt    from when its age counts, or null
     */
    public static Part addPart(Edit edit, Trial trial, String code, PieceKind kind, Double thickness, java.time.Instant madeAt) {
        Part part = ModelFactory.eINSTANCE.createPart();
        part.setCode(Codes.free(code == null ? nextPartCode(trial) : code.strip(), trial.getParts().stream().map(Part::getCode).toList(),
                "part.taken", trial.getCode(), nextPartCode(trial)));
        part.setPieceKind(kind);
        part.setThickness(thickness);
        part.setMadeAt(notAhead(edit, "Made at", madeAt));
        edit.add(trial, ModelPackage.Literals.TRIAL__PARTS, part);
        return part;
    }

    /** Marks a part as failed, with the reason: it counts as no and is absent from means. */
    public static void fail(Edit edit, Part part, String reason) {
        edit.set(part, ModelPackage.Literals.SPECIMEN__FAILED, true);
        edit.set(part, ModelPackage.Literals.SPECIMEN__FAIL_REASON, reason);
    }

    static java.time.Instant notAhead(Edit edit, String what, java.time.Instant moment) {
        if (moment != null && moment.isAfter(edit.now())) {
            throw PlanException.of("future", what, moment);
        }
        return moment;
    }

    static String words(String key, Object... args) {
        return Message.of(Trials.class, key, args).text();
    }
}
