package org.flexwright.curing.formula;

/** Shrinkage by cure and by cooling. Shares 0..1. */
public final class Shrinkage {

    private Shrinkage() {
    }

    /** Linear shrinkage from volume shrinkage, the same in all directions: 1 - (1 - sv)^(1/3). */
    public static double linear(double volume) {
        return 1 - Math.cbrt(1 - volume);
    }

    /**
     * Cold size of the mould for a wanted size of the part in use, in the same unit.
     *
     * @param part      wanted size
     * @param cure      linear cure shrinkage
     * @param partCte   linear expansion of the part, 1/K
     * @param mouldCte  linear expansion of the mould, 1/K
     * @param warmer    cure temperature less use temperature, K
     */
    public static double mouldSize(double part, double cure, double partCte, double mouldCte, double warmer) {
        return part / ((1 - cure) * (1 - partCte * warmer) * (1 + mouldCte * warmer));
    }
}
