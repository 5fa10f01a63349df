package org.flexwright.core.verdict;

import java.util.Objects;

/**
 * A spread of single parts that is known from elsewhere.
 *
 * @param sd   standard deviation of one part, in the property's canonical unit, from 0 up
 * @param df   degrees of freedom behind it, above 0; infinite when it is known exactly
 * @param name where it is from, in words: it is named beside the verdict
 */
public record KnownSpread(double sd, double df, String name) {
    public KnownSpread {
        Objects.requireNonNull(name, "name");
        if (!(sd >= 0) || Double.isInfinite(sd) || !(df > 0)) {
            throw new IllegalArgumentException("A known spread needs a standard deviation from 0 up and degrees of freedom above 0.");
        }
    }
}
