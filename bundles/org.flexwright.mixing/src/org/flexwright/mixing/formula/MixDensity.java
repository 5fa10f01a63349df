package org.flexwright.mixing.formula;

import java.util.List;

/** Density of a mixture whose volumes add up: 1/rho = sum(w/rho). Cure raises it later by the shrinkage. */
public final class MixDensity {

    private MixDensity() {
    }

    /**
     * One component.
     *
     * @param grams   mass, not negative
     * @param density g/cm3, positive
     */
    public record Component(double grams, double density) {
    }

    /** Density in g/cm3; at least one component with a positive mass. */
    public static double of(List<Component> components) {
        double grams = components.stream().mapToDouble(Component::grams).sum();
        double volume = components.stream().mapToDouble(c -> c.grams() / c.density()).sum();
        return grams / volume;
    }

    /** Density of A and B mixed in a ratio by weight. */
    public static double of(WeightRatio ratio, double densityA, double densityB) {
        return of(List.of(new Component(1, densityA), new Component(ratio.bPerA(), densityB)));
    }

    /** The mean weighted by mass, which is not the density; shown only to tell how wrong it is. */
    public static double arithmeticMean(List<Component> components) {
        double grams = components.stream().mapToDouble(Component::grams).sum();
        return components.stream().mapToDouble(c -> c.grams() * c.density()).sum() / grams;
    }
}
