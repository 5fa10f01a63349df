package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The factors of the median, integrated from the distribution of the middle values of n normal ones. */
class MedianSpreadTest {
	/** Ten standard deviations of the median: further out there is nothing, and the rule's points lie dense enough. */
	private static final double REACH = 12.5;

	@Test
	void factorsAreTheIntegrals() {
		for (int n : new int[] { 3, 4, 5, 6, 10, 17, 30, 59, 60 }) {
			assertEquals(Math.sqrt(n * (n % 2 == 1 ? odd(n) : even(n))), MedianSpread.factor(n), 1e-6, n + " readings"); // the digits of the table
		}
	}

	private static double odd(int n) {
		int below = (n - 1) / 2;
		return Math.exp(logFactorial(n) - 2 * logFactorial(below)) * Quadrature.gauss(x -> x * x * density(x) * Math.pow(Normal.cumulative(x) * Normal.cumulative(-x), below),
				-reach(n), reach(n));
	}

	private static double even(int n) {
		int below = n / 2 - 1;
		return Math.exp(logFactorial(n) - 2 * logFactorial(below)) * Quadrature.gauss(low -> density(low) * Math.pow(Normal.cumulative(low), below) * Quadrature.gauss(high -> {
			double middle = (low + high) / 2;
			return middle * middle * density(high) * Math.pow(Normal.cumulative(-high), below);
		}, low, reach(n)), -reach(n), reach(n));
	}

	private static double reach(int n) {
		return REACH / Math.sqrt(n);
	}

	private static double density(double x) {
		return Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
	}

	private static double logFactorial(int n) {
		double sum = 0;
		for (int i = 2; i <= n; i++) {
			sum += Math.log(i);
		}
		return sum;
	}
}
