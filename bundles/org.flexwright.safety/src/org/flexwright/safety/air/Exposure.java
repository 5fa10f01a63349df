package org.flexwright.safety.air;

import java.util.List;

import org.flexwright.core.Source;

/** Sums of exposure over a shift. They compare with the figure someone entered and say nothing more. */
public final class Exposure {
    /** Hours an eight-hour mean is always divided by. */
    public static final double SHIFT = 8;
    /** Where the sums come from. */
    public static final Source SOURCE = Source.published("29 CFR 1910.1000(d)");

    /**
     * A stretch of time at one concentration.
     *
     * @param hours         duration
     * @param concentration ppm or mg/m3, the same throughout
     */
    public record Stretch(double hours, double concentration) {
    }

    /**
     * A substance against the figure entered for it.
     *
     * @param concentration ppm or mg/m3
     * @param limit         in the same unit, above 0
     */
    public record Against(double concentration, double limit) {
    }

    private Exposure() {
    }

    /** Eight-hour time-weighted mean; divided by 8 even when the shift is shorter. */
    public static double timeWeighted(List<Stretch> stretches) {
        return stretches.stream().mapToDouble(s -> s.hours() * s.concentration()).sum() / SHIFT;
    }

    /** Sum of concentration over limit for substances with the same kind of effect. */
    public static double mixture(List<Against> substances) {
        return substances.stream().mapToDouble(s -> s.concentration() / s.limit()).sum();
    }

    /** Highest concentration of all stretches: a mean never hides it. */
    public static double highest(List<Stretch> stretches) {
        return stretches.stream().mapToDouble(Stretch::concentration).max().orElse(0);
    }
}
