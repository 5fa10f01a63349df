package org.flexwright.core.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.process.PotPlan;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.process.StepTime;
import org.flexwright.model.Mould;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** A pot or run being planned: a trial that belongs to no project, with the values for its number of parts. */
final class RunDraft {
    final int number;
    final int parts;
    final PotPlan.Pot pot;
    final Trial trial;
    final List<List<Double>> grams;

    RunDraft(Trial plan, int number, int parts, int recipeParts, int potStep, PotPlan.Pot pot, StepKinds kinds) {
        this.number = number;
        this.parts = parts;
        this.pot = pot;
        this.trial = EcoreUtil.copy(plan);
        forParts(trial, recipeParts, parts, kinds);
        this.grams = IntStream.range(0, plan.getSteps().size()).mapToObj(s -> s == potStep && pot != null ? pot.grams() : plan.getSteps().get(s).getUses().stream()
                .map(use -> use.getPlanned() == null ? Double.NaN : use.getPlanned() * parts / recipeParts).toList()).toList();
    }

    /** A pot that is a trial already. */
    RunDraft(Trial trial, int number) {
        this.number = number;
        this.parts = trial.getPartsWanted() == null ? 1 : trial.getPartsWanted();
        this.pot = null;
        this.trial = trial;
        this.grams = List.of();
    }

    /** Sets what goes with the number of parts in a trial that is being made. */
    static void forParts(Trial trial, int recipeParts, int parts, StepKinds kinds) {
        for (Step step : trial.getSteps()) {
            kinds.findStepKind(step.getKind()).ifPresent(kind -> kind.forParts(step, recipeParts, parts).forEach((name, value) -> {
                EStructuralFeature feature = step.getDetails() == null ? null : step.getDetails().eClass().getEStructuralFeature(name);
                if (feature != null) {
                    step.getDetails().eSet(feature, value);
                }
            }));
        }
        trial.setPartsWanted(parts);
    }

    /** How long a step takes; filling takes what the pot says. */
    Optional<StepTime> time(int step, int fillStep, StepKinds kinds) {
        if (step == fillStep && pot != null && pot.fill() != null) {
            return Optional.of(StepTime.hands(Estimate.exact(pot.fill(), Source.derived("filling time a part"))));
        }
        Step at = trial.getSteps().get(step);
        return kinds.findStepKind(at.getKind()).flatMap(kind -> kind.time(at, trial));
    }

    BatchRun run(Mould mould, Scheduler.Times times) {
        return new BatchRun(number, parts, new ArrayList<>(grams), pot, mould, times.begin(), times.contact(), times.filled(), times.free());
    }
}
