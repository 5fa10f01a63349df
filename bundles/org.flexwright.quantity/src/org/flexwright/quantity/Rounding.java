package org.flexwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Rounding to significant digits. */
final class Rounding {
	private static final MathContext FIFTEEN = new MathContext(15, RoundingMode.HALF_EVEN);

	private Rounding() {
	}

	/**
	 * Drops what the binary representation added in a conversion, so that 212 degF is 100 degC and not 100.00000000000001.
	 * Fifteen digits are what every double keeps of a decimal number.
	 */
	static double digits15(double value) {
		return Double.isFinite(value) ? new BigDecimal(value).round(FIFTEEN).doubleValue() : value;
	}

	/** Rounds half up to the given number of significant digits. */
	static BigDecimal significant(double value, int digits) {
		return BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
	}

	/** Place of the first significant digit: 2 for 123, -3 for 0.0012. The number must not be zero. */
	static int exponent(BigDecimal value) {
		return value.precision() - value.scale() - 1;
	}
}
