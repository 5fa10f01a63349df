package org.flexwright.mixing;

import java.util.Optional;

import org.flexwright.mixing.data.Extra;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.Batch;
import org.flexwright.mixing.formula.MixDensity;
import org.flexwright.mixing.formula.Surplus;
import org.flexwright.mixing.formula.WeightRatio;

/**
 * Grams that follow from the parts to make.
 *
 * @param gramsA of A
 * @param gramsB of B
 */
public record BatchPlan(double gramsA, double gramsB) {

    /** From the details of a weighing step; empty unless parts, their volume, the ratio and both densities are there. */
    public static Optional<BatchPlan> of(WeighDetails details) {
        Optional<WeightRatio> ratio = PlannedRatio.stated(details);
        if (ratio.isEmpty() || details.getPartCount() == null || details.getPartVolume() == null || details.getDensityA() == null
                || details.getDensityB() == null) {
            return Optional.empty();
        }
        Batch batch = new Batch(details.getPartCount(), details.getPartVolume(), zero(details.getRunnerVolume()), zero(details.getDeadVolume()));
        double density = MixDensity.of(ratio.get(), details.getDensityA(), details.getDensityB());
        Surplus surplus = details.getExtraKind() == Extra.LOSS ? Surplus.LOSS : Surplus.ALLOWANCE;
        double grams = batch.mass(density, surplus, zero(details.getExtra()) / 100);
        return Optional.of(new BatchPlan(grams * ratio.get().shareA(), grams * ratio.get().shareB()));
    }

    private static double zero(Double value) {
        return value == null ? 0 : value;
    }
}
