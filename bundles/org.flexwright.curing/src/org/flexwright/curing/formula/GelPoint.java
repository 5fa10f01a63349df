package org.flexwright.curing.formula;

import java.util.List;
import java.util.OptionalDouble;

/**
 * When a two-part network gels, counted on the hydroxyl side. {@code ratio} is equivalents of NCO to one of OH.
 *
 * @param hydroxylFunctionality   weighted by equivalents, above 1
 * @param isocyanateFunctionality weighted by equivalents, above 1
 * @param ratio                   NCO to OH, positive; 1 at index 100
 */
public record GelPoint(double hydroxylFunctionality, double isocyanateFunctionality, double ratio) {

    /**
     * Some molecules of one side.
     *
     * @param functionality groups to a molecule
     * @param equivalents   how many of the groups come from them
     */
    public record Groups(double functionality, double equivalents) {
    }

    /** Functionality of one side weighted by equivalents; at least one entry with equivalents. */
    public static double functionality(List<Groups> side) {
        double sum = side.stream().mapToDouble(Groups::equivalents).sum();
        return side.stream().mapToDouble(g -> g.equivalents() * g.functionality()).sum() / sum;
    }

    /** Conversion of OH at which pOH pNCO (fOH - 1)(fNCO - 1) = 1, reachable or not. */
    public double hydroxylConversion() {
        return Math.sqrt(ratio / ((hydroxylFunctionality - 1) * (isocyanateFunctionality - 1)));
    }

    /** Conversion of NCO at that point. */
    public double isocyanateConversion() {
        return hydroxylConversion() / ratio;
    }

    /** Conversion of OH at the gel point (Flory, Stockmayer); empty when one side runs out before. */
    public OptionalDouble gel() {
        return hydroxylConversion() > 1 || isocyanateConversion() > 1 ? OptionalDouble.empty() : OptionalDouble.of(hydroxylConversion());
    }

    /** Groups to a molecule that can react, over both sides. */
    public double meanFunctionality() {
        return 2 * Math.min(1, ratio) / (1 / hydroxylFunctionality + ratio / isocyanateFunctionality);
    }

    /** Conversion of the scarcer side by Carothers, an upper bound: 2/f. */
    public double carothers() {
        return 2 / meanFunctionality();
    }

    /** Another estimate of the same kind: 1/(f - 1). */
    public double simple() {
        return 1 / (meanFunctionality() - 1);
    }
}
