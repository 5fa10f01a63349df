package org.flexwright.vatprint;

import org.flexwright.core.Source;

/**
 * How deep light cures a resin: depth = Dp ln(E / Ec). Depths in um, doses in mJ/cm2. Source: Jacobs 1992, as given by Gibson, Rosen and
 * Stucker, Additive Manufacturing Technologies, chapter 4, equations 4.12 to 4.16.
 *
 * @param penetrationDepth Dp, above 0
 * @param criticalDose     Ec, above 0
 */
record WorkingCurve(double penetrationDepth, double criticalDose) {
    static final Source SOURCE = Source.published(
            "Jacobs 1992, as given by Gibson, Rosen and Stucker, Additive Manufacturing Technologies, ch. 4, eqs 4.12-4.16");

    WorkingCurve {
        if (!(penetrationDepth > 0) || !(criticalDose > 0)) {
            throw new IllegalArgumentException("Dp and Ec are above 0, got " + penetrationDepth + ", " + criticalDose + ".");
        }
    }

    /** Depth that a dose cures; 0 or less when it cures nothing. */
    double depth(double dose) {
        return penetrationDepth * Math.log(dose / criticalDose);
    }

    /** Dose that cures to a depth of 0 or more. */
    double dose(double depth) {
        return criticalDose * Math.exp(depth / penetrationDepth);
    }

    /** Dose that the bottom of a layer gets in sum from all layers printed later, each with {@code dose} and {@code layer} thick. */
    double printThrough(double dose, double layer) {
        double share = Math.exp(-layer / penetrationDepth);
        return dose * share / (1 - share);
    }

    /** Depth at which a share of the light (above 0, at most 1) is left. */
    double depthOfShare(double share) {
        return -penetrationDepth * Math.log(share);
    }
}
