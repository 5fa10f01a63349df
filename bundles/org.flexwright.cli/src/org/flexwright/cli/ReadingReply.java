package org.flexwright.cli;

import java.util.List;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.reading.ReadingSummary;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.Measurement;
import org.flexwright.model.Reading;

/** What a fresh measurement says: median, spread over readings, age. */
final class ReadingReply {
    private ReadingReply() {
    }

    static Reply of(Reply reply, PropertyDef def, Measurement measurement) {
        ReadingSummary summary = ReadingSummary.of(def, measurement);
        List<Reading> counted = summary.readings();
        String unit = def.yesNo() ? "" : def.kind().unit().symbol();
        reply.words("property", def.id());
        reply.result("readings", Value.number(counted.size(), "1", Reply.OWN_RECORD));
        if (def.yesNo()) {
            reply.words("read", String.join("; ", counted.stream().map(r -> ReadingPrinter.print(def, r)).toList()));
        } else if (summary.median().isPresent()) {
            reply.result("median", Value.number(summary.median().getAsDouble(), unit, "median of the readings on this piece"));
            summary.spread().ifPresent(spread -> reply.result("spread", Value.number(spread, unit, "largest less smallest reading on this piece")));
        } else {
            long bounds = counted.stream().filter(r -> r.getCensoring() != Censoring.NONE).count();
            reply.words("bounds", bounds + " of " + counted.size() + " readings are bounds, kept as such");
        }
        summary.prints().ifPresent(print -> reply.words("in print", print.both().text()));
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
