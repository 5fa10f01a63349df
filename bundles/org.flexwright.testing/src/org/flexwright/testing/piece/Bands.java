package org.flexwright.testing.piece;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.numerics.Uncertainty;
import org.flexwright.numerics.Uncertainty.Contribution;

/** Bands of results from how well their inputs are known (JCGM 100:2008, GUM); inputs known to plus and minus a half width, nothing else said. */
final class Bands {
    private static final double LEVEL = 0.95;

    private Bands() {
    }

    /** An input known to plus and minus that much, with the change of the result for one unit of it. */
    static Contribution within(double halfWidth, double sensitivity) {
        return new Contribution("", sensitivity, Uncertainty.rectangular(halfWidth), Double.POSITIVE_INFINITY);
    }

    /** The value with its band at about 95 %; exact when every input is. */
    static Estimate band(double value, Source source, Contribution... contributions) {
        double half = Uncertainty.combine(List.of(contributions)).expanded(LEVEL);
        return half > 0 ? Estimate.plusMinus(value, half, source) : Estimate.exact(value, source);
    }
}
