package org.flexwright.numerics;

import java.util.Optional;

/**
 * Least squares for sums of terms, y = sum of factor times shape(parameter) plus sum of factor times fixed column: sums of
 * exponentials, of powers. The factors are linear and follow from the parameters, so only the parameters are searched
 * (variable projection, G. H. Golub and V. Pereyra 1973, with the shorter slopes of L. Kaufman 1975; both from memory, unconfirmed;
 * checked against the certified sets of NIST).
 *
 * @param factors    of the terms, then of the fixed columns
 * @param parameters of the terms
 * @param residuals  y less the fit, one a row
 * @param sse        sum of their squares
 * @param jacobian   slopes of the fit by the factors, then by the parameters; one row an observation
 */
public record SeparableFit(double[] factors, double[] parameters, double[] residuals, double sse, double[][] jacobian) {
	private static final int MOST_STEPS = 120;
	private static final double DAMPING = 1e-3;
	private static final double MOST_DAMPING = 1e12;
	private static final double EASIER = 5;
	private static final double HARDER = 4;
	/** Part of a column that must be left when the others are taken off, else it is no column of its own. */
	private static final double DEPENDENT = 1e-9;
	private static final double SETTLED = 1e-13;
	private static final double SMALL_STEP = 1e-10;
	private static final double NEARLY_SETTLED = 1e-8;
	/** Share of the squares of y below which nothing but rounding is left. */
	private static final double ROUNDING = 1e-26;
	/** A step takes at most this share of the distance of two terms: terms that meet do not part again. */
	private static final double NEARER = 0.6;

	/** A column of the fit that depends on one parameter. */
	@FunctionalInterface
	public interface Shape {
		/** Fills in the column at a parameter, weighted, and how it changes with the parameter. */
		void at(double parameter, double[] column, double[] slope);
	}

	/**
	 * Searches from a start; finds a least nearby.
	 *
	 * @param shape of every term
	 * @param fixed columns without a parameter, weighted; may be none
	 * @param y     weighted observations
	 * @param start one parameter a term, all different
	 * @param low   least parameter
	 * @param high  largest parameter
	 * @return empty when the search does not settle inside the bounds, or the terms become the same
	 */
	public static Optional<SeparableFit> from(Shape shape, double[][] fixed, double[] y, double[] start, double low, double high) {
		Require.finite(y, "values");
		Require.finite(start, "start values");
		Require.atLeast(2 * start.length + fixed.length, y.length, "number of values");
		Work here = new Work(shape, fixed, y, start.length);
		Work next = new Work(shape, fixed, y, start.length);
		double[] at = start.clone();
		if (!here.at(at)) {
			return Optional.empty();
		}
		double damping = DAMPING;
		double nothing = ROUNDING * Work.dot(y, y);
		for (int i = 0; i < MOST_STEPS && damping < MOST_DAMPING; i++) {
			double[] step = apart(at, here.step(damping));
			double[] tried = at.clone();
			double largest = 0;
			for (int j = 0; j < at.length; j++) {
				tried[j] = Math.clamp(at[j] + step[j], low, high);
				largest = Math.max(largest, Math.abs(tried[j] - at[j]) / (Math.abs(at[j]) + SMALL_STEP));
			}
			boolean better = next.at(tried) && next.sse <= here.sse;
			boolean settled = largest < SMALL_STEP || better && next.sse <= nothing || better && here.sse - next.sse <= SETTLED * here.sse && largest < NEARLY_SETTLED;
			if (better) {
				Work before = here;
				here = next;
				next = before;
				at = tried;
				damping /= EASIER;
			} else {
				damping *= HARDER;
			}
			if (settled) {
				return inside(at, low, high) ? Optional.of(here.result(at)) : Optional.empty();
			}
		}
		return Optional.empty();
	}

	/** The step, shortened so that no two terms meet or change places. */
	private static double[] apart(double[] at, double[] step) {
		double share = 1;
		for (int a = 0; a < at.length; a++) {
			for (int b = 0; b < a; b++) {
				double nearer = -(step[a] - step[b]) / (at[a] - at[b]);
				share = nearer > NEARER ? Math.min(share, NEARER / nearer) : share;
			}
		}
		for (int a = 0; a < at.length; a++) {
			step[a] *= share;
		}
		return step;
	}

	private static boolean inside(double[] at, double low, double high) {
		for (double parameter : at) {
			if (!(parameter > low && parameter < high)) {
				return false;
			}
		}
		return true;
	}

	/** Everything at one set of parameters. */
	private static final class Work {
		private final Shape shape;
		private final double[] y;
		private final int terms;
		/** Columns: terms, then fixed ones. */
		private final double[][] columns;
		private final double[][] slopes;
		/** The same columns, each made square to those before it and of length 1. */
		private final double[][] square;
		private final double[][] upper;
		private final double[] factors;
		private final double[] residuals;
		private final double[][] projected;
		private double sse;

