package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * A planned value that two trials do not share.
 *
 * @param step   title of the step
 * @param label  what it is
 * @param before as in the other trial; a dash when it had none
 * @param now    as in this one; a dash when it has none
 */
record PlanDifference(String step, String label, String before, String now) {

    private static final String NONE = "–";

    /** All of them, in the order of this trial's steps; steps are the same when they are of one kind and stand in the same place among those. */
    static List<PlanDifference> of(Trial trial, Trial other, Registries registries) {
        List<PlanDifference> all = new ArrayList<>();
        Map<String, Step> theirs = keyed(other);
        Map<String, Step> ours = keyed(trial);
        ours.forEach((key, step) -> {
            Step match = theirs.remove(key);
            if (match == null) {
                all.add(new PlanDifference(StepWords.title(step), "the step itself", "left out", "planned"));
            } else {
                compare(step, match, registries, all);
            }
        });
        theirs.values().forEach(step -> all.add(new PlanDifference(StepWords.title(step), "the step itself", "planned", "left out")));
        return all;
    }

    private static Map<String, Step> keyed(Trial trial) {
        Map<String, Step> keyed = new LinkedHashMap<>();
        Map<String, Integer> counts = new HashMap<>();
        trial.getSteps().forEach(step -> keyed.put(step.getKind() + " " + counts.merge(String.valueOf(step.getKind()), 1, Integer::sum), step));
        return keyed;
    }

    private static void compare(Step step, Step other, Registries registries, List<PlanDifference> all) {
        Map<String, CardLine> ours = planned(step, registries);
        Map<String, CardLine> theirs = planned(other, registries);
        Set<String> names = new LinkedHashSet<>(ours.keySet());
        names.addAll(theirs.keySet());
        for (String name : names) {
            String now = Optional.ofNullable(ours.get(name)).map(CardLine::planned).orElse("");
            String before = Optional.ofNullable(theirs.get(name)).map(CardLine::planned).orElse("");
            if (!now.equals(before)) {
                CardLine line = ours.getOrDefault(name, theirs.get(name));
                all.add(new PlanDifference(StepWords.title(step), line.label(), before.isEmpty() ? NONE : before, now.isEmpty() ? NONE : now));
            }
        }
    }

    private static Map<String, CardLine> planned(Step step, Registries registries) {
        Map<String, CardLine> lines = new LinkedHashMap<>();
        StepCard.lines(step, registries.findStepKind(step.getKind()).orElse(null)).forEach(line -> lines.put(line.name(), line));
        return lines;
    }
}
