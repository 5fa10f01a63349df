package org.flexwright.curing.formula;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.numerics.Quadrature;

/**
 * A temperature over time: stretches at one temperature or running evenly from one to another.
 *
 * @param stretches in order
 */
public record Schedule(List<Stretch> stretches) {

    private static final double TIGHT = 1e-10;

    /**
     * A stretch.
     *
     * @param minutes how long, not negative
     * @param fromC   degC at its start
     * @param toC     degC at its end
     */
    public record Stretch(double minutes, double fromC, double toC) {
    }

    /**
     * A stretch as it is written down.
     *
     * @param minutes how long
     * @param celsius degC at its end
     * @param ramp    true when it runs evenly from the one before
     */
    public record Stage(double minutes, double celsius, boolean ramp) {
    }

    public Schedule {
        stretches = List.copyOf(stretches);
    }

    /** From stages as written down; {@code startC} is where a first ramp starts. */
    public static Schedule of(List<Stage> stages, double startC) {
        List<Stretch> stretches = new ArrayList<>();
        double before = startC;
        for (Stage stage : stages) {
            stretches.add(new Stretch(stage.minutes(), stage.ramp() ? before : stage.celsius(), stage.celsius()));
            before = stage.celsius();
        }
        return new Schedule(stretches);
    }

    /** One temperature all through. */
    public static Schedule hold(double minutes, double celsius) {
        return new Schedule(List.of(new Stretch(minutes, celsius, celsius)));
    }

    /** Minutes at a reference temperature that cure as much: integral of exp[-(Ea/R)(1/T - 1/Tref)] dt, Ea in kJ/mol. */
    public double equivalentMinutes(double activationEnergy, double referenceC) {
        return stretches.stream().mapToDouble(s -> equivalent(s, activationEnergy, referenceC)).sum();
    }

    private static double equivalent(Stretch s, double ea, double reference) {
        if (s.minutes() == 0 || s.fromC() == s.toC()) {
            return s.minutes() * Arrhenius.speed(ea, s.toC(), reference);
        }
        double slope = (s.toC() - s.fromC()) / s.minutes();
        return Quadrature.integrate(t -> Arrhenius.speed(ea, s.fromC() + slope * t, reference), 0, s.minutes(), TIGHT);
    }

    /** Minutes in all. */
    public double minutes() {
        return stretches.stream().mapToDouble(Stretch::minutes).sum();
    }
}
