package org.flexwright.numerics;

import org.hipparchus.distribution.continuous.FDistribution;

/** The F distribution of a ratio of two variances. */
public final class FisherF {
	private FisherF() {
	}

	/**
	 * The share above f.
	 *
	 * @param f   from 0 up
	 * @param df1 degrees of freedom above the line, above 0
	 * @param df2 degrees of freedom below the line, above 0
	 */
	public static double upper(double f, double df1, double df2) {
		Require.notNegative(f, "ratio");
		Require.positive(df1, "degrees of freedom");
		Require.positive(df2, "degrees of freedom");
		return f == 0 ? 1 : new FDistribution(df2, df1).cumulativeProbability(1 / f); // the lower tail of the inverse ratio keeps the digits of a small share
	}

	/** The value below which the share p lies. */
	public static double quantile(double p, double df1, double df2) {
		Require.between0and1(p, "share");
		return new FDistribution(Require.positive(df1, "degrees of freedom"), Require.positive(df2, "degrees of freedom")).inverseCumulativeProbability(p);
	}
}
