package org.flexwright.core;

import java.util.Objects;

/**
 * A value that is not exact: a band with its likely value and its source.
 *
 * @param low    lower end, in the unit of the field that carries it
 * @param likely most likely value, {@code low <= likely <= high}
 * @param high   upper end
 * @param source what the band rests on
 */
public record Estimate(double low, double likely, double high, Source source) {

    public Estimate {
        Objects.requireNonNull(source, "source");
        if (!(low <= likely && likely <= high)) {
            throw new IllegalArgumentException("An estimate needs low <= likely <= high, got " + low + ", " + likely + ", " + high + ".");
        }
    }

    /** A value without a band of its own: plain algebra on exact inputs. */
    public static Estimate exact(double value, Source source) {
        return new Estimate(value, value, value, source);
    }

    /** A value with a symmetric band; {@code halfWidth} not negative. */
    public static Estimate plusMinus(double value, double halfWidth, Source source) {
        return new Estimate(value - halfWidth, value, value + halfWidth, source);
    }

    /** The same band in another unit; {@code factor} positive. */
    public Estimate times(double factor) {
        return new Estimate(low * factor, likely * factor, high * factor, source);
    }
}
