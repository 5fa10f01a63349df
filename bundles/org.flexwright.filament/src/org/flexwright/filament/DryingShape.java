package org.flexwright.filament;

import java.util.function.DoubleUnaryOperator;

import org.flexwright.numerics.Roots;
import org.hipparchus.special.BesselJ;

/**
 * Share of a solute left in a body that held it evenly and whose surface is kept free of it, over the Fourier number Fo = D t / l^2 with l
 * the half thickness or the radius. Source: Crank, The Mathematics of Diffusion, 1975, eqs 4.18, 5.23, 6.20.
 */
public enum DryingShape {
    /** A sheet drying from both faces; l is half its thickness. */
    SLAB(2, 0) {
        @Override
        double term(int n, double fourier) {
            double b = (n + 0.5) * Math.PI;
            return 2 / (b * b) * Math.exp(-b * b * fourier);
        }
    },
    /** A long round strand; l is its radius. */
    CYLINDER(4, 1) {
        @Override
        double term(int n, double fourier) {
            double a = besselZero(n);
            return 4 / (a * a) * Math.exp(-a * a * fourier);
        }
    },
    /** A ball; l is its radius. */
    SPHERE(6, 3) {
        @Override
        double term(int n, double fourier) {
            double a = (n + 1) * Math.PI;
            return 6 / (a * a) * Math.exp(-a * a * fourier);
        }
    };

    /** Below this Fourier number the first terms of the short-time form are exact to 1e-7, and the series would need hundreds. */
    private static final double SHORT_TIME = 1e-4;
    private static final double LEAST_TERM = 1e-17;
    private static final double LONGEST_FOURIER = 20;

    private final double surface;
    private final double curvature;

    DryingShape(double surface, double curvature) {
        this.surface = surface;
        this.curvature = curvature;
    }

    /** Term number n, from 0, of the long-time series. */
    abstract double term(int n, double fourier);

    /** Share left at a Fourier number of 0 or more, 1 at the start. */
    public double residual(double fourier) {
        if (fourier < SHORT_TIME) {
            return 1 - surface * Math.sqrt(fourier / Math.PI) + curvature * fourier;
        }
        double sum = 0;
        double term = 1;
        for (int n = 0; term > LEAST_TERM; n++) {
            term = term(n, fourier);
            sum += term;
        }
        return sum;
    }

    /** Fourier number at which a share above 0 and below 1 is left. */
    public double fourier(double residual) {
        DoubleUnaryOperator off = fourier -> residual(fourier) - residual;
        return Roots.brent(off, 0, LONGEST_FOURIER, 1e-12).orElseThrow(() -> new IllegalArgumentException("A share left lies between 0 and 1, got " + residual + "."));
    }

    /** Positive zero number n, from 0, of the Bessel function J0: its asymptotic place, refined by Newton's method. */
    private static double besselZero(int n) {
        double beta = (n + 0.75) * Math.PI;
        double zero = beta + 1 / (8 * beta);
        for (int i = 0; i < 3; i++) {
            zero += BesselJ.value(0, zero) / BesselJ.value(1, zero);
        }
        return zero;
    }
}
