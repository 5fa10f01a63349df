package org.flexwright.testsupport;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A number as a sheet prints it, with the precision its last digit shows.
 *
 * @param value    the number
 * @param halfUnit half a unit of the last printed digit: {@code 0.0005} for {@code 0.550}
 */
public record PrintedNumber(double value, double halfUnit) {

	/** Reads {@code 0.550}, {@code .970}, {@code -1.85411e-3}; empty when the text is not one plain number. */
	public static Optional<PrintedNumber> read(String text) {
		try {
			BigDecimal number = new BigDecimal(text.strip());
			return Optional.of(new PrintedNumber(number.doubleValue(), number.ulp().doubleValue() / 2));
		} catch (NumberFormatException notANumber) {
			return Optional.empty();
		}
	}

	/**
	 * Whether {@code got} rounds to the printed digits. A millionth of the half unit and four ulps are allowed on top: a
	 * figure that sits exactly on the half unit (2.45 printed as 2.5), or one printed with all digits of a double, cannot
	 * be told closer in binary.
	 */
	public boolean agreesWith(double got) {
		return Math.abs(got - value) <= halfUnit * (1 + 1e-6) + 4 * Math.ulp(value);
	}
}
