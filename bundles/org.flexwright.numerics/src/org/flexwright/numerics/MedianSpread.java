package org.flexwright.numerics;

/**
 * How much more the median of a few normal readings scatters than their mean: the standard deviation of the median is this factor times
 * s / sqrt(n). Derived from the distribution of the middle values of n normal ones; 1 for one and two readings, sqrt(pi / 2) for many.
 */
public final class MedianSpread {
	/** Ten standard deviations of the median: further out there is nothing, and the rule's points lie dense enough. */
	private static final double REACH = 12.5;
	private static final int MANY = 60;

	private MedianSpread() {
	}

	/**
	 * The factor; for more than 60 readings that of infinitely many, which is less than 1 % too large.
	 *
	 * @param n how many readings, 1 or more
	 */
	public static double factor(int n) {
		Require.atLeast(1, n, "number of readings");
		if (n <= 2) {
			return 1;
		}
		if (n > MANY) {
			return Math.sqrt(Math.PI / 2);
		}
		return Math.sqrt(n * (n % 2 == 1 ? odd(n) : even(n)));
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
