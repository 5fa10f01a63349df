package org.flexwright.core.calc;

import java.util.Objects;

import org.flexwright.core.Source;
import org.flexwright.core.field.FieldDescriptor;

/**
 * One result.
 *
 * @param field  what it is
 * @param value  the value itself: Double, Estimate, Integer, String, Boolean, an enum constant, a list or a list of records; null when
 *               the calculation left it out
 * @param low    lower end of its band in the unit, null when it is no number
 * @param likely likely value in the unit, null when it is no number
 * @param high   upper end of its band in the unit, null when it is no number
 * @param text   as shown, rounded to its band, with unit
 * @param unit   symbol of the unit
 * @param source what it rests on
 */
public record ResultValue(FieldDescriptor field, Object value, Double low, Double likely, Double high, String text, String unit, Source source) {
    public ResultValue {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
    }

    /** True when low and high differ. */
    public boolean hasBand() {
        return low != null && high > low;
    }
}
