package org.flexwright.core.process;

import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldUnits;
import org.flexwright.quantity.QuantityException;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;
import org.flexwright.quantity.Unit;

/**
 * An own limit for the difference of actual and planned: per cent of the planned value, or an amount.
 *
 * @param percent true when {@code amount} is per cent of the planned value
 * @param amount  per cent, or an amount in the field's unit; positive
 */
record OwnLimit(boolean percent, double amount) {

    /** The limit of a field, or null when it has none. Throws IllegalArgumentException for a limit that cannot be read: a defect of the plugin. */
    static OwnLimit of(FieldDescriptor field) {
        String text = field.limit().strip();
        if (text.isEmpty()) {
            return null;
        }
        try {
            if (text.endsWith("%") && field.kind() != QuantityKind.HUMIDITY) {
                return new OwnLimit(true, QuantityParser.parse(text, QuantityKind.FRACTION).canonical());
            }
            return new OwnLimit(false, amount(text, field));
        } catch (QuantityException e) {
            throw new IllegalArgumentException("Field " + field.name() + " has the limit " + text + ": " + e.getMessage(), e);
        }
    }

    /** A limit of a temperature is a difference of temperatures. */
    private static double amount(String text, FieldDescriptor field) {
        Unit unit = FieldUnits.unit(field.kind(), field.unit());
        if (field.kind() == QuantityKind.TEMPERATURE) {
            return QuantityParser.parse(text, QuantityKind.TEMPERATURE_DIFFERENCE, QuantityKind.TEMPERATURE_DIFFERENCE.unit()).canonical() / unit.factor();
        }
        return QuantityParser.parse(text, field.kind(), unit).in(unit).value();
    }

    /** True when the two differ by more than the limit; a difference of rounding only does not count. */
    boolean exceeded(double planned, double actual) {
        double allowed = percent ? amount / 100 * Math.abs(planned) : amount;
        return Math.abs(actual - planned) > allowed * (1 + 1e-9);
    }
}
