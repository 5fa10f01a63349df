package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.junit.jupiter.api.Test;

/** Certified sets of nonlinear regression, NIST Statistical Reference Datasets (seen in several kept copies, which agree). */
class SeparableFitTest {
	/** The sum of squares is 1e-9 of the squares of the values: rounding takes digits of what is left. */
	private static final double LANCZOS = 2e-7;
	/** Nine of the eleven certified digits: the certified residuals carry no more. */
	private static final double DIGITS = 1e-8;

	/** NIST StRD Lanczos3, three exponentials, from its first start: values, standard deviations, residual sum of squares. */
	@Test
	void threeExponentialsOfNist() {
		double[] y = { 2.5134, 2.0443, 1.6684, 1.3664, 1.1232, 0.9269, 0.7679, 0.6389, 0.5338, 0.4479, 0.3776, 0.3197, 0.2720, 0.2325, 0.1997, 0.1723, 0.1493, 0.1301, 0.1138, 0.1000,
				0.0883, 0.0783, 0.0698, 0.0624 };
		double[] x = new double[y.length];
		Arrays.setAll(x, i -> 0.05 * i);
		for (double[] start : new double[][] { { 0.3, 5.5, 7.6 }, { 0.7, 4.2, 6.3 } }) {
			SeparableFit fit = SeparableFit.from(falling(x), new double[0][], y, start, 0, 100).orElseThrow();
			double[] values = { 8.6816414977E-02, 8.4400777463E-01, 1.5825685901E+00, 9.5498101505E-01, 2.9515951832E+00, 4.9863565084E+00 };
			double[] deviations = { 1.7197908859E-02, 4.1488663282E-02, 5.8371576281E-02, 9.7041624475E-02, 1.0766312506E-01, 3.4436403035E-02 };
			compare(fit, values, deviations, 1.6117193594E-08, 18, LANCZOS);
		}
	}

	/** NIST StRD Misra1a, y = b1 (1 - exp(-b2 x)), from both starts. */
	@Test
	void oneExponentialOfNist() {
		double[] x = { 77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0 };
		double[] y = { 10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78 };
		SeparableFit.Shape rising = (rate, column, slope) -> {
			for (int i = 0; i < x.length; i++) {
				column[i] = -Math.expm1(-rate * x[i]);
				slope[i] = x[i] * Math.exp(-rate * x[i]);
			}
		};
		for (double start : new double[] { 0.0001, 0.0005 }) {
			SeparableFit fit = SeparableFit.from(rising, new double[0][], y, new double[] { start }, 0, 1).orElseThrow();
			compare(fit, new double[] { 2.3894212918E+02, 5.5015643181E-04 }, new double[] { 2.7070075241E+00, 7.2668688436E-06 }, 1.2455138894E-01, 12, DIGITS);
		}
	}

	@Test
	void aFixedColumnIsFoundAgain() {
		double[] x = { 0, 1, 2, 3, 5, 8, 13, 21, 34 };
		double[] ones = new double[x.length];
		Arrays.fill(ones, 1);
		double[] y = Arrays.stream(x).map(t -> 2 + 0.5 * Math.exp(-0.3 * t)).toArray();
		SeparableFit fit = SeparableFit.from(falling(x), new double[][] { ones }, y, new double[] { 1 }, 0, 100).orElseThrow();
		assertEquals(0.5, fit.factors()[0], 1e-10);
		assertEquals(2, fit.factors()[1], 1e-10);
		assertEquals(0.3, fit.parameters()[0], 1e-9);
	}

	@Test
	void whatIsNotDeterminedIsNotAnswered() {
		double[] x = { 0, 1, 2, 3, 4, 5, 6, 7 };
		double[] one = Arrays.stream(x).map(t -> Math.exp(-t)).toArray();
		assertTrue(SeparableFit.from(falling(x), new double[0][], one, new double[] { 2, 2 }, 0, 10).isEmpty(), "two terms that are the same");
		assertTrue(SeparableFit.from(falling(x), new double[0][], one, new double[] { 5 }, 3, 10).isEmpty(), "the least lies outside the bounds");
		assertThrows(IllegalArgumentException.class, () -> SeparableFit.from(falling(x), new double[0][], new double[] { 1, 2, 3 }, new double[] { 1, 2 }, 0, 10));
	}

	private static SeparableFit.Shape falling(double[] x) {
		return (rate, column, slope) -> {
			for (int i = 0; i < column.length; i++) {
				column[i] = Math.exp(-rate * x[i]);
				slope[i] = -x[i] * column[i];
			}
		};
	}

	private static void compare(SeparableFit fit, double[] values, double[] deviations, double sse, int df, double digits) {
		int terms = fit.factors().length;
		Covariance covariance = Covariance.of(fit.jacobian(), fit.sse() / df).orElseThrow();
		Integer[] order = new Integer[terms];
		Arrays.setAll(order, i -> i);
		Arrays.sort(order, (a, b) -> Double.compare(fit.parameters()[a], fit.parameters()[b]));
		for (int i = 0; i < terms; i++) {
			assertEquals(values[i], fit.factors()[order[i]], digits * Math.abs(values[i]), "factor " + i);
			assertEquals(values[terms + i], fit.parameters()[order[i]], digits * Math.abs(values[terms + i]), "parameter " + i);
			assertEquals(deviations[i], covariance.error(order[i]), 10 * digits * deviations[i], "deviation of factor " + i);
			assertEquals(deviations[terms + i], covariance.error(terms + order[i]), 10 * digits * deviations[terms + i], "deviation of parameter " + i);
		}
		assertEquals(sse, fit.sse(), Math.max(digits, DIGITS) * sse, "sum of squares");
	}
}
