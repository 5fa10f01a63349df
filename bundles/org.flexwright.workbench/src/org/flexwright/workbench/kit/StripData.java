package org.flexwright.workbench.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.flexwright.workbench.kit.Palette.Ink;

/**
 * What a strip shows, all numbers in one unit. Nullable numbers are absent when null.
 *
 * @param from      left end of the scale
 * @param to        right end of the scale, above {@code from}
 * @param bandLow   lower limit of the target; null: open downwards
 * @param bandHigh  upper limit of the target; null: open upwards
 * @param low       lower end of the interval of the mean, or null
 * @param mean      the mean, or null
 * @param high      upper end of the interval of the mean, or null
 * @param parts     one value a part
 * @param reference value of the reference part, or null
 * @param ink       colour of interval and dots: the verdict's
 */
public record StripData(double from, double to, Double bandLow, Double bandHigh, Double low, Double mean, Double high, List<Double> parts,
        Double reference, Ink ink) {

    public StripData {
        if (!(from < to)) {
            throw new IllegalArgumentException("A strip's scale runs from a smaller to a larger number, got " + from + " to " + to + ".");
        }
        Objects.requireNonNull(ink, "ink");
        parts = List.copyOf(parts);
    }

    /** Place of a value along the strip, 0 at the left end, 1 at the right; values beyond the scale stand at its ends. */
    public double place(double value) {
        return Math.clamp((value - from) / (to - from), 0.0, 1.0);
    }

    /** True when there is a target. */
    public boolean banded() {
        return bandLow != null || bandHigh != null;
    }

    /**
     * The strip in words.
     *
     * @param number prints a number with its unit
     */
    public String words(java.util.function.DoubleFunction<String> number) {
        List<String> said = new ArrayList<>();
        if (banded()) {
            said.add("target " + (bandLow == null ? "at most " + number.apply(bandHigh)
                    : bandHigh == null ? "at least " + number.apply(bandLow) : number.apply(bandLow) + " to " + number.apply(bandHigh)));
        }
        if (mean != null) {
            said.add("mean " + number.apply(mean));
        }
        if (low != null && high != null) {
            said.add("interval " + number.apply(low) + " to " + number.apply(high));
        }
        if (!parts.isEmpty()) {
            said.add(parts.size() + (parts.size() == 1 ? " part: " : " parts: ") + String.join(", ", parts.stream().map(number::apply).toList()));
        }
        if (reference != null) {
            said.add("reference " + number.apply(reference));
        }
        return said.isEmpty() ? "nothing measured" : String.join("; ", said);
    }
}
