package org.flexwright.numerics;

import java.util.Optional;

/**
 * Grubbs' test for one outlier in values that are normal otherwise: G = max|x - mean| / s (Grubbs 1950, 1969; NIST/SEMATECH
 * e-Handbook 1.3.5.17). With three values it can hardly see anything.
 */
public final class Grubbs {
	private static final int FEWEST = 3;

	private Grubbs() {
	}

	/**
	 * Tests the value furthest from the mean.
	 *
	 * @param alpha significance, between 0 and 1
	 * @return empty for fewer than three values, or when all are the same
	 */
	public static Optional<Outlier> test(double[] x, double alpha, Sides sides) {
		Require.between0and1(alpha, "significance");
		if (Require.finite(x, "values").length < FEWEST) {
			return Optional.empty();
		}
		double mean = Descriptive.mean(x);
		double sd = Descriptive.standardDeviation(x).orElseThrow();
		if (Descriptive.range(x) == 0 || sd == 0) {
			return Optional.empty();
		}
		int furthest = 0;
		for (int i = 1; i < x.length; i++) {
			furthest = Math.abs(x[i] - mean) > Math.abs(x[furthest] - mean) ? i : furthest;
		}
		return Optional.of(new Outlier(furthest, x[furthest], Math.abs(x[furthest] - mean) / sd, critical(x.length, alpha, sides)));
	}

	/** The critical value for n values, 3 or more. */
	public static double critical(int n, double alpha, Sides sides) {
		Require.atLeast(FEWEST, n, "number of values");
		Require.between0and1(alpha, "significance");
		double tail = sides == Sides.ONE ? alpha / n : alpha / (2.0 * n);
		double t = StudentT.quantile(1 - tail, n - 2.0);
		return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
	}
}
