package org.flexwright.numerics;

import java.util.Optional;

/** Compares two means without assuming the same spread (Welch 1947, degrees of freedom after Satterthwaite 1946). */
public final class Welch {
	private Welch() {
	}

	/** From two sets of values; empty when one has fewer than two values, or neither has any spread. */
	public static Optional<MeanDifference> test(double[] x, double[] y) {
		return Sample.of(x).flatMap(a -> Sample.of(y).flatMap(b -> test(a, b)));
	}

	/** From two summaries; empty when neither has any spread. */
	public static Optional<MeanDifference> test(Sample x, Sample y) {
		double vx = x.sd() * x.sd() / x.n();
		double vy = y.sd() * y.sd() / y.n();
		double variance = vx + vy;
		if (variance == 0) {
			return Optional.empty();
		}
		double df = variance * variance / (vx * vx / (x.n() - 1) + vy * vy / (y.n() - 1));
		return Optional.of(new MeanDifference(x.mean() - y.mean(), Math.sqrt(variance), df));
	}
}
