package org.flexwright.mixing;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

import org.flexwright.core.process.Mixtures;
import org.flexwright.mixing.formulation.MaterialFigures;
import org.flexwright.mixing.formulation.MixtureFigures;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;

/**
 * How far the steps of the balance leave open what is in the cup: relative standard uncertainties by the law of propagation, each weighing of
 * a use standing for itself. Not a number where a balance is unknown or nothing is weighed.
 */
final class WeighedBand {

    private final Step step;

    WeighedBand(Step step) {
        this.step = step;
    }

    /** Of mB/mA; for one weighing each it is sqrt((uA/mA)^2 + (uB/mB)^2). */
    double ratio() {
        return quotient(use -> Mixtures.share(use, PartRole.COMPONENT_B), use -> Mixtures.share(use, PartRole.COMPONENT_A));
    }

    /** Of the index. */
    double index() {
        return quotient(use -> each(use, p -> p.substance().nco()), use -> each(use, p -> p.substance().usesUp()));
    }

    /** Of the share of filler in all of it. */
    double filler() {
        return quotient(use -> Mixtures.share(use, PartRole.FILLER), use -> 1);
    }

    private double each(MaterialUse use, ToDoubleFunction<MaterialFigures> amount) {
        return Mixtures.shares(use).stream().mapToDouble(s -> s.share() * amount.applyAsDouble(MixtureFigures.of(step, s.of()))).sum();
    }

    /** Relative uncertainty of sum(m x)/sum(m y): each mass counts with the difference of its shares in both sums. */
    private double quotient(ToDoubleFunction<MaterialUse> above, ToDoubleFunction<MaterialUse> below) {
        double top = 0;
        double bottom = 0;
        for (MaterialUse use : step.getUses()) {
            Double grams = Mixtures.grams(use);
            top += grams == null ? 0 : grams * above.applyAsDouble(use);
            bottom += grams == null ? 0 : grams * below.applyAsDouble(use);
        }
        if (!(top > 0) || !(bottom > 0)) {
            return Double.NaN;
        }
        double variance = 0;
        for (MaterialUse use : step.getUses()) {
            double slope = above.applyAsDouble(use) / top - below.applyAsDouble(use) / bottom;
            OptionalDouble of = Balances.variance(use, step);
            if (slope != 0 && of.isEmpty()) {
                return Double.NaN;
            }
            variance += slope == 0 ? 0 : slope * slope * of.getAsDouble();
        }
        return Math.sqrt(variance);
    }
}
