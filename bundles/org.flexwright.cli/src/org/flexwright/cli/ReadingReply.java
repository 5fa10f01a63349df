package org.flexwright.cli;

import java.util.List;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.Measurement;
import org.flexwright.model.Reading;
import org.flexwright.numerics.Descriptive;

/** What a fresh measurement says: median, spread over readings, age. */
final class ReadingReply {
    private ReadingReply() {
    }

    static Reply of(Reply reply, PropertyDef def, Measurement measurement) {
        List<Reading> counted = measurement.getReadings().stream().filter(r -> r.getLeftOut() == null).toList();
        String unit = def.yesNo() ? "" : def.kind().unit().symbol();
        reply.words("property", def.id());
        reply.result("readings", Value.number(counted.size(), "1", Reply.OWN_RECORD));
        if (def.yesNo()) {
            reply.words("read", String.join("; ", counted.stream().map(r -> ReadingPrinter.print(def, r)).toList()));
        }
        double[] values = counted.stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE).mapToDouble(Reading::getValue)
                .toArray();
        if (values.length > 0 && values.length == counted.size()) {
            reply.result("median", Value.number(Descriptive.median(values), unit, "median of the readings on this piece"));
            reply.result("spread", Value.number(Descriptive.range(values), unit, "largest less smallest reading on this piece"));
        } else if (!def.yesNo()) {
            reply.words("bounds", counted.size() - values.length + " of " + counted.size() + " readings are bounds, kept as such");
        }
        if (measurement.getKey().getDwell() != null) {
            reply.result("dwell", Value.number(measurement.getKey().getDwell(), "s", Reply.OWN_RECORD));
        }
        Double age = Measurements.ageHours(measurement);
        if (age != null) {
            reply.result("age", Value.number(Math.round(age * 10) / 10.0, "h", "from when the piece was made to when it was read"));
        }
        return reply;
    }
}
