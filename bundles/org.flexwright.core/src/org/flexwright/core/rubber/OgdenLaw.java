package org.flexwright.core.rubber;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Ogden 1972 (Proc. R. Soc. A 326, 565): W = sum mu/alpha (l1^alpha + l2^alpha + l3^alpha - 3). Some programs write 2 mu/alpha^2
 * instead: convert first.
 *
 * @param terms one or more
 */
public record OgdenLaw(List<Term> terms) implements RubberLaw {

    /**
     * A term.
     *
     * @param mu    MPa; mu times alpha is usually above 0
     * @param alpha exponent, not 0
     */
    public record Term(double mu, double alpha) {
        public Term {
            if (alpha == 0 || !Double.isFinite(alpha) || !Double.isFinite(mu)) {
                throw new IllegalArgumentException("A term needs finite numbers and an exponent other than 0, not " + mu + " and " + alpha + ".");
            }
        }
    }

    public OgdenLaw {
        terms = List.copyOf(terms);
        if (terms.isEmpty()) {
            throw new IllegalArgumentException("At least one term is needed.");
        }
    }

    @Override
    public double energy(double first, double second) {
        double third = 1 / (first * second);
        return sum(t -> t.mu() / t.alpha() * (Math.pow(first, t.alpha()) + Math.pow(second, t.alpha()) + Math.pow(third, t.alpha()) - 3));
    }

    @Override
    public double stress(Loading loading, double stretch) {
        double free = free(loading);
        return sum(t -> t.mu() * (Math.pow(stretch, t.alpha() - 1) - Math.pow(stretch, free * t.alpha() - 1)));
    }

    @Override
    public Tangent tangent(double first, double second) {
        double third = 1 / (first * second);
        double d12 = sum(t -> t.mu() * t.alpha() * Math.pow(third, t.alpha()));
        return new Tangent(sum(t -> t.mu() * t.alpha() * Math.pow(first, t.alpha())) + d12, sum(t -> t.mu() * t.alpha() * Math.pow(second, t.alpha())) + d12, d12);
    }

    @Override
    public double shearModulus() {
        return sum(t -> t.mu() * t.alpha()) / 2;
    }

    /** Exponent of the stretch in the direction that is free. */
    static double free(Loading loading) {
        return switch (loading) {
            case UNIAXIAL -> -0.5;
            case EQUIBIAXIAL -> -2;
            case PLANAR -> -1;
        };
    }

    private double sum(ToDoubleFunction<Term> value) {
        return terms.stream().mapToDouble(value).sum();
    }
}
