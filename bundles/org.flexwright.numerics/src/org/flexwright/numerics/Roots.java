package org.flexwright.numerics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

import org.hipparchus.analysis.solvers.BrentSolver;

/** Zeros of functions of one variable. */
public final class Roots {
	private static final int MOST_EVALUATIONS = 10_000;
	private static final double RELATIVE = 1e-15;

	private Roots() {
	}

	/**
	 * A zero of f between lo and hi by Brent's method.
	 *
	 * @param tol how near in x, above 0
	 * @return empty when f has the same sign at both ends, or is not finite there: there may be no zero
	 */
	public static OptionalDouble brent(DoubleUnaryOperator f, double lo, double hi, double tol) {
		Require.finite(lo, "lower end");
		Require.finite(hi, "upper end");
		Require.positive(tol, "tolerance");
		if (!(lo < hi)) {
			throw new IllegalArgumentException("The lower end must lie below the upper end, not " + lo + " and " + hi + ".");
		}
		double atLo = f.applyAsDouble(lo);
		double atHi = f.applyAsDouble(hi);
		if (atLo == 0) {
			return OptionalDouble.of(lo);
		}
		if (atHi == 0) {
			return OptionalDouble.of(hi);
		}
		if (!Double.isFinite(atLo) || !Double.isFinite(atHi) || Math.signum(atLo) == Math.signum(atHi)) {
			return OptionalDouble.empty();
		}
		return OptionalDouble.of(new BrentSolver(RELATIVE, tol, 0).solve(MOST_EVALUATIONS, f::applyAsDouble, lo, hi));
	}
}
