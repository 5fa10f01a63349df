package org.flexwright.core.field;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

import org.flexwright.quantity.QuantityFormat;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.QuantityParser;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;

/** Numbers of fields and their units. */
public final class FieldUnits {
    /** Digits kept when a number is printed to be read again: more than any bench tool gives, fewer than binary noise. */
    private static final MathContext PRINTED = new MathContext(12);

    private FieldUnits() {
    }

    /** The unit of that symbol; an empty symbol is the kind's own unit. Throws IllegalArgumentException when the kind has no such unit. */
    public static Unit unit(QuantityKind kind, String symbol) {
        return symbol.isEmpty() ? kind.unit()
                : Units.find(kind, symbol).orElseThrow(() -> new IllegalArgumentException(symbol + " is no unit of " + kind.humanName() + "."));
    }

    /** The unit's symbol as fields keep it. Throws IllegalArgumentException naming the field when the kind has no such unit. */
    static String checked(QuantityKind kind, String symbol, String where) {
        try {
            return unit(kind, symbol).symbol();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(where + ": " + e.getMessage(), e);
        }
    }

    /** The kind a plain number with a unit must have: the only one with that unit. */
    static QuantityKind kindOf(QuantityKind declared, String symbol) {
        if (declared != QuantityKind.NUMBER || symbol.isEmpty()) {
            return declared;
        }
        List<QuantityKind> kinds = Units.kindsWith(symbol);
        return kinds.size() == 1 ? kinds.get(0) : declared;
    }

    /** Reads a number that may carry any unit of the kind; without one it is meant in {@code symbol}. The result is in {@code symbol}. */
    static double read(String text, QuantityKind kind, String symbol) {
        Unit unit = unit(kind, symbol);
        return QuantityParser.parse(text, kind, unit).in(unit).value();
    }

    /** The number with its unit, all its digits but binary noise. */
    static String print(double value, QuantityKind kind, String symbol) {
        double rounded = new BigDecimal(value).round(PRINTED).doubleValue();
        return (QuantityFormat.plain(rounded) + " " + unit(kind, symbol).display()).strip();
    }
}
