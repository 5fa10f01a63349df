package org.flexwright.numerics;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/** The chi-square distribution of a sum of squares. */
public final class ChiSquare {
	private ChiSquare() {
	}

	/**
	 * The share above x.
	 *
	 * @param x  from 0 up
	 * @param df degrees of freedom, above 0
	 */
	public static double upper(double x, double df) {
		return 1 - new ChiSquaredDistribution(Require.positive(df, "degrees of freedom")).cumulativeProbability(Require.notNegative(x, "sum of squares"));
	}

	/** The value below which the share p lies. */
	public static double quantile(double p, double df) {
		return new ChiSquaredDistribution(Require.positive(df, "degrees of freedom")).inverseCumulativeProbability(Require.between0and1(p, "share"));
	}
}
