package org.flexwright.core.process;

import java.util.Objects;

import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.Weighing;

/** The mixture a step makes. */
public final class Mixtures {

    private Mixtures() {
    }

    /** What the step's uses come to. */
    public static Mixture of(Step step) {
        return new Mixture(step.getUses().stream().map(u -> new Mixture.Ingredient(u.getRole(), u.getGrade(), u.getLot(), u.getPlanned(), grams(u))).toList());
    }

    /** Grams weighed so far for one use; null when nothing was weighed. */
    public static Double grams(MaterialUse use) {
        return use.getWeighings().stream().map(Mixtures::net).filter(Objects::nonNull).reduce(Double::sum).orElse(null);
    }

    /** Net grams of one weighing: as entered, else gross less tare; null when neither is complete. */
    public static Double net(Weighing weighing) {
        if (weighing.getNet() != null) {
            return weighing.getNet();
        }
        return weighing.getGross() == null || weighing.getTare() == null ? null : weighing.getGross() - weighing.getTare();
    }
}
