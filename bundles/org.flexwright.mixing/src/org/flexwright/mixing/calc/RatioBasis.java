package org.flexwright.mixing.calc;

import org.flexwright.mixing.formula.WeightRatio;

/** What the parts of a ratio are counted by. */
public enum RatioBasis {
    WEIGHT, VOLUME;

    /** The ratio by weight; the densities are only looked at for a ratio by volume and must then be there. */
    public WeightRatio toWeight(double partsA, double partsB, Double densityA, Double densityB) {
        return this == WEIGHT ? WeightRatio.ofWeight(partsA, partsB) : WeightRatio.ofVolume(partsA, partsB, densityA, densityB);
    }
}
