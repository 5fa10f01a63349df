package org.flexwright.numerics;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Figures that describe a set of values. An empty set is a mistake of the caller ({@link IllegalArgumentException}); where
 * one value is too few the answer is empty.
 */
public final class Descriptive {
	private Descriptive() {
	}

	/** The mean, corrected once by the mean of the residuals, so that large offsets cost no digits. */
	public static double mean(double... x) {
		some(x);
		double sum = 0;
		for (double v : x) {
			sum += v / x.length;
		}
		double residual = 0;
		for (double v : x) {
			residual += v - sum;
		}
		return sum + residual / x.length;
	}

	/** Sum of the squared differences from the mean, with the correction for the rounding of the mean. */
	static double sumOfSquares(double[] x) {
		double mean = mean(x);
		double squares = 0;
		double residual = 0;
		for (double v : x) {
			squares += (v - mean) * (v - mean);
			residual += v - mean;
		}
		return Math.max(0, squares - residual * residual / x.length);
	}

	/** The sample standard deviation (n - 1); empty for fewer than two values. */
	public static OptionalDouble standardDeviation(double... x) {
		some(x);
		return x.length < 2 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sumOfSquares(x) / (x.length - 1)));
	}

	/** The middle value, or the mean of the two middle ones. */
	public static double median(double... x) {
		some(x);
		double[] sorted = x.clone();
		Arrays.sort(sorted);
		int middle = sorted.length / 2;
		return sorted.length % 2 == 1 ? sorted[middle] : sorted[middle - 1] + (sorted[middle] - sorted[middle - 1]) / 2;
	}

	/** The smallest value. */
	public static double min(double... x) {
		return Arrays.stream(some(x)).min().orElseThrow();
	}

	/** The largest value. */
	public static double max(double... x) {
		return Arrays.stream(some(x)).max().orElseThrow();
	}

	/** Largest minus smallest. */
	public static double range(double... x) {
		return max(x) - min(x);
	}

	/** The median of the distances from the median, not scaled to a standard deviation. */
	public static double mad(double... x) {
		double median = median(x);
		return median(Arrays.stream(x).map(v -> Math.abs(v - median)).toArray());
	}

	private static double[] some(double[] x) {
		if (x.length == 0) {
			throw new IllegalArgumentException("At least one value is needed.");
		}
		return Require.finite(x, "values");
	}
}
