package org.flexwright.numerics;

import java.util.Optional;

import org.hipparchus.distribution.continuous.BetaDistribution;

/** Confidence intervals for few values. The level is a share: 0.95. */
public final class Intervals {
	private Intervals() {
	}

	/** Mean plus and minus t s / sqrt(n); empty for fewer than two values. */
	public static Optional<Interval> meanT(double[] x, double level) {
		Require.between0and1(level, "level");
		if (Require.finite(x, "values").length < 2) {
			return Optional.empty();
		}
		double sd = Descriptive.standardDeviation(x).orElseThrow();
		return Optional.of(meanKnownSpread(Descriptive.mean(x), x.length, sd, x.length - 1.0, level));
	}

	/**
	 * The interval of a mean whose spread comes from elsewhere (a gauge study, earlier parts).
	 *
	 * @param mean the mean of the parts
	 * @param n    how many parts it is the mean of, 1 or more
	 * @param sd   the standard deviation of one part, from 0 up
	 * @param df   the degrees of freedom that stand behind the standard deviation; infinite when it is known exactly
	 */
	public static Interval meanKnownSpread(double mean, int n, double sd, double df, double level) {
		Require.finite(mean, "mean");
		Require.atLeast(1, n, "number of parts");
		Require.notNegative(sd, "standard deviation");
		return Interval.around(mean, StudentT.factor(level, df) * sd / Math.sqrt(n));
	}

	/**
	 * The exact two-sided interval of a share, from a count (Clopper and Pearson 1934).
	 *
	 * @param k how many did, 0 to n
	 * @param n of how many, 1 or more
	 */
	public static Interval clopperPearson(int k, int n, double level) {
		Require.atLeast(1, n, "number tried");
		if (k < 0 || k > n) {
			throw new IllegalArgumentException("The count must lie between 0 and " + n + ", not " + k + ".");
		}
		double tail = (1 - Require.between0and1(level, "level")) / 2;
		double low = k == 0 ? 0 : new BetaDistribution(k, n - k + 1.0).inverseCumulativeProbability(tail);
		double high = k == n ? 1 : new BetaDistribution(k + 1.0, n - k).inverseCumulativeProbability(1 - tail);
		return new Interval(low, high);
	}

	/**
	 * How surely the smallest and largest of n values enclose the median of what they were drawn from: 1 - 2^(1-n).
	 *
	 * @param n how many values, 1 or more
	 */
	public static double medianMinMaxCoverage(int n) {
		Require.atLeast(1, n, "number of values");
		return 1 - Math.pow(2, 1.0 - n);
	}
}
