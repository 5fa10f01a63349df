package org.flexwright.numerics;

/** Checks of arguments, each with one sentence saying what is allowed. */
final class Require {
	private Require() {
	}

	static double finite(double value, String what) {
		if (!Double.isFinite(value)) {
			throw new IllegalArgumentException("The " + what + " must be a finite number, not " + value + ".");
		}
		return value;
	}

	static double[] finite(double[] values, String what) {
		for (int i = 0; i < values.length; i++) {
			if (!Double.isFinite(values[i])) {
				throw new IllegalArgumentException("Number " + (i + 1) + " of the " + what + " must be finite, not " + values[i] + ".");
			}
		}
		return values;
	}

	static double positive(double value, String what) {
		if (!(value > 0) || Double.isInfinite(value)) {
			throw new IllegalArgumentException("The " + what + " must be a finite number above 0, not " + value + ".");
		}
		return value;
	}

	static double notNegative(double value, String what) {
		if (!(value >= 0) || Double.isInfinite(value)) {
			throw new IllegalArgumentException("The " + what + " must be a finite number from 0 up, not " + value + ".");
		}
		return value;
	}

	/** Degrees of freedom may be infinite: the spread is known exactly. */
	static double degreesOfFreedom(double df) {
		if (!(df > 0)) {
			throw new IllegalArgumentException("The degrees of freedom must be above 0, not " + df + ".");
		}
		return df;
	}

	static double between0and1(double value, String what) {
		if (!(value > 0 && value < 1)) {
			throw new IllegalArgumentException("The " + what + " must lie between 0 and 1, not " + value + ".");
		}
		return value;
	}

	static int atLeast(int least, int value, String what) {
		if (value < least) {
			throw new IllegalArgumentException("The " + what + " must be " + least + " or more, not " + value + ".");
		}
		return value;
	}

	static void sameLength(int a, int b, String what) {
		if (a != b) {
			throw new IllegalArgumentException("There must be as many " + what + ", not " + a + " and " + b + ".");
		}
	}
}
