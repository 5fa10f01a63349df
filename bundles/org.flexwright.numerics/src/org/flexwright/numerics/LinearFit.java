package org.flexwright.numerics;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * A linear model fitted by least squares.
 *
 * @param coefficients   one a column
 * @param standardErrors one a column; empty list when as many rows as columns
 * @param residuals      observed minus fitted, one a row
 * @param sse            sum of the squared residuals
 * @param df             rows minus columns
 * @param r2             1 - sse / sum of squares about the mean of y; empty when y does not vary
 */
public record LinearFit(List<Double> coefficients, List<Double> standardErrors, List<Double> residuals, double sse, int df, OptionalDouble r2) {

	static LinearFit of(double[] coefficients, double[] unscaledVariance, double[] residuals, double[] y) {
		double sse = DoubleStream.of(residuals).map(r -> r * r).sum();
		int df = y.length - coefficients.length;
		List<Double> errors = df == 0 ? List.of() : DoubleStream.of(unscaledVariance).map(v -> Math.sqrt(v * sse / df)).boxed().toList();
		double about = Descriptive.sumOfSquares(y);
		return new LinearFit(boxed(coefficients), errors, boxed(residuals), sse, df, about == 0 ? OptionalDouble.empty() : OptionalDouble.of(1 - sse / about));
	}

	/** A coefficient. */
	public double coefficient(int index) {
		return coefficients.get(index);
	}

	/** Standard deviation of the residuals; empty when as many rows as columns. */
	public OptionalDouble residualSd() {
		return df == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sse / df));
	}

	/** Root of the mean squared residual, over all rows. */
	public double rms() {
		return Math.sqrt(sse / residuals.size());
	}

	private static List<Double> boxed(double[] values) {
		return DoubleStream.of(values).boxed().toList();
	}
}
