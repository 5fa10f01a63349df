package org.flexwright.core;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they stand in sentences: decimal point, four significant digits unless told, never an exponent. */
public final class Figures {

    private static final int DIGITS = 4;

    private Figures() {
    }

    /** {@code 22.88 g}; an empty unit leaves the number alone. Whole digits are never rounded away: 12345 stays 12345. */
    public static String of(double value, String unit) {
        return of(value, unit, DIGITS);
    }

    /** The same with another number of significant digits, at least 1. */
    public static String of(double value, String unit, int digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        if (rounded.scale() < 0) {
            rounded = BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP);
        }
        String number = plain(rounded);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** A share 0..1 as per cent: {@code 15 %}. */
    public static String percent(double share) {
        return of(100 * share, "%", 3);
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.scale() > 0 ? trimmed(number) : number.toPlainString();
    }

    /** Zeros behind the point say nothing when the value is a round one. */
    private static String trimmed(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
