package org.flexwright.core.reading;

import org.flexwright.core.Message;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Censoring;
import org.flexwright.model.Reading;
import org.flexwright.quantity.QuantityFormat;

/** Prints readings so that {@link ReadingParser} reads the same again. */
public final class ReadingPrinter {

    private ReadingPrinter() {
    }

    /** {@code 42}, {@code > 12 N}, {@code yes}; empty when nothing was read. */
    public static String print(PropertyDef property, Reading reading) {
        if (property.yesNo()) {
            return reading.getYes() == null ? "" : Message.of(ReadingPrinter.class, reading.getYes() ? "yes" : "no").text();
        }
        if (reading.getValue() == null) {
            return "";
        }
        String number = QuantityFormat.format(reading.getValue(), property.kind().unit());
        if (reading.getCensoring() == Censoring.MORE_THAN) {
            return "> " + number;
        }
        return reading.getCensoring() == Censoring.LESS_THAN ? "< " + number : number;
    }
}
