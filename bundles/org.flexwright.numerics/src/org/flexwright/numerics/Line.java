package org.flexwright.numerics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A straight line fitted to points. With two points it has no errors to show.
 *
 * @param intercept  value at x = 0
 * @param slope      rise for one unit of x
 * @param n          number of points
 * @param meanX      mean of the places
 * @param sumOfSquaresX sum of the squared distances of the places from their mean
 * @param residualSd standard deviation of the residuals (n - 2); empty for two points
 */
public record Line(double intercept, double slope, int n, double meanX, double sumOfSquaresX, OptionalDouble residualSd) {

	/** The line at x. */
	public double at(double x) {
		return intercept + slope * x;
	}

	/** Standard error of the slope; empty for two points. */
	public OptionalDouble slopeError() {
		return scaled(1 / Math.sqrt(sumOfSquaresX));
	}

	/** Standard error of the intercept; empty for two points. */
	public OptionalDouble interceptError() {
		return scaled(Math.sqrt(1.0 / n + meanX * meanX / sumOfSquaresX));
	}

	/** The confidence interval of the line at x; empty for two points. */
	public Optional<Interval> interval(double x, double level) {
		double distance = Require.finite(x, "place") - meanX;
		OptionalDouble error = scaled(Math.sqrt(1.0 / n + distance * distance / sumOfSquaresX));
		return error.isEmpty() ? Optional.empty() : Optional.of(Interval.around(at(x), StudentT.factor(level, n - 2.0) * error.getAsDouble()));
	}

	private OptionalDouble scaled(double factor) {
		return residualSd.isEmpty() ? residualSd : OptionalDouble.of(residualSd.getAsDouble() * factor);
	}
}
