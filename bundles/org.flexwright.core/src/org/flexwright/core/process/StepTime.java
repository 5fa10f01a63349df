package org.flexwright.core.process;

import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;

/**
 * How long a step takes, and of what kind the time is. One person has one pair of hands; what cures needs none.
 *
 * @param hands      min during which somebody works at it, or must watch it
 * @param wait       min that pass afterwards without anybody, 0 or more
 * @param afterFill  min after the mould was filled before which it cannot begin: for the step that takes the parts out; null for every other step
 */
public record StepTime(Estimate hands, double alone, Double afterFill) {
    public StepTime {
        Objects.requireNonNull(hands, "hands");
        if (hands.low() < 0 || !(alone >= 0) || afterFill != null && !(afterFill >= 0)) {
            throw new IllegalArgumentException("Times are 0 min or more, got " + hands + ", " + alone + ", " + afterFill + ".");
        }
    }

    /** Hands only. */
    public static StepTime hands(Estimate minutes) {
        return new StepTime(minutes, 0, null);
    }

    /** The planned minutes when there are any, else what is usual. */
    public static StepTime hands(Double planned, Estimate usual) {
        return hands(planned == null ? usual : Estimate.exact(planned, Source.ownRecord("planned time of the step")));
    }

    /** Time that passes by itself. */
    public static StepTime waiting(double minutes, Source source) {
        return new StepTime(Estimate.exact(0, source), minutes, null);
    }

    /** A usual time for a step of a kind, common practice. */
    public static Estimate usual(double low, double likely, double high) {
        return new Estimate(low, likely, high, Source.commonPractice("usual time of such a step"));
    }
}
