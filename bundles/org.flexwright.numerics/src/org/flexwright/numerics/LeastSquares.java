package org.flexwright.numerics;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** Fits by least squares, unweighted unless the caller scales rows. */
public final class LeastSquares {
	private static final double SINGULAR = 1e-12;
	private static final int MOST_EVALUATIONS = 5000;

	private LeastSquares() {
	}

	/**
	 * The straight line y = intercept + slope x.
	 *
	 * @return empty for fewer than two points or when all x are the same
	 */
	public static Optional<Line> line(double[] x, double[] y) {
		Require.sameLength(x.length, y.length, "places as values");
		Require.finite(x, "places");
		Require.finite(y, "values");
		if (x.length < 2 || Descriptive.range(x) == 0) {
			return Optional.empty();
		}
		int n = x.length;
		double mx = Descriptive.mean(x);
		double my = Descriptive.mean(y);
		double sxx = 0;
		double sxy = 0;
		for (int i = 0; i < n; i++) {
			sxx += (x[i] - mx) * (x[i] - mx);
			sxy += (x[i] - mx) * (y[i] - my);
		}
		double slope = sxy / sxx;
		double intercept = my - slope * mx;
		double sse = 0;
		for (int i = 0; i < n; i++) {
			double residual = y[i] - my - slope * (x[i] - mx);
			sse += residual * residual;
		}
		OptionalDouble residualSd = n == 2 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(sse / (n - 2)));
		return Optional.of(new Line(intercept, slope, n, mx, sxx, residualSd));
	}

	/**
	 * The coefficients c of y = X c by QR decomposition.
	 *
	 * @param design one row an observation, one column a coefficient; a constant term is a column of ones
	 * @return empty when there are fewer rows than columns, or the columns do not determine the coefficients
	 */
	public static Optional<LinearFit> linear(double[][] design, double[] y) {
		Require.sameLength(design.length, y.length, "rows as values");
		Require.finite(y, "values");
		if (design.length == 0 || design.length < design[0].length) {
			return Optional.empty();
		}
		double[] scale = Covariance.columnLengths(design);
		RealMatrix x = new Array2DRowRealMatrix(design.length, design[0].length);
		for (int i = 0; i < design.length; i++) {
			for (int j = 0; j < scale.length; j++) {
				x.setEntry(i, j, design[i][j] / scale[j]);
			}
		}
		QRDecomposition qr = new QRDecomposition(x, SINGULAR);
		if (!qr.getSolver().isNonSingular()) {
			return Optional.empty();
		}
		RealVector value = new ArrayRealVector(y);
		RealVector scaled = qr.getSolver().solve(value);
		scaled = scaled.add(qr.getSolver().solve(value.subtract(x.operate(scaled)))); // one refinement step
		RealMatrix inverseR = new QRDecomposition(qr.getR().getSubMatrix(0, scale.length - 1, 0, scale.length - 1), 0).getSolver().getInverse();
		double[] unscaledVariance = new double[scale.length];
		double[] coefficients = new double[scale.length];
		for (int j = 0; j < scale.length; j++) {
			unscaledVariance[j] = inverseR.getRowVector(j).dotProduct(inverseR.getRowVector(j)) / (scale[j] * scale[j]);
			coefficients[j] = scaled.getEntry(j) / scale[j];
		}
		return Optional.of(LinearFit.of(coefficients, unscaledVariance, value.subtract(x.operate(scaled)).toArray(), y));
	}

	/**
	 * Parameters that make the residuals small, for models that are not linear (Levenberg-Marquardt, numerical derivatives).
	 *
	 * @param residuals the residuals at given parameters, always as many
	 * @param start     where to begin
	 * @return the parameters; empty when the search does not settle. It finds a local least, so start near.
	 */
	public static Optional<double[]> nonlinear(Function<double[], double[]> residuals, double[] start) {
		Require.finite(start, "start values");
		int m = residuals.apply(start.clone()).length;
		Require.atLeast(start.length, m, "number of residuals");
		try {
			var problem = new LeastSquaresBuilder().start(start).target(new double[m]).model(p -> valueAndJacobian(residuals, p.toArray())).maxEvaluations(MOST_EVALUATIONS)
					.maxIterations(MOST_EVALUATIONS).build();
			double[] found = new LevenbergMarquardtOptimizer().optimize(problem).getPoint().toArray();
			for (double v : found) {
				if (!Double.isFinite(v)) {
					return Optional.empty();
				}
			}
			return Optional.of(found);
		} catch (MathRuntimeException notSettled) {
			return Optional.empty();
		}
	}

	private static Pair<RealVector, RealMatrix> valueAndJacobian(Function<double[], double[]> residuals, double[] p) {
		double[] value = residuals.apply(p.clone());
		RealMatrix jacobian = new Array2DRowRealMatrix(value.length, p.length);
		for (int j = 0; j < p.length; j++) {
			double step = Math.cbrt(Math.ulp(1.0)) * Math.max(Math.abs(p[j]), 1e-3);
			double[] up = p.clone();
			double[] down = p.clone();
			up[j] += step;
			down[j] -= step;
			double[] above = residuals.apply(up);
			double[] below = residuals.apply(down);
			for (int i = 0; i < value.length; i++) {
				jacobian.setEntry(i, j, (above[i] - below[i]) / (up[j] - down[j]));
			}
		}
		return new Pair<>(new ArrayRealVector(value, false), jacobian);
	}
}
