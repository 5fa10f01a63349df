package org.flexwright.core.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.bench.BenchGate.Asked;
import org.flexwright.core.bench.GatePoint.State;
import org.flexwright.core.bench.GatePoint.When;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Decision;
import org.flexwright.model.Project;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** What must be so before a step: asked of its kind, of the steps before it, and of the trial as a whole. */
final class Gates {
    private static final Source RESERVE_SOURCE = Source.commonPractice("working time left at least 1.3 times what the filling needs");

    private final Registries registries;
    private final Working working;

    Gates(Registries registries, Working working) {
        this.registries = registries;
        this.working = working;
    }

    /** True when a step has a gate: it fills the mould, needs working time, or its kind asks for something before it. */
    boolean has(Step step, Trial trial) {
        return kind(step).filter(k -> k.fillsMould() || k.needsWorkingTime(step, trial).isPresent()
                || k.gate(step, trial, Instant.EPOCH).stream().anyMatch(p -> p.when() == When.BEFORE)).isPresent();
    }

    private Optional<StepKind> kind(Step step) {
        return registries.findStepKind(step.getKind());
    }

    /** The gate of a step; null when it has none. */
    BenchGate of(Step step, Trial trial, Instant now) {
        if (!has(step, trial)) {
            return null;
        }
        List<Asked> asked = new ArrayList<>();
        int at = trial.getSteps().indexOf(step);
        int from = at;
        while (from > 0 && !has(trial.getSteps().get(from - 1), trial)) {
            from--;
        }
        for (Step earlier : trial.getSteps().subList(Math.max(0, from - 1), at)) {
            asked(earlier, trial, now, When.AFTER, asked);
        }
        asked(step, trial, now, When.BEFORE, asked);
        kind(step).filter(k -> k.fillsMould() || k.needsWorkingTime(step, trial).isPresent())
                .ifPresent(k -> asked.add(new Asked(null, timeLeft(trial, k.needsWorkingTime(step, trial), now))));
        asked.add(new Asked(step, cautions(step, trial, now)));
        asked.add(new Asked(null, stops(trial, now)));
        return new BenchGate(asked, trial.getDecisions().stream().filter(d -> d.getStep() == step).reduce((a, b) -> b).orElse((Decision) null));
    }

    /** What can already be answered for the gate of the step after this one while this one runs: the leftover in the cup while the part cures. */
    List<Asked> ahead(Step step, Trial trial, Instant now) {
        int next = trial.getSteps().indexOf(step) + 1;
        List<Asked> asked = new ArrayList<>();
        if (step.getState() == StepState.RUNNING && next < trial.getSteps().size()) {
            asked(trial.getSteps().get(next), trial, now, When.BEFORE, asked);
        }
        return asked.stream().filter(a -> !a.point().answer().isEmpty()).toList();
    }

    private void asked(Step step, Trial trial, Instant now, When when, List<Asked> asked) {
        kind(step).ifPresent(k -> k.gate(step, trial, now).stream().filter(p -> p.when() == when).forEach(p -> asked.add(new Asked(step, p))));
    }

    /** The earliest end of the working time decides for going on, the latest against it; in between nothing tells. */
    private GatePoint timeLeft(Trial trial, OptionalDouble needs, Instant now) {
        Instant contact = TimeLine.contactOf(trial);
        Optional<Estimate> time = working.minutes(trial);
        String title = Say.TIME_TITLE.text();
        Message open = needs.isEmpty() ? Say.TIME_NEED.with() : contact == null ? Say.TIME_CONTACT.with() : time.isEmpty() ? Say.TIME_WORKING.with() : null;
        if (open != null) {
            return GatePoint.before("time", title, State.UNKNOWN, open, RESERVE_SOURCE);
        }
        double passed = Math.max(0, BenchClock.minutes(Duration.between(contact, now)));
        double wanted = WorkingTime.RESERVE * needs.getAsDouble();
        double low = time.get().low() - passed;
        double high = time.get().high() - passed;
        State state = now.isBefore(contact) ? State.UNKNOWN : low >= wanted ? State.MET : high < wanted ? State.OPEN : State.UNKNOWN;
        String left = high > low ? FieldText.range(Math.max(0, low), Math.max(0, high)) + " min" : Figures.of(Math.max(0, low), "min", 3);
        Message sentence = Say.TIME_LEFT.with(left, Figures.of(wanted, "min", 3), Figures.of(needs.getAsDouble(), "min", 3), time.get().source().display());
        return GatePoint.before("time", title, state, sentence, RESERVE_SOURCE);
    }

    private GatePoint cautions(Step step, Trial trial, Instant now) {
        List<HazardPrompt> open = registries.prompts(step, trial).stream().filter(p -> !Places.acknowledged(step, p, now)).toList();
        return GatePoint.before("cautions", Say.GATE_CAUTIONS.text(), open.isEmpty() ? State.MET : State.OPEN,
                open.isEmpty() ? Say.GATE_CAUTIONS_READ.with() : Say.GATE_CAUTIONS_OPEN.with(open.size(), open.getFirst().hazard().text()), Source.commonPractice());
    }

    private GatePoint stops(Trial trial, Instant now) {
        if (!(trial.eContainer() instanceof Project project)) {
            return GatePoint.before("stops", Say.GATE_STOPS.text(), State.UNKNOWN, Say.GATE_STOPS_UNKNOWN.with(), Source.ownRecord("findings"));
        }
        List<Finding> stops = registries.findings().check(project, trial, now).stream()
                .filter(f -> f.severity() == Severity.STOP && FindingService.overridden(f, project).isEmpty()).toList();
        return GatePoint.before("stops", Say.GATE_STOPS.text(), stops.isEmpty() ? State.MET : State.OPEN,
                stops.isEmpty() ? Say.GATE_STOPS_NONE.with() : stops.getFirst().message(), stops.isEmpty() ? Source.ownRecord("findings") : stops.getFirst().source());
    }
}
