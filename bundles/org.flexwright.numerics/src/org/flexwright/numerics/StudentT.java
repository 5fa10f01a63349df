package org.flexwright.numerics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t distribution; infinite degrees of freedom give the normal distribution. */
public final class StudentT {
	private StudentT() {
	}

	/**
	 * The value below which the share p lies.
	 *
	 * @param p  between 0 and 1
	 * @param df degrees of freedom, above 0, may be a fraction or infinite
	 */
	public static double quantile(double p, double df) {
		Require.between0and1(p, "share");
		Require.degreesOfFreedom(df);
		return Double.isInfinite(df) ? new NormalDistribution().inverseCumulativeProbability(p) : new TDistribution(df).inverseCumulativeProbability(p);
	}

	/** The share below t. */
	public static double cumulative(double t, double df) {
		Require.degreesOfFreedom(df);
		if (Double.isNaN(t)) {
			throw new IllegalArgumentException("t must be a number.");
		}
		if (Double.isInfinite(t)) {
			return t > 0 ? 1 : 0;
		}
		return Double.isInfinite(df) ? new NormalDistribution().cumulativeProbability(t) : new TDistribution(df).cumulativeProbability(t);
	}

	/** The share further from zero than t, on both sides together. */
	public static double twoSided(double t, double df) {
		return Math.min(1, 2 * cumulative(-Math.abs(t), df));
	}

	/** The factor of a two-sided interval: t at (1 + level) / 2. */
	static double factor(double level, double df) {
		return quantile((1 + Require.between0and1(level, "level")) / 2, df);
	}
}
