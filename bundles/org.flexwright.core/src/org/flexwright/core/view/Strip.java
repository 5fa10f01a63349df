package org.flexwright.core.view;

import java.util.List;
import java.util.Objects;

/**
 * What the strip in a cell shows, on the scale all cells of its row share. Numbers are in the property's canonical unit, or per cent of
 * parts for yes/no properties.
 *
 * @param scale     the row's scale
 * @param bandLow   lower edge of the target band on the scale
 * @param bandHigh  upper edge of the target band on the scale
 * @param low       lower end of the interval, cut off at the scale; null when there is none
 * @param high      upper end of the interval, cut off at the scale; null when there is none
 * @param lowCut    true when the interval goes on below the scale
 * @param highCut   true when the interval goes on above the scale
 * @param mean      the mean, or null
 * @param dots      one for each part that was read
 * @param reference the reference part's value, or null
 */
public record Strip(Scale scale, double bandLow, double bandHigh, Double low, Double high, boolean lowCut, boolean highCut, Double mean,
        List<Dot> dots, Double reference) {
    public Strip {
        Objects.requireNonNull(scale, "scale");
        dots = List.copyOf(dots);
    }

    /**
     * A scale.
     *
     * @param low  left end
     * @param high right end, above {@code low}
     */
    public record Scale(double low, double high) {
        public Scale {
            if (!(low < high)) {
                throw new IllegalArgumentException("A scale needs low below high, got " + low + " and " + high + ".");
            }
        }

        /** Where a value lies, 0 at the left end and 1 at the right one, cut off at both. */
        public double at(double value) {
            return Math.min(1, Math.max(0, (value - low) / (high - low)));
        }
    }

    /** What a dot stands for. */
    public enum Mark {
        /** A value. */
        VALUE,
        /** The part's value is above. */
        MORE_THAN,
        /** The part's value is below. */
        LESS_THAN,
        /** The part failed: its value does not count. */
        FAILED
    }

    /**
     * One part.
     *
     * @param value where
     * @param part  its code
     * @param mark  what it stands for
     */
    public record Dot(double value, String part, Mark mark) {
    }
}
