package org.flexwright.core.trial;

import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.flexwright.core.process.Mixtures;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;

/**
 * What is left of lots and premixes: what there was less everything that was weighed out of it. Failed and discarded trials used theirs up
 * as well; a premix uses up its ingredients when it is made, not when it is weighed out. Recipes and their copies count for nothing.
 */
public final class Stock {

    private Stock() {
    }

    /** Grams left of a lot; empty when nobody said how much was bought. Below zero when more was weighed out than bought. */
    public static OptionalDouble onHand(Lot lot, Project project) {
        return lot.getAmount() == null ? OptionalDouble.empty() : OptionalDouble.of(lot.getAmount() - weighedOut(lot, project));
    }

    /** Grams left of a premix; empty when an ingredient has no weighed amount. Below zero when more was weighed out than made. */
    public static OptionalDouble onHand(Premix premix, Project project) {
        OptionalDouble made = Mixtures.mass(premix);
        return made.isEmpty() ? made : OptionalDouble.of(made.getAsDouble() - sum(used(project).filter(use -> use.getPremix() == premix)));
    }

    /** Grams weighed out of a lot so far, in trials and for premixes. */
    public static double weighedOut(Lot lot, Project project) {
        Stream<MaterialUse> blended = project.getPremixes().stream().flatMap(premix -> premix.getIngredients().stream());
        return sum(Stream.concat(used(project), blended).filter(use -> use.getPremix() == null && use.getLot() == lot));
    }

    /** Whether a lot's date has passed on that day; a lot without a date does not expire. */
    public static boolean expired(Lot lot, LocalDate day) {
        return lot.getExpires() != null && lot.getExpires().isBefore(day);
    }

    private static Stream<MaterialUse> used(Project project) {
        return project.getTrials().stream().flatMap(trial -> trial.getSteps().stream()).flatMap(step -> step.getUses().stream());
    }

    private static double sum(Stream<MaterialUse> uses) {
        return uses.map(Mixtures::grams).filter(Objects::nonNull).mapToDouble(Double::doubleValue).sum();
    }
}
