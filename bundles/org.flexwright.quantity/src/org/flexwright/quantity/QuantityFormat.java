package org.flexwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Prints numbers and quantities, always with a decimal point and without thousands marks, whatever the language of the
 * machine. What it prints, {@link QuantityParser} reads.
 */
public final class QuantityFormat {
	private static final int DIGITS = 6;
	private static final int LOWEST_PLAIN_EXPONENT = -5;
	private static final int HIGHEST_PLAIN_EXPONENT = 9;

	private QuantityFormat() {
	}

	/** All digits of the number, in plain notation unless it is very large or small; reads back as the same number. */
	public static String plain(double value) {
		requireFinite(value);
		return notation(BigDecimal.valueOf(value));
	}

	/** A canonical value in the given unit, to six significant digits at most: {@code 9.525 mm}, {@code 25 °C}, {@code 0.6}. */
	public static String format(double canonical, Unit unit) {
		requireFinite(canonical);
		return withUnit(sixDigits(unit.fromCanonical(canonical)), unit);
	}

	/** A quantity in its own unit; see {@link #format(double, Unit)}. */
	public static String format(Quantity quantity) {
		return format(quantity.canonical(), quantity.unit());
	}

	/**
	 * A canonical value with its uncertainty, both rounded to what the uncertainty tells: {@code 61 ± 2},
	 * {@code 1.234 ± 0.012 mm}. The uncertainty keeps two digits when it starts with 1, else one.
	 *
	 * @param uncertainty in canonical units, a difference, from 0 up; 0 prints the value alone
	 * @throws IllegalArgumentException when a number is not finite or the uncertainty negative
	 */
	public static String format(double value, double uncertainty, Unit unit) {
		requireFinite(value);
		requireFinite(uncertainty);
		if (uncertainty < 0) {
			throw new IllegalArgumentException("An uncertainty is 0 or more, not " + uncertainty + ".");
		}
		if (uncertainty == 0) {
			return format(value, unit);
		}
		BigDecimal two = Rounding.significant(uncertainty / unit.factor(), 2);
		boolean startsWithOne = two.unscaledValue().toString().startsWith("1");
		BigDecimal rounded = startsWithOne ? two : Rounding.significant(uncertainty / unit.factor(), 1);
		int scale = startsWithOne ? 1 - Rounding.exponent(rounded) : -Rounding.exponent(rounded);
		BigDecimal shown = BigDecimal.valueOf(unit.fromCanonical(value)).setScale(scale, RoundingMode.HALF_UP);
		return withUnit(shown.toPlainString() + " ± " + rounded.setScale(scale, RoundingMode.HALF_UP).toPlainString(), unit);
	}

	private static String sixDigits(double value) {
		if (value == 0) {
			return "0";
		}
		BigDecimal number = BigDecimal.valueOf(value);
		int digits = Math.max(DIGITS, Math.min(Rounding.exponent(number), HIGHEST_PLAIN_EXPONENT - 1) + 1);
		return notation(Rounding.significant(value, digits));
	}

	private static String notation(BigDecimal number) {
		if (number.signum() == 0) {
			return "0";
		}
		BigDecimal stripped = number.stripTrailingZeros();
		int exponent = Rounding.exponent(stripped);
		if (exponent >= LOWEST_PLAIN_EXPONENT && exponent < HIGHEST_PLAIN_EXPONENT) {
			return stripped.toPlainString();
		}
		return stripped.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
	}

	private static String withUnit(String number, Unit unit) {
		return (number + " " + unit.display()).strip();
	}

	private static void requireFinite(double value) {
		if (!Double.isFinite(value)) {
			throw new IllegalArgumentException("Only finite numbers are printed, not " + value + ".");
		}
	}
}
