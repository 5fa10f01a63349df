package org.flexwright.core;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

import org.flexwright.quantity.QuantityFormat;

/** Numbers inside sentences. */
public final class Rounded {
    private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);

    private Rounded() {
    }

    /** A finite number to three significant digits with its unit, decimal point always: {@code 0.33 ml}, {@code 1230 s}. */
    public static String text(double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("Only finite numbers are printed, not " + value + ".");
        }
        return (QuantityFormat.plain(BigDecimal.valueOf(value).round(THREE_DIGITS).doubleValue()) + " " + unit).strip();
    }
}
