package org.flexwright.numerics;

import java.util.function.DoubleUnaryOperator;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.exception.MathIllegalStateException;

/** Integrals in one variable. */
public final class Quadrature {
	private static final int POINTS = 5;
	private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(80);
	private static final int MOST_EVALUATIONS = 2_000_000;
	private static final double LEAST_ABSOLUTE = 1e-300;

	private Quadrature() {
	}

	/**
	 * The integral of f from a to b, refined until two passes agree.
	 *
	 * @param relative the relative agreement asked for, above 0
	 * @throws ConvergenceException when it does not settle
	 */
	public static double integrate(DoubleUnaryOperator f, double a, double b, double relative) {
		Require.finite(a, "lower end");
		Require.finite(b, "upper end");
		Require.positive(relative, "accuracy");
		if (a == b) {
			return 0;
		}
		if (a > b) {
			return -integrate(f, b, a, relative);
		}
		try {
			double value = new IterativeLegendreGaussIntegrator(POINTS, relative, LEAST_ABSOLUTE, 1, 40).integrate(MOST_EVALUATIONS, f::applyAsDouble, a, b);
			return finite(value, a, b);
		} catch (MathIllegalStateException e) {
			throw new ConvergenceException("The integral from " + a + " to " + b + " does not settle to a relative " + relative + ".", e);
		}
	}

	/** The integral by one Gauss-Legendre rule of 80 points: exact enough for smooth functions only. */
	static double gauss(DoubleUnaryOperator f, double a, double b) {
		double half = (b - a) / 2;
		double middle = (a + b) / 2;
		double sum = 0;
		for (int i = 0; i < GAUSS.getNumberOfPoints(); i++) {
			sum += GAUSS.getWeight(i) * f.applyAsDouble(middle + half * GAUSS.getPoint(i));
		}
		return sum * half;
	}

	/**
	 * The area under a measured curve by trapezoids; negative where x runs backwards.
	 *
	 * @param x the places, at least two
	 * @param y the values, as many
	 */
	public static double trapezoid(double[] x, double[] y) {
		Require.sameLength(x.length, y.length, "places as values");
		Require.atLeast(2, x.length, "number of points");
		Require.finite(x, "places");
		Require.finite(y, "values");
		double sum = 0;
		for (int i = 1; i < x.length; i++) {
			sum += (x[i] - x[i - 1]) * (y[i] + y[i - 1]) / 2;
		}
		return sum;
	}

	private static double finite(double value, double a, double b) {
		if (!Double.isFinite(value)) {
			throw new ConvergenceException("The integral from " + a + " to " + b + " is not finite.", null);
		}
		return value;
	}
}
