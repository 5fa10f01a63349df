package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
 * @param before   its usual value
 * @param sessions how many other sessions there are
 */
public record ControlReading(ControlPiece piece, double median, double before, int sessions) {
    /** So many points of hardness off, a control piece puts its session in doubt: common practice. */
    public static final double POINTS = 3;
    /** Differences of medians are sums of rounded readings. */
    private static final double ROUNDING = 1e-9;

    /** This session's median less the usual value. */
    public double difference() {
        return median - before;
    }

    /** True when it is off by {@link #POINTS} or more; says something for hardness alone. */
    public boolean off(PropertyDef property) {
        return property.kind().name().startsWith("SHORE") && Math.abs(difference()) >= POINTS - ROUNDING;
    }

    /**
     * How the session's control piece read. Its usual value is the median over all sessions; of two sessions the earlier one's, as a
     * median of two would blame both. Empty without a control piece, without readings in this session, or without another one to compare with.
     */
    public static Optional<ControlReading> of(Session session, PropertyDef property) {
        ControlPiece piece = session.getControlPiece();
        if (piece == null) {
            return Optional.empty();
        }
        Map<Session, Double> medians = medians(piece, property);
        Double mine = medians.get(session);
        if (mine == null || medians.size() < 2) {
            return Optional.empty();
        }
        if (medians.size() > 2) {
            double usual = Descriptive.median(medians.values().stream().mapToDouble(Double::doubleValue).toArray());
            return Optional.of(new ControlReading(piece, mine, usual, medians.size() - 1));
        }
        Session other = medians.keySet().stream().filter(s -> s != session).findFirst().orElseThrow();
        boolean later = other.getAt() == null || session.getAt() == null || other.getAt().equals(session.getAt())
                ? medians.keySet().iterator().next() == other : other.getAt().isBefore(session.getAt());
        return later ? Optional.of(new ControlReading(piece, mine, medians.get(other), 1)) : Optional.empty();
    }

    /** Median of each session's readings, in the order they stand in the record. */
    private static Map<Session, Double> medians(ControlPiece piece, PropertyDef property) {
        Map<Session, List<Measurement>> bySession = new LinkedHashMap<>();
        piece.getMeasurements().stream().filter(m -> m.getSession() != null && isOf(m, property))
                .forEach(m -> bySession.computeIfAbsent(m.getSession(), s -> new ArrayList<>()).add(m));
        Map<Session, Double> medians = new LinkedHashMap<>();
        bySession.forEach((session, measurements) -> {
            double[] values = values(measurements);
            if (values.length > 0) {
                medians.put(session, Descriptive.median(values));
            }
        });
        return medians;
    }

    private static boolean isOf(Measurement measurement, PropertyDef property) {
        return measurement.getKey() != null && property.id().equals(measurement.getKey().getProperty()) && measurement.getKnowledge() == Knowledge.MEASURED;
    }

    private static double[] values(List<Measurement> measurements) {
        return measurements.stream().flatMap(m -> m.getReadings().stream()).filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE)
                .filter(r -> r.getLeftOut() == null || r.getLeftOut().isBlank()).mapToDouble(Reading::getValue).toArray();
    }
}
