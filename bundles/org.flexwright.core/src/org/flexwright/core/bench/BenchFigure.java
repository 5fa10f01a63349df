package org.flexwright.core.bench;

import java.util.Objects;

import org.flexwright.core.find.Severity;

/**
 * A number to be read from two metres away. Never alone: unit, band and origin go with it.
 *
 * @param name     stable name: {@code toAdd}, {@code target}, {@code weighed}, {@code deviation}
 * @param label    words beside it
 * @param number   the number as text, rounded to what is known of it
 * @param unit     its unit; empty for a plain number or words
 * @param band     its least and its most, in the unit: {@code 0.70 … 0.95}; empty when it has no band of its own
 * @param origin   where it comes from, in words
 * @param severity how much it matters; null when there is nothing to say
 * @param main     true for the one or two figures that stand largest
 */
public record BenchFigure(String name, String label, String number, String unit, String band, String origin, Severity severity, boolean main) {
    public BenchFigure {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(band, "band");
        Objects.requireNonNull(origin, "origin");
    }
}
