package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Censoring;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.numerics.Descriptive;

/**
 * How a control piece read in one session against the others.
 *
 * @param piece    the piece
 * @param median   median of this session's readings, in the property's canonical unit
 * @param before   median of the other sessions' medians
 * @param sessions how many other sessions there are
 */
public record ControlReading(ControlPiece piece, double median, double before, int sessions) {
    /** Points of hardness a control piece may be off: common practice. */
    public static final double POINTS = 3;

    /** This session's median less that of the others. */
    public double difference() {
        return median - before;
    }

    /** True when it is off by more than {@link #POINTS}; says something for hardness alone. */
    public boolean off(PropertyDef property) {
        return property.kind().name().startsWith("SHORE") && Math.abs(difference()) > POINTS;
    }

    /** How the session's control piece read; empty without a control piece, without readings in this session, or without any other session. */
    public static Optional<ControlReading> of(Session session, PropertyDef property) {
        ControlPiece piece = session.getControlPiece();
        if (piece == null) {
            return Optional.empty();
        }
        List<Measurement> mine = new ArrayList<>();
        List<Session> others = new ArrayList<>();
        for (Measurement m : piece.getMeasurements()) {
            if (!isOf(m, property)) {
                continue;
            }
            if (m.getSession() == session) {
                mine.add(m);
            } else if (m.getSession() != null && !others.contains(m.getSession())) {
                others.add(m.getSession());
            }
        }
        double[] now = values(mine);
        double[] before = others.stream().map(s -> values(piece.getMeasurements().stream().filter(m -> m.getSession() == s && isOf(m, property)).toList()))
                .filter(v -> v.length > 0).mapToDouble(Descriptive::median).toArray();
        return now.length == 0 || before.length == 0 ? Optional.empty()
                : Optional.of(new ControlReading(piece, Descriptive.median(now), Descriptive.median(before), before.length));
    }

    private static boolean isOf(Measurement measurement, PropertyDef property) {
        return measurement.getKey() != null && property.id().equals(measurement.getKey().getProperty()) && measurement.getKnowledge() == Knowledge.MEASURED;
    }

    private static double[] values(List<Measurement> measurements) {
        return measurements.stream().flatMap(m -> m.getReadings().stream()).filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE)
                .filter(r -> r.getLeftOut() == null || r.getLeftOut().isBlank()).mapToDouble(Reading::getValue).toArray();
    }
}
