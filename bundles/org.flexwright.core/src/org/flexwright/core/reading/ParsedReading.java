package org.flexwright.core.reading;

import java.time.Instant;
import java.util.Objects;

import org.flexwright.model.Censoring;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Reading;

/**
 * One reading that was understood.
 *
 * @param value     in the property's canonical unit; null for a yes or no
 * @param censoring whether the value is a bound only
 * @param yes       for yes/no properties; null otherwise
 * @param typedAs   exactly what was typed
 * @param dwell     seconds from contact to reading where the typed text says so, such as A/15:45; else null
 */
public record ParsedReading(Double value, Censoring censoring, Boolean yes, String typedAs, Double dwell) {
    public ParsedReading {
        Objects.requireNonNull(censoring, "censoring");
        Objects.requireNonNull(typedAs, "typedAs");
        if ((value == null) == (yes == null)) {
            throw new IllegalArgumentException("A reading is either a number or a yes or no.");
        }
    }

    /** A reading that says nothing about its dwell. */
    public ParsedReading(Double value, Censoring censoring, Boolean yes, String typedAs) {
        this(value, censoring, yes, typedAs, null);
    }

    /** The model's reading, not yet part of a measurement. */
    public Reading toReading(Instant at) {
        Reading reading = ModelFactory.eINSTANCE.createReading();
        reading.setValue(value);
        reading.setCensoring(censoring);
        reading.setYes(yes);
        reading.setTypedAs(typedAs);
        reading.setAt(at);
        return reading;
    }
}
