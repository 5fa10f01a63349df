package org.flexwright.mixing;

import java.util.Optional;

import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.Steps;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formulation.MixtureFigures;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;

/**
 * Room in the cup of a weighing.
 *
 * @param brim   ml the cup holds
 * @param usable ml of mixture it may hold: a third of it when the mixture is degassed, else all
 * @param filled ml that are in it
 */
record CupRoom(double brim, double usable, double filled) {

    /** Foam needs three times the mixture; common practice, no source. */
    static final double THIRD = 1.0 / 3;

    /** The cup of the weighing, else that of the degassing; empty when its size or a density is unknown. */
    static Optional<CupRoom> of(Step step, Trial trial) {
        Optional<DegasDetails> degas = trial == null ? Optional.empty() : Steps.of(trial, DegasStep.ID, DegasDetails.class).stream()
                .filter(s -> s.step().getState() != StepState.SKIPPED).map(Steps.Detailed::details).findFirst();
        Double brim = step.getDetails() instanceof WeighDetails d && d.getCupVolume() != null ? d.getCupVolume() : degas.map(DegasDetails::getCupVolume).orElse(null);
        double filled = MixtureFigures.weighed(step).volume();
        return brim == null || Double.isNaN(filled) ? Optional.empty() : Optional.of(new CupRoom(brim, degas.isPresent() ? brim * THIRD : brim, filled));
    }

    /** ml that grams of a use take; NaN when a density is unknown. */
    static double volume(Step step, MaterialUse use, double grams) {
        return grams * Mixtures.shares(use).stream().mapToDouble(s -> {
            Double density = MixtureFigures.of(step, s.of()).substance().density();
            return density == null ? Double.NaN : s.share() / density;
        }).sum();
    }

    /** True when so many ml more stay below the usable height. */
    boolean takes(double volume) {
        return filled + volume <= usable;
    }
}
