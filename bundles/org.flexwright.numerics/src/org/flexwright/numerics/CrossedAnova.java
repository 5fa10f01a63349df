package org.flexwright.numerics;

import java.util.Optional;

/**
 * Analysis of variance of a crossed study: every operator reads every part the same number of times.
 *
 * @param ssPart        sum of squares of the parts
 * @param ssOperator    sum of squares of the operators
 * @param ssInteraction sum of squares of parts with operators
 * @param ssError       sum of squares of the repeats
 * @param parts         number of parts, 2 or more
 * @param operators     number of operators, 1 or more
 * @param repeats       number of repeats, 2 or more
 */
public record CrossedAnova(double ssPart, double ssOperator, double ssInteraction, double ssError, int parts, int operators, int repeats) {

	/**
	 * Analyses the readings.
	 *
	 * @param readings by part, operator and repeat
	 * @return empty for fewer than two parts, no operator, or fewer than two repeats
	 * @throws IllegalArgumentException when a cell has more or fewer readings than the first
	 */
	public static Optional<CrossedAnova> of(double[][][] readings) {
		int p = readings.length;
		if (p < 2 || readings[0].length < 1 || readings[0][0].length < 2) {
			return Optional.empty();
		}
		int o = readings[0].length;
		int r = readings[0][0].length;
		double[][] cell = new double[p][o];
		double error = 0;
		for (int i = 0; i < p; i++) {
			Require.sameLength(readings[i].length, o, "operators for each part");
			for (int j = 0; j < o; j++) {
				Require.sameLength(readings[i][j].length, r, "repeats in each cell");
				cell[i][j] = Descriptive.mean(readings[i][j]);
				error += Descriptive.sumOfSquares(readings[i][j]);
			}
		}
		double[] part = new double[p];
		for (int i = 0; i < p; i++) {
			part[i] = Descriptive.mean(cell[i]);
		}
		double[] operator = new double[o];
		for (int j = 0; j < o; j++) {
			double[] column = new double[p];
			for (int i = 0; i < p; i++) {
				column[i] = cell[i][j];
			}
			operator[j] = Descriptive.mean(column);
		}
		double grand = Descriptive.mean(part);
		double interaction = 0;
		for (int i = 0; i < p; i++) {
			for (int j = 0; j < o; j++) {
				double left = cell[i][j] - part[i] - operator[j] + grand;
				interaction += left * left;
			}
		}
		return Optional.of(new CrossedAnova(o * r * Descriptive.sumOfSquares(part), p * r * Descriptive.sumOfSquares(operator), o == 1 ? 0 : r * interaction,
				error, p, o, r));
	}

	/** Degrees of freedom of the parts. */
	public int dfPart() {
		return parts - 1;
	}

	/** Degrees of freedom of the operators; 0 for one operator. */
	public int dfOperator() {
		return operators - 1;
	}

	/** Degrees of freedom of the interaction; 0 for one operator. */
	public int dfInteraction() {
		return dfPart() * dfOperator();
	}

	/** Degrees of freedom of the repeats. */
	public int dfError() {
		return parts * operators * (repeats - 1);
	}
}
