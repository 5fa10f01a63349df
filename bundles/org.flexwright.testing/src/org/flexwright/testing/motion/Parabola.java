package org.flexwright.testing.motion;

import java.util.Optional;

import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.LinearFit;
import org.flexwright.numerics.StudentT;

/**
 * A flight seen in pictures: heights as a parabola of time, by least squares.
 *
 * @param at    where it turns, in the unit of the times
 * @param top   height there
 * @param bend  coefficient of the squared time; below zero for something thrown
 * @param uTop  standard error of {@code top}
 * @param uBend standard error of {@code bend}
 * @param sd    standard deviation of the residuals
 * @param df    points minus three, one at least
 * @param times places of the points
 * @param heights of the points
 */
record Parabola(double at, double top, double bend, double uTop, double uBend, double sd, int df, double[] times, double[] heights) {
    /** Fewer points leave nothing to judge the fit by. */
    static final int LEAST = 4;
    private static final double LEVEL = 0.975;

    /** The fit; empty for too few points or when they do not bend. */
    static Optional<Parabola> fit(double[] times, double[] heights) {
        if (times.length < LEAST) {
            return Optional.empty();
        }
        double middle = (times[0] + times[times.length - 1]) / 2;
        Optional<LinearFit> first = around(times, heights, middle);
        if (first.isEmpty() || first.get().coefficient(2) == 0) {
            return Optional.empty();
        }
        double at = middle - first.get().coefficient(1) / (2 * first.get().coefficient(2));
        return around(times, heights, at).filter(f -> f.df() > 0).map(f -> new Parabola(at, f.coefficient(0), f.coefficient(2), f.standardErrors().get(0), f.standardErrors().get(2),
                f.residualSd().orElseThrow(), f.df(), times, heights));
    }

    private static Optional<LinearFit> around(double[] times, double[] heights, double centre) {
        double[][] design = new double[times.length][];
        for (int i = 0; i < times.length; i++) {
            double t = times[i] - centre;
            design[i] = new double[] {1, t, t * t};
        }
        return LeastSquares.linear(design, heights);
    }

    /** Height at a time. */
    double height(double time) {
        return top + bend * (time - at) * (time - at);
    }

    /** Speed at a time. */
    double speed(double time) {
        return 2 * bend * (time - at);
    }

    /** Standard error of the height at a time. */
    double uncertainty(double time) {
        return around(times, heights, time).map(f -> f.standardErrors().get(0)).orElse(Double.NaN);
    }

    /** Student's factor for 95 %. */
    double factor() {
        return StudentT.quantile(LEVEL, df);
    }
}
