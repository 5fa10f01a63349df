package org.flexwright.curing.formula;

import java.util.OptionalDouble;

import org.flexwright.numerics.Roots;

/**
 * Viscosity of a curing resin: eta = A exp(E/RT) (Xg/(Xg - X))^(a + b X) (Castro and Macosko 1982).
 *
 * @param front Pa s
 * @param flowEnergy kJ/mol
 * @param a exponent at the start
 * @param b growth of the exponent
 * @param gel conversion at which it gels, 0..1
 */
public record CastroMacosko(double front, double flowEnergy, double a, double b, double gel) {

    private static final double NEAR = 1e-12;

    /** Viscosity in Pa s at a conversion and a temperature in K; empty when it has gelled. */
    public OptionalDouble at(double conversion, double kelvin) {
        return conversion >= gel ? OptionalDouble.empty() : OptionalDouble.of(value(conversion, kelvin));
    }

    private double value(double x, double kelvin) {
        return front * Math.exp(1000 * flowEnergy / (Arrhenius.GAS_CONSTANT * kelvin)) * Math.pow(gel / (gel - x), a + b * x);
    }

    /** Conversion at which the viscosity at one temperature has grown so many times, above 1. */
    public double conversionAt(double fold) {
        // The viscosity grows without bound towards the gel point, so the zero lies between.
        return Roots.brent(x -> (a + b * x) * Math.log(gel / (gel - x)) - Math.log(fold), 0, gel * (1 - NEAR), NEAR).orElseThrow();
    }

    /** Conversion of lowest viscosity while the temperature rises with conversion: T = startKelvin + rise X. Zero when it never falls. */
    public double thinnest(double startKelvin, double rise) {
        double step = 1e-7;
        return Roots.brent(x -> value(x + step, startKelvin + rise * (x + step)) - value(x - step, startKelvin + rise * (x - step)), step, gel - 2 * step,
                NEAR).orElse(0);
    }
}
