package org.flexwright.core.process;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;

/**
 * What goes into a cup: each material with its planned and its weighed grams.
 *
 * @param ingredients in the order of the step
 */
public record Mixture(List<Ingredient> ingredients) {

    /**
     * One material.
     *
     * @param role    what it does
     * @param grade   the product, or null when none was chosen
     * @param lot     the bottle or can, or null when none was chosen
     * @param planned grams meant, or null when not entered
     * @param actual  grams weighed so far, or null when nothing was weighed
     * @param of      where it is written down: a use, or an ingredient of a premix
     */
    public record Ingredient(PartRole role, MaterialGrade grade, Lot lot, Double planned, Double actual, MaterialUse of) {
        public Ingredient {
            Objects.requireNonNull(role, "role");
        }
    }

    public Mixture {
        ingredients = List.copyOf(ingredients);
    }

    /** Grams meant of a role; null when none of it has any. */
    public Double planned(PartRole role) {
        return sum(role, Ingredient::planned);
    }

    /** Grams weighed of a role; null when none of it was weighed. */
    public Double actual(PartRole role) {
        return sum(role, Ingredient::actual);
    }

    private Double sum(PartRole role, Function<Ingredient, Double> grams) {
        return ingredients.stream().filter(i -> i.role() == role).map(grams).filter(Objects::nonNull).reduce(Double::sum).orElse(null);
    }

    /** Grams meant in all; null when nothing has any. */
    public Double plannedTotal() {
        return ingredients.stream().map(Ingredient::planned).filter(Objects::nonNull).reduce(Double::sum).orElse(null);
    }

    /** Grams weighed in all; null when nothing was weighed. */
    public Double actualTotal() {
        return ingredients.stream().map(Ingredient::actual).filter(Objects::nonNull).reduce(Double::sum).orElse(null);
    }

    /** Planned grams of B on 100 g of A; null when one is missing or A is zero. */
    public Double plannedRatio() {
        return ratio(planned(PartRole.COMPONENT_A), planned(PartRole.COMPONENT_B));
    }

    /** Weighed grams of B on 100 g of A; null when one is missing or A is zero. */
    public Double actualRatio() {
        return ratio(actual(PartRole.COMPONENT_A), actual(PartRole.COMPONENT_B));
    }

    private static Double ratio(Double a, Double b) {
        return a == null || b == null || a == 0 ? null : 100 * b / a;
    }

    /** How far the weighed ratio is from the planned one, per cent of the planned; null when one is missing or the planned one is zero. */
    public Double ratioError() {
        Double planned = plannedRatio();
        Double actual = actualRatio();
        return planned == null || actual == null || planned == 0 ? null : 100 * (actual - planned) / planned;
    }
}
