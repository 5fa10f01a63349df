package org.flexwright.core.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.bench.BenchPlace.Part;
import org.flexwright.core.bench.BenchPlace.Standing;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.trial.Acknowledgements;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/** The screens of a trial in order, and which one is to do now. */
final class Places {
    /** A material short of its target by less than this counts as weighed out: the usual own limit of a ratio; common practice, no source. */
    static final double SHORT = 0.02;

    private final Registries registries;
    private final Gates gates;

    Places(Registries registries, Gates gates) {
        this.registries = registries;
        this.gates = gates;
    }

    List<BenchPlace> of(Trial trial, Instant now) {
        List<BenchPlace> places = new ArrayList<>();
        for (int i = 0; i < trial.getSteps().size(); i++) {
            step(trial, i, now, places);
        }
        places.add(new BenchPlace("end", "", trial.getSteps().size(), Part.END, -1, Say.END_TITLE.text(), Standing.AHEAD));
        int step = stepNow(trial);
        int here = 0;
        while (here < places.size() - 1 && !(places.get(here).step() == step && places.get(here).standing() == Standing.AHEAD)) {
            here++;
        }
        places.set(here, places.get(here).standing(Standing.HERE));
        return List.copyOf(places);
    }

    /** The step touched last while it runs, else the next one after it, else the first left behind; past the last when none is left. */
    private static int stepNow(Trial trial) {
        List<Step> steps = trial.getSteps();
        int last = steps.size() - 1;
        while (last >= 0 && steps.get(last).getState() == StepState.PLANNED) {
            last--;
        }
        if (last >= 0 && steps.get(last).getState() == StepState.RUNNING) {
            return last;
        }
        for (int i = last + 1; i < steps.size(); i++) {
            if (steps.get(i).getState() == StepState.PLANNED) {
                return i;
            }
        }
        for (int i = 0; i < steps.size(); i++) {
            if (!over(steps.get(i))) {
                return i;
            }
        }
        return steps.size();
    }

    private void step(Trial trial, int index, Instant now, List<BenchPlace> places) {
        Step step = trial.getSteps().get(index);
        boolean over = over(step);
        List<HazardPrompt> prompts = registries.prompts(step, trial);
        if (!prompts.isEmpty()) {
            boolean read = prompts.stream().allMatch(p -> acknowledged(step, p, now));
            places.add(place(index, step, Part.CAUTIONS, -1, Say.CAUTIONS_TITLE.text(), over || read || step.getState() == StepState.RUNNING));
        }
        if (gates.has(step, trial)) {
            places.add(place(index, step, Part.GATE, -1, Say.GATE_TITLE.text(title(step)), over || step.getState() == StepState.RUNNING));
        }
        Targets targets = Targets.of(step, trial, registries);
        List<Integer> uses = uses(step, targets);
        for (int use : uses) {
            places.add(place(index, step, Part.USE, use, Say.USE_TITLE.text(UseNames.of(step.getUses().get(use))), over || weighed(step, use, uses, targets)));
        }
        places.add(place(index, step, Part.WORK, -1, uses.isEmpty() ? title(step) : Say.CHECK_TITLE.text(title(step)), over));
    }

    private static BenchPlace place(int index, Step step, Part part, int use, String title, boolean behind) {
        String key = index + "/" + part.name().toLowerCase(java.util.Locale.ROOT) + (use < 0 ? "" : "/" + use);
        return new BenchPlace(key, step.getId() == null ? "" : step.getId(), index, part, use, title, behind ? Standing.BEHIND : Standing.AHEAD);
    }

    /** What is to be weighed in this step, in order of adding: the mould itself is not, nor what nobody said an amount of. */
    private static List<Integer> uses(Step step, Targets targets) {
        List<Integer> uses = new ArrayList<>();
        for (int i = 0; i < step.getUses().size(); i++) {
            MaterialUse use = step.getUses().get(i);
            if (use.getRole() != PartRole.MOULD && (targets.grams(i) != null || !use.getWeighings().isEmpty())) {
                uses.add(i);
            }
        }
        return uses;
    }

    /** Weighed out: nearly all of it is in the cup, or something that comes after it is. */
    private static boolean weighed(Step step, int use, List<Integer> uses, Targets targets) {
        if (step.getUses().get(use).getWeighings().isEmpty()) {
            return false;
        }
        boolean later = uses.stream().anyMatch(u -> u > use && !step.getUses().get(u).getWeighings().isEmpty());
        Double target = targets.grams(use);
        return later || target == null || targets.weighed(use) >= target * (1 - SHORT);
    }

    static boolean over(Step step) {
        return step.getState() == StepState.DONE || step.getState() == StepState.SKIPPED;
    }

    static String title(Step step) {
        return step.getTitle() == null || step.getTitle().isBlank() ? step.getKind() : step.getTitle();
    }

    /** True when a prompt was acknowledged for every lot in the step, in its session or the one it would belong to if it began now. */
    static boolean acknowledged(Step step, HazardPrompt prompt, Instant now) {
        if (!(step.eContainer() instanceof Trial trial) || !(trial.eContainer() instanceof Project project)) {
            return false;
        }
        Session session = BenchRooms.session(trial, step, now);
        List<Lot> lots = Acknowledgements.lots(step);
        return lots.isEmpty() ? Acknowledgements.given(project, prompt.id(), session, null)
                : lots.stream().allMatch(lot -> Acknowledgements.given(project, prompt.id(), session, lot));
    }
}
