package org.flexwright.core.property;

import java.util.Objects;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;

/**
 * What a measured value would be about as another property: a guide, told only when asked for, never kept as a reading and never averaged
 * with one.
 *
 * @param property what it is about the same as
 * @param value    in that property's canonical unit, with its band and source
 * @param note     one sentence on what it may be used for
 */
public record Approximation(PropertyDef property, Estimate value, Message note) {
    public Approximation {
        Objects.requireNonNull(property, "property");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(note, "note");
    }

    /** {@code ≈ 86 ± 5 Shore 00}. */
    public String words() {
        return "≈ " + FieldText.band(value.low(), value.likely(), value.high(), property.kind(), "");
    }
}
