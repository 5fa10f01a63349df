package org.flexwright.core.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.bench.BenchPlace.Part;
import org.flexwright.core.bench.BenchPlace.Standing;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;

/**
 * The bench view without a screen: what a trial looks like at a moment, one step at a time. Holds no state: the same trial at the same
 * moment gives the same screen, whatever happened to the program in between. All calls on the model thread.
 */
public final class Bench {
    private final Registries registries;
    private final Gates gates;
    private final Marks marks;
    private final Places places;
    private final Offers offers;

    /** A bench that knows what the plugins offer. */
    public Bench(Registries registries) {
        this.registries = Objects.requireNonNull(registries, "registries");
        Working working = new Working(registries);
        this.gates = new Gates(registries, working);
        this.marks = new Marks(registries, working);
        this.places = new Places(registries, gates);
        this.offers = new Offers(registries, gates);
    }

    /** The screen to do now. */
    public BenchScreen view(Trial trial, Instant now) {
        return view(trial, now, null);
    }

    /** A screen by the key of its place, to look back or ahead; the one to do now for null and for a key that is no longer there. */
    public BenchScreen view(Trial trial, Instant now, String key) {
        List<BenchPlace> all = places.of(trial, now);
        BenchPlace place = all.stream().filter(p -> p.key().equals(key)).findFirst()
                .orElseGet(() -> all.stream().filter(p -> p.standing() == Standing.HERE).findFirst().orElseThrow());
        Step step = place.part() == Part.END ? null : trial.getSteps().get(place.step());
        Targets targets = step == null ? null : Targets.of(step, trial, registries);
        BenchGate gate = step == null || place.part() != Part.GATE && step.getState() != StepState.PLANNED ? null : gates.of(step, trial, now);
        BenchClock clock = BenchClock.of(trial, now);
        return new BenchScreen(code(trial), cup(trial), place, all, trial.getSteps().size(), step == null ? null : step.getState(), title(place, step),
                sentence(trial, place, step, gate, targets), figures(place, step, targets, now), offers.of(trial, place, gate, targets, now), clock,
                marks.of(trial, now), gate, cautions(step, trial, now), next(all, place, trial), notices(trial, all, clock));
    }

    /** All screens of a trial. */
    public List<BenchPlace> places(Trial trial, Instant now) {
        return places.of(trial, now);
    }

    /** The marks on a trial's clock, for a view that redraws nothing else every second. */
    public List<BenchMark> marks(Trial trial, Instant now) {
        return marks.of(trial, now);
    }

    /** The gate of a step; null when it has none. */
    public BenchGate gate(Step step, Trial trial, Instant now) {
        return gates.of(step, trial, now);
    }

    /** The trials being made, the one whose next mark comes first at the top. */
    public List<BenchCup> cups(Project project, Instant now) {
        List<BenchCup> cups = new ArrayList<>();
        for (Trial trial : project.getTrials()) {
            if (trial.getState() == TrialState.MAKING) {
                BenchMark due = marks.of(trial, now).stream().filter(m -> m.state() != BenchMark.State.DONE).findFirst().orElse(null);
                String doing = places.of(trial, now).stream().filter(p -> p.standing() == Standing.HERE).map(BenchPlace::title).findFirst().orElse("");
                cups.add(new BenchCup(trial, cup(trial), BenchClock.of(trial, now), doing, due));
            }
        }
        cups.sort(Comparator.comparing((BenchCup c) -> c.nextDue() == null ? Instant.MAX : c.nextDue().likely()));
        return List.copyOf(cups);
    }

    /** What can be answered on a screen: the points of its gate, or those of the next step's while this one runs. */
    List<BenchGate.Asked> answerable(BenchScreen screen, Trial trial, Instant now) {
        Step step = screen.place().part() == Part.WORK ? trial.getSteps().get(screen.place().step()) : null;
        return step != null ? gates.ahead(step, trial, now) : screen.gate() == null ? List.of() : screen.gate().asked();
    }

    Registries registries() {
        return registries;
    }

    private static String code(Trial trial) {
        return trial.getCode() == null ? "" : trial.getCode();
    }

    private static String cup(Trial trial) {
        return trial.getCupLabel() == null || trial.getCupLabel().isBlank() ? code(trial) : trial.getCupLabel();
    }

    private static String title(BenchPlace place, Step step) {
        return step == null || place.part() != Part.CAUTIONS ? place.title() : Say.CAUTIONS_OF.text(Places.title(step));
    }