		Work(Shape shape, double[][] fixed, double[] y, int terms) {
			this.shape = shape;
			this.y = y;
			this.terms = terms;
			int k = terms + fixed.length;
			columns = new double[k][y.length];
			for (int j = 0; j < fixed.length; j++) {
				Require.sameLength(fixed[j].length, y.length, "rows as values");
				columns[terms + j] = fixed[j];
			}
			slopes = new double[terms][y.length];
			square = new double[k][y.length];
			upper = new double[k][k];
			factors = new double[k];
			residuals = new double[y.length];
			projected = new double[terms][y.length];
		}

		/** False when the columns depend on each other there, or leave the numbers. */
		boolean at(double[] parameters) {
			for (int j = 0; j < terms; j++) {
				shape.at(parameters[j], columns[j], slopes[j]);
			}
			for (int j = 0; j < columns.length; j++) {
				if (!orthogonal(j)) {
					return false;
				}
			}
			System.arraycopy(y, 0, residuals, 0, y.length);
			double[] along = new double[columns.length];
			for (int j = 0; j < columns.length; j++) {
				along[j] = takeOff(residuals, square[j]);
			}
			for (int j = 0; j < columns.length; j++) {
				along[j] += takeOff(residuals, square[j]); // what rounding left
			}
			for (int j = columns.length - 1; j >= 0; j--) {
				double rest = along[j];
				for (int l = j + 1; l < columns.length; l++) {
					rest -= upper[j][l] * factors[l];
				}
				factors[j] = rest / upper[j][j];
			}
			sse = dot(residuals, residuals);
			return Double.isFinite(sse);
		}

		private boolean orthogonal(int j) {
			double[] own = square[j];
			System.arraycopy(columns[j], 0, own, 0, own.length);
			double before = Math.sqrt(dot(own, own));
			for (int l = 0; l < j; l++) {
				upper[l][j] = takeOff(own, square[l]);
			}
			for (int l = 0; l < j; l++) {
				upper[l][j] += takeOff(own, square[l]);
			}
			double left = Math.sqrt(dot(own, own));
			if (!(left > DEPENDENT * before) || Double.isInfinite(left)) {
				return false;
			}
			upper[j][j] = left;
			for (int i = 0; i < own.length; i++) {
				own[i] /= left;
			}
			return true;
		}

		/** The damped step that lessens the residuals most. */
		double[] step(double damping) {
			double[][] normal = new double[terms][terms];
			double[] right = new double[terms];
			for (int j = 0; j < terms; j++) {
				double[] p = projected[j];
				for (int i = 0; i < p.length; i++) {
					p[i] = factors[j] * slopes[j][i];
				}
				for (double[] s : square) {
					takeOff(p, s);
				}
				right[j] = dot(p, residuals);
				for (int l = 0; l <= j; l++) {
					normal[j][l] = dot(p, projected[l]);
					normal[l][j] = normal[j][l];
				}
			}
			for (int j = 0; j < terms; j++) {
				normal[j][j] = normal[j][j] * (1 + damping) + Double.MIN_NORMAL;
			}
			return solve(normal, right);
		}

		SeparableFit result(double[] parameters) {
			double[][] jacobian = new double[y.length][columns.length + terms];
			for (int i = 0; i < y.length; i++) {
				for (int j = 0; j < columns.length; j++) {
					jacobian[i][j] = columns[j][i];
				}
				for (int j = 0; j < terms; j++) {
					jacobian[i][columns.length + j] = factors[j] * slopes[j][i];
				}
			}
			return new SeparableFit(factors.clone(), parameters.clone(), residuals.clone(), sse, jacobian);
		}

		private static double takeOff(double[] from, double[] direction) {
			double along = dot(from, direction);
			for (int i = 0; i < from.length; i++) {
				from[i] -= along * direction[i];
			}
			return along;
		}

		private static double dot(double[] a, double[] b) {
			double sum = 0;
			for (int i = 0; i < a.length; i++) {
				sum += a[i] * b[i];
			}
			return sum;
		}

		/** Elimination without exchange: the matrix is positive on its diagonal and damped. */
		private static double[] solve(double[][] a, double[] b) {
			int n = b.length;
			for (int c = 0; c < n; c++) {
				for (int r = c + 1; r < n; r++) {
					double share = a[r][c] / a[c][c];
					for (int l = c; l < n; l++) {
						a[r][l] -= share * a[c][l];
					}
					b[r] -= share * b[c];
				}
			}
			for (int r = n - 1; r >= 0; r--) {
				for (int l = r + 1; l < n; l++) {
					b[r] -= a[r][l] * b[l];
				}
				b[r] /= a[r][r];
			}
			return b;
		}
	}
}
