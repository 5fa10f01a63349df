package org.flexwright.mixing.formula;

/**
 * The ratio of a two-part system by weight.
 *
 * @param bPerA grams of B to one gram of A; positive
 */
public record WeightRatio(double bPerA) {

    public WeightRatio {
        if (!(bPerA > 0) || Double.isInfinite(bPerA)) {
            throw new IllegalArgumentException("A ratio needs a positive share of B to A, got " + bPerA + ".");
        }
    }

    /** Parts by weight; both positive. */
    public static WeightRatio ofWeight(double partsA, double partsB) {
        return new WeightRatio(partsB / partsA);
    }

    /** Parts by volume; densities positive, both in the same unit. mB/mA = (vB/vA)(rhoB/rhoA). */
    public static WeightRatio ofVolume(double partsA, double partsB, double densityA, double densityB) {
        return new WeightRatio(partsB / partsA * (densityB / densityA));
    }

    /** The same ratio by volume: volume of B to one of A. */
    public double volumeBPerA(double densityA, double densityB) {
        return bPerA * (densityA / densityB);
    }

    /** Share of A in a mixture of A and B, 0..1 by weight. */
    public double shareA() {
        return 1 / (1 + bPerA);
    }

    /** Share of B in a mixture of A and B, 0..1 by weight. */
    public double shareB() {
        return bPerA / (1 + bPerA);
    }

    /** Grams of B that belong to so many grams of A. */
    public double bFor(double gramsA) {
        return gramsA * bPerA;
    }

    /** Grams of A that belong to so many grams of B. */
    public double aFor(double gramsB) {
        return gramsB / bPerA;
    }
}