    private String sentence(Trial trial, BenchPlace place, Step step, BenchGate gate, Targets targets) {
        if (trial.getState() == TrialState.DISCARDED || trial.getState() == TrialState.FAILED) {
            return Say.SENTENCE_ENDED.text(trial.getStateReason() == null ? trial.getState().getLiteral() : trial.getStateReason());
        }
        return switch (place.part()) {
            case CAUTIONS -> Say.SENTENCE_CAUTIONS.text();
            case GATE -> gate == null || step.getState() != StepState.PLANNED ? Say.SENTENCE_GATE_PAST.text()
                    : gate.met() ? Say.SENTENCE_GATE_MET.text(Places.title(step)) : Say.SENTENCE_GATE_OPEN.text(gate.against().size(), gate.against().getFirst().sentence().text());
            case USE -> use(step, place.use(), targets);
            case WORK -> work(step, targets);
            case END -> Say.SENTENCE_END.text();
        };
    }

    private static String use(Step step, int use, Targets targets) {
        String name = UseNames.of(step.getUses().get(use));
        Double target = targets.grams(use);
        if (target == null) {
            return Say.SENTENCE_USE_FREE.text(name);
        }
        double missing = target - targets.weighed(use);
        boolean any = !step.getUses().get(use).getWeighings().isEmpty();
        if (any && missing < -Places.SHORT * target) {
            return Say.SENTENCE_USE_MUCH.text(grams(-missing), name);
        }
        return missing <= target * Places.SHORT && any ? Say.SENTENCE_USE_ENOUGH.text(name) : Say.SENTENCE_USE.text(grams(Math.max(0, missing)), name);
    }

    private static String grams(double grams) {
        return org.flexwright.core.Figures.of(Figuring.shown(grams, "g"), "g");
    }

    /** What the step itself says comes first. */
    private String work(Step step, Targets targets) {
        Optional<String> said = targets.all().stream().filter(a -> a.remark() != null).max(Comparator.comparing(a -> a.remark().severity()))
                .map(a -> a.remark().message().text());
        String summary = registries.findStepKind(step.getKind()).map(StepKind::summary).orElseGet(Say.SENTENCE_ABSENT::text);
        return switch (step.getState()) {
            case PLANNED -> said.orElse(summary);
            case RUNNING -> said.orElse(summary);
            case DONE -> Say.SENTENCE_DONE.text();
            case SKIPPED -> Say.SENTENCE_SKIPPED.text();
        };
    }

    private List<BenchFigure> figures(BenchPlace place, Step step, Targets targets, Instant now) {
        return switch (place.part()) {
            case USE -> Figuring.use(step, place.use(), targets);
            case WORK -> Figuring.work(step, targets, registries.findStepKind(step.getKind()).filter(k -> Offers.details(step, k)).isPresent(), now);
            case CAUTIONS, GATE, END -> List.of();
        };
    }

    private List<BenchCaution> cautions(Step step, Trial trial, Instant now) {
        return step == null ? List.of()
                : registries.prompts(step, trial).stream().map(p -> new BenchCaution(p.id(), p.hazard().text(), p.controls().text(), p.source().display(),
                        p.needsSheet(), Places.acknowledged(step, p, now))).toList();
    }

    private static String next(List<BenchPlace> all, BenchPlace place, Trial trial) {
        int at = all.indexOf(place);
        for (BenchPlace ahead : all.subList(Math.min(at + 1, all.size()), all.size())) {
            if (ahead.standing() != Standing.BEHIND) {
                Double start = ahead.step() > place.step() && ahead.part() != Part.END ? trial.getSteps().get(ahead.step()).getPlannedStart() : null;
                return start == null || start < 0 ? ahead.title() : Say.NEXT_AT.text(ahead.title(), TimeLine.clock(start));
            }
        }
        return "";
    }

    private static List<String> notices(Trial trial, List<BenchPlace> all, BenchClock clock) {
        List<String> notices = new ArrayList<>();
        if (clock.state() == BenchClock.State.AHEAD || clock.state() == BenchClock.State.AT_LEAST) {
            notices.add(clock.sentence());
        }
        int here = all.stream().filter(p -> p.standing() == Standing.HERE).mapToInt(BenchPlace::step).findFirst().orElse(0);
        for (int i = 0; i < Math.min(here, trial.getSteps().size()); i++) {
            if (!Places.over(trial.getSteps().get(i))) {
                notices.add(Say.NOTICE_BEHIND.text(Places.title(trial.getSteps().get(i))));
            }
        }
        long waiting = trial.getNotes().stream().filter(n -> n.getSortedAt() == null).count();
        if (waiting > 0) {
            notices.add(Say.NOTICE_NOTES.text(waiting));
        }
        return notices;
    }
}
