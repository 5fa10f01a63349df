package org.flexwright.core.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * What each material of a step should come to now. A step kind says so in its advice: {@code targetA, targetB} for the first of each, for
 * all others {@code target} and the place in the step from 1; what mends the mixture is named likewise, {@code addA, addB, add3}. Without such advice the plan counts.
 */
final class Targets {
    private static final String GRAM = "g";
    private final List<StepAdvice> advice;
    private final List<MaterialUse> uses;

    private Targets(List<StepAdvice> advice, List<MaterialUse> uses) {
        this.advice = advice;
        this.uses = uses;
    }

    static Targets of(Step step, Trial trial, Registries registries) {
        List<StepAdvice> advice = registries.advice(step, trial);
        return new Targets(advice, new ArrayList<>(step.getUses()));
    }

    /** The advice on the target of a material. */
    Optional<StepAdvice> target(int use) {
        return named("target", use);
    }

    /** The advice to add more of a material than was weighed, to mend the mixture. */
    Optional<StepAdvice> addition(int use) {
        return named("add", use);
    }

    /** A or B for the first material that is that component, else the place in the step. */
    private Optional<StepAdvice> named(String word, int use) {
        PartRole role = uses.get(use).getRole();
        boolean first = uses.stream().filter(u -> u.getRole() == role).findFirst().orElseThrow() == uses.get(use);
        String name = word + (first && role == PartRole.COMPONENT_A ? "A" : first && role == PartRole.COMPONENT_B ? "B" : String.valueOf(use + 1));
        return advice.stream().filter(a -> a.name().equals(name) && a.unit().equals(GRAM)).findFirst();
    }

    /** What is not about one material's target. */
    List<StepAdvice> rest() {
        return advice.stream().filter(a -> !a.name().startsWith("target")).toList();
    }

    /** All of it. */
    List<StepAdvice> all() {
        return advice;
    }

    /** Grams a material should come to now; null when neither advice nor plan says. */
    Double grams(int use) {
        return target(use).map(a -> a.value().likely()).orElse(uses.get(use).getPlanned());
    }

    /** Grams in the cup; 0 when nothing was weighed. */
    double weighed(int use) {
        Double grams = Mixtures.grams(uses.get(use));
        return grams == null ? 0 : grams;
    }
}
