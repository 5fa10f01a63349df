package org.flexwright.testing.hardness;

import org.flexwright.testing.GaugeScale;

/**
 * A hardness in print. Type, value and time are kept apart because the standards print them in different orders.
 *
 * @param scale        the gauge's scale
 * @param value        the reading, rounded for print by the caller
 * @param dwellSeconds seconds from contact to reading
 */
public record HardnessNotation(GaugeScale scale, String value, String dwellSeconds) {

    /** {@code A/15:45}: type, seconds, value. */
    public String iso() {
        return scale.symbol() + "/" + dwellSeconds + ":" + value;
    }

    /** {@code A/45/15}: type, value, seconds (order from memory, unconfirmed). */
    public String astm() {
        return scale.symbol() + "/" + value + "/" + dwellSeconds;
    }
}
