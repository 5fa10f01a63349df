package org.flexwright.core.calc;

import java.util.Objects;

import org.flexwright.core.field.FieldDescriptor;

/**
 * One input as it went in.
 *
 * @param field     what it is
 * @param value     the value as {@link org.flexwright.core.field.FieldType} says; null when left empty or not understood
 * @param typed     what was typed, or the default
 * @param understood the value read back with its unit
 * @param byDefault true when nothing was typed and the default stands
 */
public record ResultInput(FieldDescriptor field, Object value, String typed, String understood, boolean byDefault) {
    public ResultInput {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(typed, "typed");
        Objects.requireNonNull(understood, "understood");
    }
}
