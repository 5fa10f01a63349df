package org.flexwright.numerics;

import org.hipparchus.special.Erf;

/** The standard normal distribution. */
public final class Normal {
	private Normal() {
	}

	/** The chance of a value up to x. */
	public static double cumulative(double x) {
		return Erf.erfc(-x / Math.sqrt(2)) / 2;
	}

	/** The value below which a share p lies, 0 &lt; p &lt; 1. */
	public static double quantile(double p) {
		return Math.sqrt(2) * Erf.erfInv(2 * p - 1);
	}
}
