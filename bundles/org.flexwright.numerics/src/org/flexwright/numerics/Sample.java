package org.flexwright.numerics;

import java.util.Optional;

/**
 * What is known of a group of values when its values are not kept.
 *
 * @param n    how many values, 2 or more
 * @param mean their mean
 * @param sd   their standard deviation (n - 1), from 0 up
 */
public record Sample(int n, double mean, double sd) {

	/** @throws IllegalArgumentException when there are fewer than two values or a figure is impossible */
	public Sample {
		Require.atLeast(2, n, "number of values");
		Require.finite(mean, "mean");
		Require.notNegative(sd, "standard deviation");
	}

	/** The figures of these values; empty for fewer than two. */
	public static Optional<Sample> of(double... x) {
		Require.finite(x, "values");
		return x.length < 2 ? Optional.empty()
				: Optional.of(new Sample(x.length, Descriptive.mean(x), Descriptive.standardDeviation(x).orElseThrow()));
	}
}
