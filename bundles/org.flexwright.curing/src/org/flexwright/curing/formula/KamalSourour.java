package org.flexwright.curing.formula;

import org.flexwright.numerics.Ode;
import org.flexwright.numerics.Quadrature;

/**
 * Autocatalytic cure: dX/dt = (k1 + k2 X^m)(1 - X)^n.
 *
 * @param k1 rate of the start, 1/s, above 0
 * @param k2 rate driven by what has reacted, 1/s, not negative
 * @param m  order of what has reacted
 * @param n  order of what is left
 */
public record KamalSourour(double k1, double k2, double m, double n) {

    private static final double TIGHT = 1e-11;

    /** The rate at a conversion 0..1. */
    public double rate(double x) {
        return (k1 + k2 * Math.pow(x, m)) * Math.pow(Math.max(0, 1 - x), n);
    }

    /** Conversion after a time in s. */
    public double conversion(double seconds) {
        return simple() ? closed(seconds) : integrated(seconds);
    }

    /** Conversion by integrating the rate, for any orders. */
    public double integrated(double seconds) {
        return Ode.integrate((t, y) -> new double[] { rate(y[0]) }, 0, new double[] { 0 }, seconds, TIGHT)[0];
    }

    private boolean simple() {
        return m == 1 && n == 1;
    }

    private double closed(double seconds) {
        double grown = Math.exp((k1 + k2) * seconds);
        return Double.isInfinite(grown) ? 1 : k1 * (grown - 1) / (k2 + k1 * grown);
    }

    /** Time in s to a conversion below 1. */
    public double timeTo(double conversion) {
        return simple() ? Math.log((k1 + k2 * conversion) / (k1 * (1 - conversion))) / (k1 + k2)
                : summed(conversion);
    }

    /** The same time by summing up 1/rate, for any orders. */
    public double summed(double conversion) {
        return Quadrature.integrate(x -> 1 / rate(x), 0, conversion, TIGHT);
    }

    /** Conversion at which it runs fastest, for m = n = 1; zero when it only slows down. */
    public double fastest() {
        return k2 > k1 ? (k2 - k1) / (2 * k2) : 0;
    }
}
