package org.flexwright.core.balance;

import java.util.Objects;

/**
 * How a balance is reached and what it writes. Kept by whoever uses it.
 *
 * @param source id of the {@link BalanceSource}
 * @param place  name of the port, or path of the file
 * @param baud   signs a second over a serial port; 9600 is usual
 * @param unit   symbol of the unit that is expected, of kind mass
 * @param bare   true when it writes numbers without a unit
 */
public record BalanceSettings(String source, String place, int baud, String unit, boolean bare) {
    /** Usual speed; common practice, no source. */
    public static final int USUAL_BAUD = 9600;

    public BalanceSettings {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(unit, "unit");
        if (baud < 50 || baud > 4_000_000) {
            throw new IllegalArgumentException("A serial port runs at 50 to 4000000 baud, not at " + baud + ".");
        }
        BalanceLine.parse("0 g", unit, false);
    }

    /** Usual speed, grams, with a unit. */
    public static BalanceSettings of(String source, String place) {
        return new BalanceSettings(source, place, USUAL_BAUD, "g", false);
    }
}
