package org.flexwright.core.process;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/**
 * Adds up how long the steps of a plan take: the step's own planned time where there is one, else a usual band of its kind. Kinds without a
 * band count nothing.
 *
 * @param usual usual times in min by id of the step kind
 */
public record TimeBudget(Map<String, Band> usual) {
    public TimeBudget {
        usual = Map.copyOf(usual);
    }

    /**
     * A usual time.
     *
     * @param low    min
     * @param likely min
     * @param high   min
     */
    public record Band(double low, double likely, double high) {
        /** A time that is known. */
        public static Band exact(double minutes) {
            return new Band(minutes, minutes, minutes);
        }

        /** Both one after the other. */
        public Band plus(Band other) {
            return new Band(low + other.low, likely + other.likely, high + other.high);
        }
    }

    /** The sum over all steps in min. */
    public Estimate minutes(Trial plan) {
        return minutes(plan, step -> Optional.empty());
    }

    /** The sum over all steps in min; {@code computed} is asked where a step has no planned time of its own. */
    public Estimate minutes(Trial plan, Function<Step, Optional<Band>> computed) {
        Band sum = Band.exact(0);
        for (Step step : plan.getSteps()) {
            Band band = usual.get(step.getKind());
            if (step.getPlannedDuration() != null && band != null) {
                sum = sum.plus(Band.exact(step.getPlannedDuration()));
            } else if (band != null) {
                sum = sum.plus(computed.apply(step).orElse(band));
            }
        }
        return new Estimate(sum.low, sum.likely, sum.high,
                Source.commonPractice("planned times of the steps, and usual times where none is planned"));
    }
}
