package org.flexwright.testing.piece;

import java.util.List;
import java.util.Optional;

/**
 * A piece that takes up a liquid, or gives one away while drying: its mass over time. Times in hours, masses in g.
 */
public final class Soak {
    /** Half of the way of a sheet soaked from both faces: D t / L^2 = pi / 64, from the short-time solution. */
    private static final double HALF_WAY = Math.PI / 64;
    private static final double SECONDS_PER_HOUR = 3600;

    private Soak() {
    }

    /**
     * One weighing.
     *
     * @param hours time since the first weighing
     * @param grams mass
     */
    public record Weighing(double hours, double grams) {
    }

    /** Change of mass in per cent of the first one; below zero when it lost. */
    public static double uptake(double first, double now) {
        return 100 * (now - first) / first;
    }

    /**
     * Whether the mass has settled: the last two weighings differ by no more than that much, and lie at least a third of the whole time apart, so
     * that a creeping change would have shown.
     */
    public static boolean settled(List<Weighing> weighings, double within) {
        int n = weighings.size();
        if (n < 3) {
            return false;
        }
        Weighing last = weighings.get(n - 1);
        Weighing before = weighings.get(n - 2);
        return Math.abs(last.grams() - before.grams()) <= within && last.hours() - before.hours() >= (last.hours() - weighings.getFirst().hours()) / 3;
    }

    /**
     * When half of the whole change was reached.
     *
     * @param after  hours of the weighing before it
     * @param likely hours, between the two weighings by the square root of time
     * @param before hours of the weighing that was past it
     */
    public record Half(double after, double likely, double before) {
    }

    /** When half of the whole change was reached; empty when no weighing lies before it but the first. */
    public static Optional<Half> half(List<Weighing> weighings) {
        double first = weighings.getFirst().grams();
        double whole = weighings.getLast().grams() - first;
        for (int i = 1; i < weighings.size() && whole != 0; i++) {
            double share = (weighings.get(i).grams() - first) / whole;
            if (share >= 0.5) {
                Weighing last = weighings.get(i - 1);
                double from = Math.sqrt(last.hours());
                double before = (last.grams() - first) / whole;
                double root = from + (Math.sqrt(weighings.get(i).hours()) - from) * (0.5 - before) / (share - before);
                return i == 1 ? Optional.empty() : Optional.of(new Half(last.hours(), root * root, weighings.get(i).hours()));
            }
        }
        return Optional.empty();
    }

    /** Diffusivity in mm2/s of a sheet of that thickness in mm, soaked from both faces, from its half time in hours. */
    public static double diffusivity(double thickness, double halfHours) {
        return HALF_WAY * thickness * thickness / (halfHours * SECONDS_PER_HOUR);
    }
}
