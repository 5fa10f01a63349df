package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.StudentT;

/**
 * How a control piece read in one session against what it usually reads. All numbers in the property's canonical unit.
 *
 * @param piece    the piece
 * @param session  the session
 * @param property what was read
 * @param median   median of this session's readings
 * @param before   its usual value: as entered for the piece, else from the other sessions
 * @param sessions how many other sessions there are
 * @param limit    how far off it may be; NaN when nothing says so
 * @param basis    what the limit rests on
 */
public record ControlReading(ControlPiece piece, Session session, PropertyDef property, double median, double before, int sessions, double limit, Basis basis) {
    /** So many points of hardness off, a control piece puts its session in doubt: common practice. */
    public static final double POINTS = 3;
    /** Two standard deviations, when they are well known and of sessions, hold about 95 % of the sessions. */
    private static final double COVERAGE = 2;
    /** With fewer than four degrees of freedom a standard deviation is hardly known to half its size. */
    private static final int FEWEST_SESSIONS = 5;
    private static final double UPPER = 0.975;
    /** Differences of medians are sums of rounded readings. */
    private static final double ROUNDING = 1e-9;

    /** What says how far off a control piece may be. The first that is known counts. */
    public enum Basis {
        /** Twice the spread that was entered for the piece. */
        ENTERED,
        /** What the other sessions let expect of one more: t · s · √(1 + 1/n). It never allows more than {@link ControlReading#POINTS}. */
        SESSIONS,
        /** {@link ControlReading#POINTS} of hardness. */
        POINTS,
        /** Nothing: another property than hardness, and too few sessions. */
        NONE
    }

    public ControlReading {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(session, "session");
        Objects.requireNonNull(property, "property");
        Objects.requireNonNull(basis, "basis");
    }

    /** This session's median less the usual value. */
    public double difference() {
        return median - before;
    }

    /** True when it is off by more than it may: beyond the limit, or by {@link #POINTS} or more where that is the limit. */
    public boolean off() {
        double off = Math.abs(difference());
        return switch (basis) {
            case POINTS -> off >= limit - ROUNDING;
            case ENTERED, SESSIONS -> off > limit + ROUNDING;
            case NONE -> false;
        };
    }

    /** What the limit rests on. */
    public Source source() {
        return switch (basis) {
            case ENTERED -> Source.commonPractice("twice the spread entered for the control piece; it holds about 95 % of its sessions only if that spread is one of sessions and well known");
            case SESSIONS -> Source.derived("prediction interval of one more session, 95 %, from this piece’s own sessions");
            case POINTS, NONE -> Source.commonPractice("3 points or more on a kept piece: gauge, hand or room changed");
        };
    }

    /** How far off it may be and why, in words: {@code ± 2 Shore A, twice its usual spread of 1 Shore A}. */
    public String allowed() {
        return switch (basis) {
            case ENTERED -> Case.words("control.entered", number(limit), number(limit / COVERAGE),
                    blank(piece.getUsualFrom()) ? Case.words("control.entered.unsaid") : piece.getUsualFrom().strip());
            case SESSIONS -> Case.words("control.sessions", FieldText.rounded(limit, limit) + unit(), String.valueOf(sessions));
            case POINTS -> Case.words("control.points", FieldText.digits(POINTS));
            case NONE -> Case.words("control.none", String.valueOf(FEWEST_SESSIONS));
        };
    }

    /** One sentence: what it read, what it usually reads, what is allowed. */
    public String sentence() {
        String name = piece.getCode() == null ? Case.words("control.unnamed") : piece.getCode();
        String off = number(Math.abs(difference()));
        return Math.abs(difference()) < ROUNDING ? Case.words("control.usual", name, number(median), allowed())
                : Case.words(difference() > 0 ? "control.above" : "control.below", name, number(median), off, number(before), allowed());
    }

    private String number(double value) {
        return FieldText.digits(value) + unit();
    }

    private String unit() {
        String unit = property.kind().unit().display();
        return unit.isEmpty() ? "" : " " + unit;
    }

    /**
     * How the session's control piece read for one property. What was entered as its usual reading and spread holds for the property it was
     * read for first; else its usual value is the median over all sessions; of two sessions the earlier one's, as a median of two would blame
     * both. Only sessions in which it was read under the same conditions are compared. Empty without a control piece, without readings in
     * this session, or without anything to compare with.
     */
    public static Optional<ControlReading> of(Session session, PropertyDef property) {
        ControlPiece piece = session.getControlPiece();
        if (piece == null || property.yesNo()) {
            return Optional.empty();
        }
        PropertyKey key = piece.getMeasurements().stream().filter(m -> m.getSession() == session && isOf(m, property)).map(Measurement::getKey).findFirst().orElse(null);
        Map<Session, Double> medians = key == null ? Map.of() : medians(piece, property, key);
        Double mine = medians.get(session);
        if (mine == null) {
            return Optional.empty();
        }
        boolean entered = isFirst(piece, property);
        Double usual = entered && piece.getUsual() != null ? piece.getUsual() : usual(session, medians);
        return usual == null ? Optional.empty() : Optional.of(judged(session, property, mine, usual, medians, entered ? piece.getUsualSpread() : null));
    }

