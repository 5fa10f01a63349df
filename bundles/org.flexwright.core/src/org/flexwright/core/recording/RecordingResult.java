package org.flexwright.core.recording;

import java.util.Objects;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.model.Censoring;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/**
 * A figure taken from a recording.
 *
 * @param id        stable id within the recording kind
 * @param title     words for people
 * @param property  id of the property it is a reading of, or null when it is none
 * @param value     in the unit
 * @param halfWidth half width of its band at about 95 %, in the unit; null when nothing is known of it
 * @param unit      symbol of the unit; empty for plain numbers
 * @param source    what it rests on
 * @param censoring whether the value is a bound only: no snap up to the force reached
 */
public record RecordingResult(String id, String title, String property, double value, Double halfWidth, String unit, Source source, Censoring censoring) {
    /** Digits of a figure of which nothing says how well it is known. */
    private static final int UNSURE = 3;

    public RecordingResult {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(censoring, "censoring");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A result is a number.");
        }
    }

    /** A value that is no mere bound. */
    public RecordingResult(String id, String title, String property, double value, Double halfWidth, String unit, Source source) {
        this(id, title, property, value, halfWidth, unit, source, Censoring.NONE);
    }

    /** Value, band and unit, rounded to the band: {@code 0.79 ± 0.02 N}, or to three digits without one; a bound as {@code > 5 N}. */
    public String words() {
        String bound = switch (censoring) {
            case NONE -> "";
            case MORE_THAN -> "> ";
            case LESS_THAN -> "< ";
        };
        String number = halfWidth == null || !(halfWidth > 0) ? Figures.of(value, "", UNSURE) : FieldText.rounded(value, halfWidth) + " ± " + FieldText.rounded(halfWidth, halfWidth);
        return (bound + number + " " + Units.kindsWith(unit).stream().findFirst().flatMap(kind -> Units.find(kind, unit)).map(Unit::display).orElse(unit)).strip();
    }
}
