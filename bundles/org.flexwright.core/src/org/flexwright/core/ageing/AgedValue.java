package org.flexwright.core.ageing;

import java.time.Instant;

import org.flexwright.model.Instrument;
import org.flexwright.model.Session;

/**
 * What one piece read at one age. Numbers are in the property's canonical unit; of a yes/no property the share of yes in per cent.
 *
 * @param days       age in days
 * @param at         when it was read; null when that is not noted
 * @param readings   how many readings count
 * @param low        lower bound of their median; equal to {@code high} unless readings are bounds
 * @param high       upper bound of their median; may be infinite
 * @param half       half width of the median's band at about 95 %, from the scatter of readings on one piece, the step of
 *                   the gauge, and what came with a reading; null when nothing is known of it
 * @param session    the session, or null
 * @param instrument the gauge, or null
 */
public record AgedValue(double days, Instant at, int readings, double low, double high, Double half, Session session, Instrument instrument) {

    /** True when there is a number and not only a bound. */
    public boolean known() {
        return low == high;
    }
}
