package org.flexwright.core.verdict;

import java.util.Arrays;
import java.util.OptionalDouble;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Instrument;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Units;

/** Steps, errors and spreads of a gauge in the unit of what is read with it. */
public final class GaugeAmounts {
    private static final int MOST_DIGITS = 6;

    private GaugeAmounts() {
    }

    /**
     * A difference in the gauge's unit as one in the property's canonical unit.
     *
     * @param amount in the gauge's unit, or null
     * @return 0 when unknown, or when the gauge's unit is of another kind
     */
    public static double canonical(Instrument gauge, Double amount, PropertyDef property) {
        if (amount == null) {
            return 0;
        }
        if (gauge.getUnit() == null || gauge.getUnit().isBlank() || property.kind() == QuantityKind.NUMBER) {
            return amount;
        }
        return Units.find(property.kind(), gauge.getUnit()).map(u -> amount * u.factor()).orElse(0.0);
    }

    /** A difference in the property's canonical unit as one in the gauge's unit; empty when the gauge's unit is of another kind. */
    public static OptionalDouble inUnitOf(Instrument gauge, double amount, PropertyDef property) {
        double one = canonical(gauge, 1.0, property);
        return one == 0 ? OptionalDouble.empty() : OptionalDouble.of(amount / one);
    }

    /** The largest of 1, 0.1, 0.01... of which all values are whole multiples; 0 when there is none down to a millionth. */
    public static double writtenStep(double[] values) {
        for (int digits = 0; digits <= MOST_DIGITS; digits++) {
            double scale = Math.pow(10, digits);
            if (Arrays.stream(values).allMatch(v -> Math.abs(v * scale - Math.rint(v * scale)) < 1e-6)) {
                return 1 / scale;
            }
        }
        return 0;
    }
}
