package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;

class LeastSquaresTest {

	@Test
	void fitsALine() {
		// sums by hand: mean x 3, mean y 4, Sxx 10, Sxy 6, residuals of y = 2.2 + 0.6 x: -.8 .6 1 -.6 -.2, squares 2.4
		Line line = LeastSquares.line(new double[] { 1, 2, 3, 4, 5 }, new double[] { 2, 4, 5, 4, 5 }).orElseThrow();
		assertEquals(0.6, line.slope(), 1e-12);
		assertEquals(2.2, line.intercept(), 1e-12);
		assertEquals(Math.sqrt(0.8), line.residualSd().orElseThrow(), 1e-12);
		assertEquals(Math.sqrt(0.08), line.slopeError().orElseThrow(), 1e-12);
		assertEquals(Math.sqrt(0.8 * (0.2 + 0.9)), line.interceptError().orElseThrow(), 1e-12);
		assertEquals(4.0, line.at(3), 1e-12);
		assertEquals(StudentT.quantile(0.975, 3) * Math.sqrt(0.8 / 5), line.interval(3, 0.95).orElseThrow().halfWidth(), 1e-12);
	}

	@Test
	void twoPointsHaveNoErrors() {
		Line line = LeastSquares.line(new double[] { 0, 2 }, new double[] { 1, 5 }).orElseThrow();
		assertEquals(2, line.slope());
		assertEquals(1, line.intercept());
		assertTrue(line.residualSd().isEmpty() && line.slopeError().isEmpty() && line.interceptError().isEmpty() && line.interval(1, 0.95).isEmpty());
	}

	@Test
	void theGeneralFitAgreesWithTheLine() {
		long seed = 17;
		Random random = new Random(seed);
		for (int run = 0; run < 100; run++) {
			int n = 3 + random.nextInt(10);
			double[] x = random.doubles(n, -5, 50).toArray();
			double[] y = random.doubles(n, -5, 5).toArray();
			double[][] design = new double[n][];
			for (int i = 0; i < n; i++) {
				design[i] = new double[] { 1, x[i] };
			}
			Line line = LeastSquares.line(x, y).orElseThrow();
			LinearFit fit = LeastSquares.linear(design, y).orElseThrow();
			assertEquals(line.intercept(), fit.coefficient(0), 1e-9, "seed " + seed);
			assertEquals(line.slope(), fit.coefficient(1), 1e-10, "seed " + seed);
			assertEquals(line.interceptError().orElseThrow(), fit.standardErrors().get(0), 1e-9, "seed " + seed);
			assertEquals(line.slopeError().orElseThrow(), fit.standardErrors().get(1), 1e-9, "seed " + seed);
			assertEquals(line.residualSd().orElseThrow(), fit.residualSd().orElseThrow(), 1e-9, "seed " + seed);
		}
	}

	@Test
	void aPolynomialIsFoundAgain() {
		double[][] design = new double[12][];
		double[] y = new double[12];
		for (int i = 0; i < 12; i++) {
			double x = 1000 + i; // badly scaled on purpose
			design[i] = new double[] { 1, x, x * x };
			y[i] = 3 - 2 * x + 0.5 * x * x;
		}
		LinearFit fit = LeastSquares.linear(design, y).orElseThrow();
		assertEquals(0.5, fit.coefficient(2), 1e-7);
		assertEquals(-2, fit.coefficient(1), 1e-4);
		assertEquals(1, fit.r2().orElseThrow(), 1e-12);
		assertEquals(0, fit.rms(), 1e-6);
		assertEquals(9, fit.df());
	}

	@Test
	void findsTheParametersOfACurve() {
		double[] t = { 0, 1, 2, 4, 8, 16 };
		double[] found = LeastSquares.nonlinear(p -> {
			double[] r = new double[t.length];
			for (int i = 0; i < t.length; i++) {
				r[i] = p[0] * Math.exp(-t[i] / p[1]) - 60 * Math.exp(-t[i] / 5);
			}
			return r;
		}, new double[] { 40, 3 }).orElseThrow();
		assertEquals(60, found[0], 1e-6);
		assertEquals(5, found[1], 1e-6);
	}

	@Test
	void whatIsNotDeterminedIsNotAnswered() {
		double[] y = { 1, 2, 3 };
		assertTrue(LeastSquares.line(new double[] { 1 }, new double[] { 1 }).isEmpty());
		assertTrue(LeastSquares.line(new double[] { 2, 2, 2 }, y).isEmpty());
		assertTrue(LeastSquares.linear(new double[][] { { 1, 2 }, { 2, 4 }, { 3, 6 } }, y).isEmpty(), "dependent columns");
		assertTrue(LeastSquares.linear(new double[][] { { 1, 0 }, { 2, 0 }, { 3, 0 } }, y).isEmpty(), "a column of zeros");
		assertTrue(LeastSquares.linear(new double[][] { { 1, 2 } }, new double[] { 1 }).isEmpty(), "fewer rows than columns");
		assertTrue(LeastSquares.nonlinear(p -> new double[] { Double.NaN, p[0] }, new double[] { 1 }).isEmpty());
		LinearFit exact = LeastSquares.linear(new double[][] { { 1, 0 }, { 0, 2 } }, new double[] { 3, 4 }).orElseThrow();
		assertTrue(exact.standardErrors().isEmpty() && exact.residualSd().isEmpty());
		assertEquals(2, exact.coefficient(1), 1e-12);
	}

	@Test
	void refusesWhatCannotBe() {
		assertThrows(IllegalArgumentException.class, () -> LeastSquares.line(new double[] { 1, 2 }, new double[] { 1 }));
		assertThrows(IllegalArgumentException.class, () -> LeastSquares.line(new double[] { 1, Double.NaN }, new double[] { 1, 2 }));
		assertThrows(IllegalArgumentException.class, () -> LeastSquares.linear(new double[][] { { 1, 2 }, { 1 } }, new double[] { 1, 2 }));
		assertThrows(IllegalArgumentException.class, () -> LeastSquares.nonlinear(p -> new double[] { p[0] }, new double[] { 1, 2 }));
	}
}
