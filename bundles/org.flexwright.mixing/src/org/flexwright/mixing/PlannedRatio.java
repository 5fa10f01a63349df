package org.flexwright.mixing;

import java.util.Optional;

import org.flexwright.mixing.data.Basis;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.WeightRatio;

/** The ratio by weight a weighing step means: from its parts, else from its planned grams. */
final class PlannedRatio {

    private PlannedRatio() {
    }

    /** From the parts when they are complete, else from the planned grams; empty when neither says. */
    static Optional<WeightRatio> of(WeighDetails details, Double plannedA, Double plannedB) {
        Optional<WeightRatio> stated = stated(details);
        return stated.isPresent() ? stated : ofGrams(plannedA, plannedB);
    }

    /** From the parts alone; empty when one or a needed density is missing. */
    static Optional<WeightRatio> stated(WeighDetails details) {
        if (!hasParts(details) || lacksDensity(details)) {
            return Optional.empty();
        }
        return Optional.of(details.getBasis() == Basis.WEIGHT ? WeightRatio.ofWeight(details.getRatioA(), details.getRatioB())
                : WeightRatio.ofVolume(details.getRatioA(), details.getRatioB(), details.getDensityA(), details.getDensityB()));
    }

    static Optional<WeightRatio> ofGrams(Double a, Double b) {
        return positive(a) && positive(b) ? Optional.of(WeightRatio.ofWeight(a, b)) : Optional.empty();
    }

    /** True when the parts are by volume and a density is missing. */
    static boolean lacksDensity(WeighDetails details) {
        return hasParts(details) && details.getBasis() == Basis.VOLUME && !(positive(details.getDensityA()) && positive(details.getDensityB()));
    }

    private static boolean hasParts(WeighDetails details) {
        return details != null && positive(details.getRatioA()) && positive(details.getRatioB());
    }

    private static boolean positive(Double value) {
        return value != null && value > 0;
    }
}
