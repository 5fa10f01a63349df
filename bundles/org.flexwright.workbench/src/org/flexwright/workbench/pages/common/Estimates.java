package org.flexwright.workbench.pages.common;

import org.flexwright.core.Estimate;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FieldUnits;
import org.flexwright.core.process.ProcessKind.EstimateLine;
import org.flexwright.quantity.Units;

/** Estimates of a route in words. */
public final class Estimates {

    private static final String MONEY = "EUR";

    private Estimates() {
    }

    /** The band with its unit; a unit nobody knows is printed as it stands. */
    public static String band(EstimateLine line) {
        Estimate e = line.value();
        if (line.unit().equals(MONEY) && e.high() == e.low()) {
            return FieldText.fixed(e.likely(), 2) + " " + MONEY;
        }
        var kinds = Units.kindsWith(line.unit());
        if (!kinds.isEmpty()) {
            return FieldText.band(e.low(), e.likely(), e.high(), kinds.getFirst(), FieldUnits.unit(kinds.getFirst(), line.unit()).symbol());
        }
        return (e.high() > e.low() ? FieldText.range(e.low(), e.high()) : FieldText.digits(e.likely())) + " " + line.unit();
    }

    /** Label and band: {@code Time with hands on it 80 (40 … 180) min}. */
    public static String words(EstimateLine line) {
        return line.label() + " " + band(line);
    }
}
