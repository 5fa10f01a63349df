package org.flexwright.core.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.bench.BenchMark.State;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** The marks on a trial's clock. */
final class Marks {
    /** How long before its time a mark speaks up, and how long it counts as due; own choice: a minute to put things down, half of one to act. */
    private static final Duration LEAD = Duration.ofMinutes(1);
    private static final Duration DUE = Duration.ofSeconds(30);
    private static final Source PLAN = Source.ownRecord("planned times of the trial");

    private final Registries registries;
    private final Working working;

    Marks(Registries registries, Working working) {
        this.registries = registries;
        this.working = working;
    }

    List<BenchMark> of(Trial trial, Instant now) {
        Instant contact = TimeLine.contactOf(trial);
        List<BenchMark> marks = new ArrayList<>();
        if (contact != null) {
            working(trial, contact, now, marks);
        }
        for (int i = 0; i < trial.getSteps().size(); i++) {
            step(trial, i, contact, now, marks);
        }
        marks.sort(Comparator.comparing((BenchMark m) -> m.state() == State.DONE).thenComparing(BenchMark::likely).thenComparing(BenchMark::key));
        return List.copyOf(marks);
    }

    private void working(Trial trial, Instant contact, Instant now, List<BenchMark> marks) {
        working.time(trial).ifPresent(found -> {
            Estimate time = found.minutes();
            String label = found.ends().isEmpty() ? Say.MARK_WORKING.text() : Say.MARK_WORKING_MEANS.text(found.ends());
            boolean poured = trial.getSteps().stream().anyMatch(s -> Places.over(s) && s.getState() == StepState.DONE && fills(s));
            marks.add(mark("working", new StepMark("working", label, StepMark.after(contact, time.low()), StepMark.after(contact, time.likely()),
                    StepMark.after(contact, time.high()), poured, time.source()), contact, now));
            trial.getSteps().stream().filter(s -> s.getState() != StepState.SKIPPED).forEach(step -> {
                OptionalDouble needs = registries.findStepKind(step.getKind()).map(k -> k.needsWorkingTime(step, trial)).orElse(OptionalDouble.empty());
                if (needs.isPresent()) {
                    double before = WorkingTime.RESERVE * needs.getAsDouble();
                    marks.add(mark("pourBy", new StepMark("pourBy", Say.MARK_POUR_BY.text(), StepMark.after(contact, Math.max(0, time.low() - before)),
                            StepMark.after(contact, Math.max(0, time.likely() - before)), StepMark.after(contact, Math.max(0, time.high() - before)),
                            step.getStartedAt() != null, Source.commonPractice("working time less 1.3 times what the filling needs")), contact, now));
                }
            });
        });
    }

    private boolean fills(Step step) {
        return registries.findStepKind(step.getKind()).filter(k -> k.fillsMould()).isPresent();
    }

    private void step(Trial trial, int index, Instant contact, Instant now, List<BenchMark> marks) {
        Step step = trial.getSteps().get(index);
        if (step.getState() == StepState.SKIPPED) {
            return;
        }
        List<StepMark> own = registries.findStepKind(step.getKind()).map(k -> k.marks(step, trial)).orElse(List.of());
        own.stream().filter(Objects::nonNull).forEach(m -> marks.add(mark(index + "/" + m.name(), m, contact, now)));
        if (contact != null && step.getPlannedStart() != null && step.getPlannedStart() > 0) {
            marks.add(mark(index + "/start", StepMark.at("start", Places.title(step), StepMark.after(contact, step.getPlannedStart()),
                    step.getState() != StepState.PLANNED, PLAN), contact, now));
        }
        StepMark end = own.isEmpty() ? StepMark.end("end", Say.MARK_END.text(Places.title(step)), step, step.getPlannedDuration(), PLAN) : null;
        if (end != null) {
            marks.add(mark(index + "/end", end, contact, now));
        }
    }

    private static BenchMark mark(String key, StepMark mark, Instant contact, Instant now) {
        State state = state(mark, now);
        Instant zero = contact == null ? now : contact;
        String text = clock(zero, mark.likely());
        if (mark.high().isAfter(mark.low())) {
            text = Say.MARK_BAND.text(text, clock(zero, mark.low()), clock(zero, mark.high()));
        }
        return new BenchMark(key, mark.label(), mark.low(), mark.likely(), mark.high(), text, Duration.between(now, mark.low()), state, word(state), state.shape(),
                mark.source().display());
    }

    private static String clock(Instant zero, Instant at) {
        return TimeLine.clock(BenchClock.minutes(Duration.between(zero, at)));
    }

    static State state(StepMark mark, Instant now) {
        if (mark.done()) {
            return State.DONE;
        }
        if (now.isBefore(mark.low())) {
            return now.isBefore(mark.low().minus(LEAD)) ? State.COMING : State.SOON;
        }
        boolean band = mark.high().isAfter(mark.low());
        if (band) {
            return now.isAfter(mark.high()) ? State.OVER : State.WITHIN;
        }
        return now.isAfter(mark.high().plus(DUE)) ? State.OVER : State.DUE;
    }

    private static String word(State state) {
        return switch (state) {
            case COMING -> Say.STATE_COMING.text();
            case SOON -> Say.STATE_SOON.text();
            case WITHIN -> Say.STATE_WITHIN.text();
            case DUE -> Say.STATE_DUE.text();
            case OVER -> Say.STATE_OVER.text();
            case DONE -> Say.STATE_DONE.text();
        };
    }
}