    /** By how much a control piece read in both sessions under the same conditions changed from one to the other; empty when none was. */
    public static Optional<Double> change(Session from, Session to, PropertyDef property) {
        ControlPiece piece = to.getControlPiece();
        if (piece == null || from == to || from.getControlPiece() != piece || property.yesNo()) {
            return Optional.empty();
        }
        return piece.getMeasurements().stream().filter(m -> m.getSession() == to && isOf(m, property)).map(Measurement::getKey).findFirst()
                .map(key -> medians(piece, property, key)).filter(medians -> medians.containsKey(from) && medians.containsKey(to)).map(medians -> medians.get(to) - medians.get(from));
    }

    private static ControlReading judged(Session session, PropertyDef property, double mine, double usual, Map<Session, Double> medians, Double spread) {
        ControlPiece piece = session.getControlPiece();
        int others = medians.size() - 1;
        if (spread != null) {
            return new ControlReading(piece, session, property, mine, usual, others, COVERAGE * spread, Basis.ENTERED);
        }
        boolean hardness = property.kind().shore();
        if (others >= FEWEST_SESSIONS) {
            double[] values = medians.entrySet().stream().filter(e -> e.getKey() != session).mapToDouble(Map.Entry::getValue).toArray();
            double sd = Descriptive.standardDeviation(values).orElseThrow();
            double expected = StudentT.quantile(UPPER, others - 1.0) * sd * Math.sqrt(1 + 1.0 / others);
            double limit = Math.max(expected, step(session, piece, property));
            if (!hardness || limit < POINTS) {
                return new ControlReading(piece, session, property, mine, usual, others, limit, Basis.SESSIONS);
            }
        }
        return hardness ? new ControlReading(piece, session, property, mine, usual, others, POINTS, Basis.POINTS)
                : new ControlReading(piece, session, property, mine, usual, others, Double.NaN, Basis.NONE);
    }

    /** One step of the gauge it was read with: sessions that read alike do not make it finer. Without a gauge 0. */
    private static double step(Session session, ControlPiece piece, PropertyDef property) {
        return piece.getMeasurements().stream().filter(m -> m.getSession() == session && isOf(m, property)).map(Measurement::getInstrument).filter(Objects::nonNull)
                .mapToDouble(g -> GaugeAmounts.canonical(g, g.getResolution(), property)).max().orElse(0);
    }

    /** Every property for which the session's control piece was read and has something to compare with. */
    public static List<ControlReading> all(Session session, PropertyCatalogue properties) {
        ControlPiece piece = session.getControlPiece();
        return piece == null ? List.of() : piece.getMeasurements().stream().filter(m -> m.getSession() == session && m.getKey() != null)
                .map(m -> m.getKey().getProperty()).filter(Objects::nonNull).distinct().flatMap(id -> properties.find(id).stream())
                .flatMap(property -> of(session, property).stream()).toList();
    }

    private static boolean isFirst(ControlPiece piece, PropertyDef property) {
        return piece.getMeasurements().stream().filter(m -> m.getKey() != null && m.getKey().getProperty() != null).findFirst()
                .map(m -> property.id().equals(m.getKey().getProperty())).orElse(false);
    }

    private static Double usual(Session session, Map<Session, Double> medians) {
        if (medians.size() > 2) {
            return Descriptive.median(medians.values().stream().mapToDouble(Double::doubleValue).toArray());
        }
        if (medians.size() < 2) {
            return null;
        }
        Session other = medians.keySet().stream().filter(s -> s != session).findFirst().orElseThrow();
        boolean later = other.getAt() == null || session.getAt() == null || other.getAt().equals(session.getAt())
                ? medians.keySet().iterator().next() == other : other.getAt().isBefore(session.getAt());
        return later ? medians.get(other) : null;
    }

    /** Median of each session's readings, in the order they stand in the record. */
    private static Map<Session, Double> medians(ControlPiece piece, PropertyDef property, PropertyKey key) {
        Map<Session, List<Measurement>> bySession = new LinkedHashMap<>();
        piece.getMeasurements().stream().filter(m -> m.getSession() != null && isOf(m, property) && PartValues.differences(key, m.getKey(), property).isEmpty())
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
                .filter(Measurements::counts).mapToDouble(Reading::getValue).toArray();
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
