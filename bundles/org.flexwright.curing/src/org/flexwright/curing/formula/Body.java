package org.flexwright.curing.formula;

import java.util.function.DoubleUnaryOperator;

import org.flexwright.numerics.Ode;
import org.flexwright.numerics.Roots;
import org.hipparchus.special.BesselJ;

/** A body warmed from outside, by its half thickness or radius L: Bi = h L/k, Fo = alpha t/L^2, x = 0 centre to 1 surface. */
public enum Body {
    /** Warmed from both faces; L is half the thickness. */
    SLAB(0, 2) {
        @Override
        double characteristic(double z, double biot) {
            return Double.isInfinite(biot) ? -Math.cos(z) : z * Math.sin(z) - biot * Math.cos(z);
        }

        @Override
        double[] bracket(int n) {
            return new double[] { (n - 1) * Math.PI, (n - 0.5) * Math.PI + NUDGE };
        }

        @Override
        public double coefficient(double z) {
            return 4 * Math.sin(z) / (2 * z + Math.sin(2 * z));
        }

        @Override
        public double shape(double s) {
            return Math.cos(s);
        }
    },
    /** Long rod; L is the radius. */
    CYLINDER(1, 4) {
        @Override
        double characteristic(double z, double biot) {
            return Double.isInfinite(biot) ? -BesselJ.value(0, z) : z * BesselJ.value(1, z) - biot * BesselJ.value(0, z);
        }

        @Override
        double[] bracket(int n) {
            double from = n == 1 ? 0 : zero(z -> BesselJ.value(1, z), (n - 1) * Math.PI, (n - 0.5) * Math.PI);
            return new double[] { from, zero(z -> BesselJ.value(0, z), (n - 0.5) * Math.PI, n * Math.PI) + NUDGE };
        }

        @Override
        public double coefficient(double z) {
            double j0 = BesselJ.value(0, z);
            double j1 = BesselJ.value(1, z);
            return 2 * j1 / (z * (j0 * j0 + j1 * j1));
        }

        @Override
        public double shape(double s) {
            return BesselJ.value(0, s);
        }
    },
    /** Ball; L is the radius. */
    SPHERE(2, 6) {
        @Override
        double characteristic(double z, double biot) {
            return Double.isInfinite(biot) ? -Math.sin(z) : (1 - biot) * Math.sin(z) - z * Math.cos(z);
        }

        @Override
        double[] bracket(int n) {
            return new double[] { (n - 1) * Math.PI + 1e-6, n * Math.PI + NUDGE };
        }

        @Override
        public double coefficient(double z) {
            return 4 * (Math.sin(z) - z * Math.cos(z)) / (2 * z - Math.sin(2 * z));
        }

        @Override
        public double shape(double s) {
            return s < 1e-8 ? 1 : Math.sin(s) / s;
        }
    };

    /** Lets a zero that sits on the end of its bracket, as it does without any surface resistance, count as inside. */
    private static final double NUDGE = 1e-9;
    private static final double NEAR = 1e-14;
    private static final double SMALL_TERM = 1e-13;
    private static final int MOST_TERMS = 400;

    private final int curvature;
    private final double sourceShare;

    Body(int curvature, double sourceShare) {
        this.curvature = curvature;
        this.sourceShare = sourceShare;
    }

    abstract double characteristic(double z, double biot);

    abstract double[] bracket(int n);

    /** Coefficient of the term with that root. */
    public abstract double coefficient(double z);

    /** Course from centre to surface of the term, at z x. */
    public abstract double shape(double s);

    /** The n-th root z, n from 1; Biot number above 0, infinite for a surface held at the outer temperature. */
    public double root(int n, double biot) {
        double[] ends = bracket(n);
        return zero(z -> characteristic(z, biot), ends[0], ends[1]);
    }

    private static double zero(DoubleUnaryOperator f, double from, double to) {
        return Roots.brent(f, from, to, NEAR).orElseThrow(() -> new IllegalStateException("No zero between " + from + " and " + to + "."));
    }

    /** Share of the first temperature difference that is left at x after Fo, by one term; good above Fo 0.2 only. */
    public double oneTerm(double biot, double fourier, double x) {
        double z = root(1, biot);
        return coefficient(z) * Math.exp(-z * z * fourier) * shape(z * x);
    }

    /** Share of the first temperature difference that is left at x (0 centre, 1 surface) after Fo above 0, by the whole series. */
    public double left(double biot, double fourier, double x) {
        double sum = 0;
        for (int n = 1; n <= MOST_TERMS; n++) {
            double z = root(n, biot);
            double fade = Math.exp(-z * z * fourier);
            sum += coefficient(z) * fade * shape(z * x);
            if (fade < SMALL_TERM) {
                break;
            }
        }
        return Math.min(1, Math.max(0, sum));
    }

    /** Fo at which that share is left at the centre; {@code share} 0.001 to 0.99. */
    public double fourierFor(double biot, double share) {
        double z = root(1, biot);
        double late = (Math.log(coefficient(z) / share) + 1) / (z * z);
        return Roots.brent(f -> left(biot, f, 0) - share, 1e-4 / (1 + 1 / biot), Math.max(late, 1e-3), 1e-9).orElseThrow();
    }

    /** Excess of the centre over the surface in K with an even source in W/m3, half thickness or radius in m, W/m/K. */
    public double sourceRise(double source, double half, double conductivity) {
        return source * half * half / (sourceShare * conductivity);
    }

    /** How much the body curves: 0 slab, 1 cylinder, 2 sphere. */
    public int curvature() {
        return curvature;
    }

    /**
     * Frank-Kamenetskii number above which a body with its surface held runs away. With s = x sqrt(delta e^theta0) the course of
     * theta - theta0 is the same for all, and delta = s^2 e^phi has its largest value where 2 + s phi' = 0.
     */
    public double criticalNumber() {
        double s0 = 1e-4;
        double[] start = { -s0 * s0 / (2 * (curvature + 1)), -s0 / (curvature + 1) };
        Ode.State turn = Ode.integrateUntil((s, y) -> new double[] { y[1], -Math.exp(y[0]) - curvature / s * y[1] }, s0, start, 20,
                (s, y) -> 2 + s * y[1], 1e-12).orElseThrow();
        return turn.t() * turn.t() * Math.exp(turn.y()[0]);
    }

    /** Frank-Kamenetskii number of a reacting body: (E/RT^2)(L^2 q/k); E in kJ/mol, K, m, W/m3, W/m/K. */
    public static double reactionNumber(double activationEnergy, double kelvin, double half, double source, double conductivity) {
        return 1000 * activationEnergy / (Arrhenius.GAS_CONSTANT * kelvin * kelvin) * half * half * source / conductivity;
    }
}
