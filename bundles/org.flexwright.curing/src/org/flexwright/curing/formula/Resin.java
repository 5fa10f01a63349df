package org.flexwright.curing.formula;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

import org.flexwright.numerics.Ode;
import org.flexwright.numerics.Quadrature;

/**
 * A resin that cures by one rate of n-th order and heats itself.
 *
 * @param rate         rate constant, 1/s
 * @param order        order, positive
 * @param heat         J/kg set free by full cure
 * @param specificHeat J/kg/K
 * @param density      kg/m3
 * @param conductivity W/m/K
 * @param correction   a factor on the rate by conversion; {@link #NONE} for the plain law
 */
public record Resin(Arrhenius rate, double order, double heat, double specificHeat, double density, double conductivity, Correction correction) {

    /** The plain law. */
    public static final Correction NONE = new Correction(x -> 1, List.of());

    private static final double TIGHT = 1e-10;

    /**
     * A factor on the rate.
     *
     * @param factor of the conversion 0..1
     * @param kinks  conversions where its formula changes, rising
     */
    public record Correction(DoubleUnaryOperator factor, List<Double> kinks) {
        public Correction {
            kinks = List.copyOf(kinks);
        }
    }

    /** Conversion a second at a conversion and a temperature in K. */
    public double rate(double conversion, double kelvin) {
        double left = Math.max(0, 1 - conversion);
        return rate.atKelvin(kelvin) * Math.pow(left, order) * correction.factor().applyAsDouble(conversion);
    }

    /** Rise in K when no heat gets away. */
    public double adiabaticRise() {
        return heat / specificHeat;
    }

    /** Diffusivity of heat, m2/s. */
    public double diffusivity() {
        return conductivity / (density * specificHeat);
    }

    /** Seconds to a conversion below 1 at one temperature in K. */
    public double isothermalTime(double conversion, double kelvin) {
        return time(conversion, x -> 1 / rate(x, kelvin));
    }

    /** Conversion after a time in s at one temperature in K. */
    public double conversion(double seconds, double kelvin) {
        return Ode.integrate((t, y) -> new double[] { rate(y[0], kelvin) }, 0, new double[] { 0 }, seconds, TIGHT)[0];
    }

    /** Seconds to a conversion below 1 when no heat gets away, from a start in K. */
    public double adiabaticTime(double conversion, double startKelvin) {
        return time(conversion, x -> 1 / rate(x, startKelvin + adiabaticRise() * x));
    }

    private double time(double conversion, DoubleUnaryOperator slowness) {
        double from = 0;
        double sum = 0;
        for (double kink : correction.kinks()) {
            if (kink > from && kink < conversion) {
                sum += Quadrature.integrate(slowness, from, kink, TIGHT);
                from = kink;
            }
        }
        return sum + Quadrature.integrate(slowness, from, conversion, TIGHT);
    }
}
