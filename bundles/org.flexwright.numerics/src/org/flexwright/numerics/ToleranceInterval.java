package org.flexwright.numerics;

import java.util.Optional;

/**
 * Between which values a share of all parts lies, not only their mean: mean plus and minus k s for values that spread normally, two-sided
 * (ISO 16269-6; NIST/SEMATECH e-Handbook 7.2.6.3). The factor is computed by integrating over where the mean may lie, not by Howe's
 * approximation, which is 5 % too large for two values and 0.3 % too small for ten.
 */
public final class ToleranceInterval {
	private static final double REACH = 8;
	private static final double MOST = 1e6;

	private ToleranceInterval() {
	}

	/**
	 * The interval that holds the share of all values, with this confidence.
	 *
	 * @param share      share of all values, 0.95
	 * @param confidence how surely, 0.95
	 * @return empty for fewer than two values
	 */
	public static Optional<Interval> of(double[] x, double share, double confidence) {
		if (Require.finite(x, "values").length < 2) {
			return Optional.empty();
		}
		double sd = Descriptive.standardDeviation(x).orElseThrow();
		return Optional.of(Interval.around(Descriptive.mean(x), factor(x.length, share, confidence) * sd));
	}

	/**
	 * The factor k.
	 *
	 * @param n          how many values, 2 or more
	 * @param share      share of all values, between 0 and 1
	 * @param confidence how surely, between 0 and 1
	 */
	public static double factor(int n, double share, double confidence) {
		Require.atLeast(2, n, "number of values");
		Require.between0and1(share, "share");
		Require.between0and1(confidence, "confidence");
		double least = Normal.quantile((1 + share) / 2);
		return Roots.brent(k -> chance(n, share, k) - confidence, least * 1e-3, MOST, 1e-7).orElseThrow();
	}

	/** The chance that the interval with this k holds at least the share: the mean is off by some standard errors, the rest is chi-square. */
	private static double chance(int n, double share, double k) {
		return 2 * Quadrature.gauss(off -> {
			double reach = reach(off / Math.sqrt(n), share) / k;
			return Math.exp(-off * off / 2) / Math.sqrt(2 * Math.PI) * ChiSquare.upper((n - 1) * reach * reach, n - 1.0);
		}, 0, REACH);
	}

	/** How far from a point that is off the centre one must go to both sides to hold the share of a standard normal distribution. */
	private static double reach(double off, double share) {
		return Roots.brent(r -> Normal.cumulative(off + r) - Normal.cumulative(off - r) - share, 0, off + REACH + 2, 1e-12).orElseThrow();
	}
}
