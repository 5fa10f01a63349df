package org.flexwright.cli;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.quantity.QuantityFormat;
import org.flexwright.quantity.QuantityParser;

/** Typed numbers of properties. */
final class Typed {
    private Typed() {
    }

    /** What was understood, in the unit that was typed. */
    static String understood(PropertyDef property, String text) {
        return QuantityFormat.format(QuantityParser.parse(text, property.kind(), property.kind().unit()));
    }

    /** The number in the property's own unit, which is taken when none is typed; null for null. */
    static Double number(PropertyDef property, String text) {
        if (text == null) {
            return null;
        }
        if (property.yesNo()) {
            throw new UsageException(property.title() + " is yes or no, not a number.");
        }
        return QuantityParser.parse(text, property.kind(), property.kind().unit()).canonical();
    }
}
