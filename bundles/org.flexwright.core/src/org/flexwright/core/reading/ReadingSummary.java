package org.flexwright.core.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.Measurement;
import org.flexwright.model.Reading;
import org.flexwright.numerics.Descriptive;

/**
 * What the readings of one measurement say together. It is about one place of one piece: many readings are never several parts.
 *
 * @param property the property
 * @param readings those that count, in order
 * @param dwell    s from contact to reading, or null
 */
public record ReadingSummary(PropertyDef property, List<Reading> readings, Double dwell) {
    public ReadingSummary {
        readings = List.copyOf(readings);
    }

    /** Of the readings that were not left out. */
    public static ReadingSummary of(PropertyDef property, Measurement measurement) {
        return new ReadingSummary(property, measurement.getReadings().stream().filter(Measurements::counts).toList(), measurement.getKey()
                .getDwell());
    }

    /** Median in the canonical unit; empty without numbers, or when one is only a bound. */
    public OptionalDouble median() {
        boolean plain = !property.yesNo() && !readings.isEmpty() && readings.stream().allMatch(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE);
        return plain ? OptionalDouble.of(Descriptive.median(readings.stream().mapToDouble(Reading::getValue).toArray())) : OptionalDouble.empty();
    }

    /** Largest less smallest; empty for fewer than two numbers. */
    public OptionalDouble spread() {
        return readings.size() < 2 || median().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Descriptive.range(readings.stream().mapToDouble(Reading::getValue).toArray()));
    }

    /** A durometer's median as the standards print it; empty without a dwell. */
    public Optional<HardnessText.Read> prints() {
        return property.kind().shore() && dwell != null && median().isPresent() ? Optional.of(new HardnessText.Read(property.kind(), median().getAsDouble(), dwell))
                : Optional.empty();
    }

    /** {@code median 45 Shore A of 5 readings, spread 2}; the readings themselves where there is no median. */
    public String words() {
        if (median().isEmpty()) {
            return readings.isEmpty() ? Message.of(ReadingSummary.class, "summary.none").text() : readings.stream().map(r -> ReadingPrinter.print(property, r)).collect(Collectors
                    .joining("; "));
        }
        String median = FieldText.number(median().getAsDouble(), property.kind(), "");
        return spread().isEmpty() ? Message.of(ReadingSummary.class, "summary.one", median).text()
                : Message.of(ReadingSummary.class, "summary.many", median, readings.size(), FieldText.digits(spread().getAsDouble())).text();
    }
}
