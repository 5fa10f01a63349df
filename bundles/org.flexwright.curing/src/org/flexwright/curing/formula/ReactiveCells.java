package org.flexwright.curing.formula;

import java.util.Arrays;

/**
 * Temperatures and conversions in cells of equal width from the centre to the wall, advanced implicitly: two-stage diagonally implicit
 * Runge-Kutta, second order and damping stiff parts at once, so that thin parts need no small steps. The step follows the curvature of the
 * temperature.
 */
final class ReactiveCells {

    private static final double GAMMA = 1 - Math.sqrt(0.5);
    /** Difference in K between the second- and first-order answer of a step; the second-order error is far smaller. */
    private static final double STEP_TOLERANCE = 3e-4;
    /** A difference of this part of one in conversion counts like one K. */
    private static final double CONVERSION_WEIGHT = 50;
    private static final double NEWTON_TOLERANCE = 1e-9;
    private static final double SMALLEST_SHARE = 1e-12;
    private static final int MOST_NEWTON = 12;
    private static final double DIFFERENCE = 1e-6;

    private final Resin resin;
    private final int n;
    private final double[] lower;
    private final double[] diagonal;
    private final double[] upper;
    private final double fromWall;
    private double[] kelvin;
    private double[] conversion;
    private double step;

    ReactiveCells(ReactiveBody part, int cells) {
        resin = part.resin();
        n = cells;
        lower = new double[n];
        diagonal = new double[n];
        upper = new double[n];
        fromWall = conduction(part);
        kelvin = new double[n];
        Arrays.fill(kelvin, part.startK());
        conversion = new double[n];
        step = 1e-4 * part.half() * part.half() / resin.diffusivity();
    }

    /** Fills the matrix of conduction; returns what the wall adds to the outermost cell. */
    private double conduction(ReactiveBody part) {
        double spread = resin.diffusivity() * n / part.half();
        int power = part.body().curvature() + 1;
        double wall = 0;
        for (int i = 0; i < n; i++) {
            double volume = part.half() / power * (Math.pow((i + 1.0) / n, power) - Math.pow((double) i / n, power));
            double inner = spread * Math.pow((double) i / n, part.body().curvature()) / volume;
            double outer = spread * Math.pow((i + 1.0) / n, part.body().curvature()) / volume;
            lower[i] = i == 0 ? 0 : inner;
            diagonal[i] = i == 0 ? 0 : -inner;
            if (i < n - 1) {
                upper[i] = outer;
                diagonal[i] -= outer;
            } else {
                // A parabola through the wall and the two outermost cells gives the slope at the wall to second order.
                lower[i] += outer / 3;
                diagonal[i] -= 3 * outer;
                wall = outer * part.wallK() * 8 / 3;
            }
        }
        return wall;
    }

    /** Goes on by so many seconds. */
    void advance(double seconds) {
        double left = seconds;
        while (left > 1e-12 * seconds) {
            double h = Math.min(step, left);
            double error = attempt(h);
            boolean taken = error <= STEP_TOLERANCE;
            double next = h * (taken ? Math.min(2, Math.max(0.2, 0.9 * Math.sqrt(STEP_TOLERANCE / Math.max(error, 1e-12)))) : 0.4);
            if (taken) {
                left -= h;
            }
            // A step cut short by the end asked for says nothing about the next one.
            step = h == step || !taken ? next : step;
            if (step < SMALLEST_SHARE * seconds) {
                throw new IllegalStateException("The part heats itself faster than it can be followed.");
            }
        }
    }

    /** Takes the step when it is exact enough; returns the largest difference between both orders in K. */
    private double attempt(double h) {
        double[] t1 = kelvin.clone();
        double[] x1 = conversion.clone();
        if (!stage(h, kelvin, conversion, t1, x1)) {
            return Double.MAX_VALUE;
        }
        double[] base = new double[n];
        double[] baseX = new double[n];
        for (int i = 0; i < n; i++) {
            base[i] = kelvin[i] + (1 - GAMMA) / GAMMA * (t1[i] - kelvin[i]);
            baseX[i] = conversion[i] + (1 - GAMMA) / GAMMA * (x1[i] - conversion[i]);
        }
        double[] t2 = t1.clone();
        double[] x2 = x1.clone();
        if (!stage(h, base, baseX, t2, x2)) {
            return Double.MAX_VALUE;
        }
        double error = 0;
        for (int i = 0; i < n; i++) {
            double firstOrder = kelvin[i] + (t1[i] - kelvin[i]) / GAMMA;
            double firstOrderX = conversion[i] + (x1[i] - conversion[i]) / GAMMA;
            error = Math.max(error, GAMMA * Math.max(Math.abs(t2[i] - firstOrder), CONVERSION_WEIGHT * Math.abs(x2[i] - firstOrderX)));
        }
        if (error <= STEP_TOLERANCE) {
            kelvin = t2;
            conversion = x2;
        }
        return error;
    }

    /** Solves t = base + gamma h f(t, x) by Newton, conversions eliminated cell by cell; false when it does not settle. */
    private boolean stage(double h, double[] base, double[] baseX, double[] t, double[] x) {
        double g = GAMMA * h;
        double rise = resin.adiabaticRise();
        double[] d = new double[n];
        double[] right = new double[n];
        double[] push = new double[n];
        double[] coupling = new double[n];
        for (int pass = 0; pass < MOST_NEWTON; pass++) {
            for (int i = 0; i < n; i++) {
                double rate = resin.rate(x[i], t[i]);
                double byX = (resin.rate(x[i] + DIFFERENCE, t[i]) - resin.rate(x[i] - DIFFERENCE, t[i])) / (2 * DIFFERENCE);
                double byT = rate * 1000 * resin.rate().activationEnergy() / (Arrhenius.GAS_CONSTANT * t[i] * t[i]);
                push[i] = (baseX[i] + g * rate - x[i]) / (1 - g * byX);
                coupling[i] = g * byT / (1 - g * byX);
                double flow = diagonal[i] * t[i] + (i > 0 ? lower[i] * t[i - 1] : 0) + (i < n - 1 ? upper[i] * t[i + 1] : fromWall);
                d[i] = 1 - g * diagonal[i] - g * rise * (byT + byX * coupling[i]);
                right[i] = base[i] + g * (flow + rise * rate) - t[i] + g * rise * byX * push[i];
            }
            solve(d, right, g);
            double largest = 0;
            for (int i = 0; i < n; i++) {
                t[i] += right[i];
                x[i] = Math.min(1, Math.max(0, x[i] + push[i] + coupling[i] * right[i]));
                largest = Math.max(largest, Math.abs(right[i]));
            }
            if (largest < NEWTON_TOLERANCE) {
                return true;
            }
        }
        return false;
    }

    /** The tridiagonal system; the answer replaces the right-hand side. */
    private void solve(double[] d, double[] right, double g) {
        for (int i = 1; i < n; i++) {
            double factor = -g * lower[i] / d[i - 1];
            d[i] -= factor * -g * upper[i - 1];
            right[i] -= factor * right[i - 1];
        }
        right[n - 1] /= d[n - 1];
        for (int i = n - 2; i >= 0; i--) {
            right[i] = (right[i] + g * upper[i] * right[i + 1]) / d[i];
        }
    }

    double centreKelvin() {
        return atCentre(kelvin);
    }

    double centreConversion() {
        return atCentre(conversion);
    }

    /** Even about the centre, so the two innermost cells give it by a parabola. */
    private static double atCentre(double[] y) {
        return y[0] + (y[0] - y[1]) / 8;
    }
}
