package org.flexwright.core.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.flexwright.core.Message;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Censoring;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Provenance;
import org.flexwright.model.Reading;
import org.flexwright.quantity.QuantityFormat;

/**
 * Prints readings so that {@link ReadingParser} reads the same again. A reading that was taken from a recording and has a band of its own is
 * printed to two digits of the band: further ones would be invented.
 */
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
        String number = QuantityFormat.format(told(reading), property.kind().unit());
        if (reading.getCensoring() == Censoring.MORE_THAN) {
            return "> " + number;
        }
        return reading.getCensoring() == Censoring.LESS_THAN ? "< " + number : number;
    }

    private static double told(Reading reading) {
        double value = reading.getValue();
        double half = Provenances.of(reading, ModelPackage.Literals.READING__VALUE).map(Provenance::getUncertainty).orElse(0.0);
        if (reading.getTypedAs() != null || !(half > 0) || !Double.isFinite(value) || Double.isInfinite(half)) {
            return value;
        }
        return BigDecimal.valueOf(value).setScale(1 - (int) Math.floor(Math.log10(half)), RoundingMode.HALF_EVEN).doubleValue();
    }
}
