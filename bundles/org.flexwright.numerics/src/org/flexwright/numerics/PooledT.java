package org.flexwright.numerics;

import java.util.Optional;

/** Compares two means that are taken to have the same spread (Student's two-sample t). */
public final class PooledT {
	private PooledT() {
	}

	/** From two sets of values; empty when one has fewer than two values, or neither has any spread. */
	public static Optional<MeanDifference> test(double[] x, double[] y) {
		return Sample.of(x).flatMap(a -> Sample.of(y).flatMap(b -> test(a, b)));
	}

	/** From two summaries; empty when neither has any spread. */
	public static Optional<MeanDifference> test(Sample x, Sample y) {
		double df = x.n() + y.n() - 2.0;
		double variance = ((x.n() - 1) * x.sd() * x.sd() + (y.n() - 1) * y.sd() * y.sd()) / df;
		if (variance == 0) {
			return Optional.empty();
		}
		return Optional.of(new MeanDifference(x.mean() - y.mean(), Math.sqrt(variance * (1.0 / x.n() + 1.0 / y.n())), df));
	}
}
