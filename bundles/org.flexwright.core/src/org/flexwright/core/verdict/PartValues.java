package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.Instrument;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.numerics.Descriptive;

/**
 * Values of parts from their readings. Readings left out with a reason, and what was estimated instead of measured, do not count. Readings
 * of very different age never make one value: of several ages ({@link AgeSpan}) the one at which most of the pieces were read counts, of
 * equals the latest, and the others are named.
 */
public final class PartValues {
    /** Dwell times closer than this, in seconds, are the same. */
    private static final double SAME_DWELL = 1e-6;

    private PartValues() {
    }

    /** One value for each part that failed or was read for this property; {@code key} is what is asked for. */
    public static List<PartValue> of(Trial trial, PropertyKey key, PropertyDef property) {
        return of(trial.getParts(), key, property);
    }

    /** The same for any pieces, such as a reference part. */
    public static List<PartValue> of(Collection<? extends Specimen> pieces, PropertyKey key, PropertyDef property) {
        return of(pieces, key, property, Knowledge.MEASURED);
    }

    private static List<PartValue> of(Collection<? extends Specimen> pieces, PropertyKey key, PropertyDef property, Knowledge knowledge) {
        AgeSpan wanted = commonAge(pieces, key, property, knowledge);
        return pieces.stream().map(p -> of(p, key, property, knowledge, wanted)).filter(Objects::nonNull).toList();
    }

    /** What was measured on the project's reference part, the first one: the bias of a gauge cancels against it. */
    public static List<PartValue> ofReference(Project project, PropertyKey key, PropertyDef property) {
        return of(project.getReferenceParts().stream().limit(1).toList(), key, property).stream().filter(p -> p.readings() > 0).toList();
    }

    /** Values that were estimated, not measured: they are shown, never judged. */
    public static List<PartValue> estimated(Collection<? extends Specimen> pieces, PropertyKey key, PropertyDef property) {
        return of(pieces, key, property, Knowledge.ESTIMATED);
    }

    /** The value of one piece; null when it neither failed nor was read for this property. */
    public static PartValue of(Specimen piece, PropertyKey key, PropertyDef property) {
        return of(piece, key, property, Knowledge.MEASURED, commonAge(List.of(piece), key, property, Knowledge.MEASURED));
    }

    private static List<Measurement> read(Specimen piece, PropertyDef property, Knowledge knowledge) {
        return piece.getMeasurements().stream().filter(m -> isOf(m, property) && m.getKnowledge() == knowledge).filter(m -> !counting(m, property).isEmpty()).toList();
    }

    private static List<Double> ages(List<Measurement> measurements) {
        return measurements.stream().map(Measurements::ageHours).filter(Objects::nonNull).toList();
    }

    /** The age at which most of the pieces were read as asked, of equals the latest; null when no age is known. */
    private static AgeSpan commonAge(Collection<? extends Specimen> pieces, PropertyKey key, PropertyDef property, Knowledge knowledge) {
        List<List<Double>> byPiece = pieces.stream().map(p -> ages(read(p, property, knowledge).stream().filter(m -> differences(key, m.getKey(), property)
                .isEmpty()).toList())).toList();
        AgeSpan best = null;
        long most = 0;
        for (AgeSpan span : AgeSpan.groups(byPiece.stream().flatMap(List::stream).toList())) {
            long count = byPiece.stream().filter(ages -> ages.stream().anyMatch(span::contains)).count();
            if (count >= most) {
                best = span;
                most = count;
            }
        }
        return best;
    }

    private static PartValue of(Specimen piece, PropertyKey key, PropertyDef property, Knowledge knowledge, AgeSpan wanted) {
        List<Measurement> read = read(piece, property, knowledge);
        if (read.isEmpty()) {
            return piece.isFailed() ? new PartValue(code(piece), id(piece), 0, Double.NaN, Double.NaN, 0, 0, true, Set.of(), List.of()) : null;
        }
        List<Measurement> asked = read.stream().filter(m -> differences(key, m.getKey(), property).isEmpty()).toList();
        Set<Condition> differs = EnumSet.noneOf(Condition.class);
        if (asked.isEmpty()) {
            read.forEach(m -> differs.addAll(differences(key, m.getKey(), property)));
        }
        return valueOf(piece, asked.isEmpty() ? read : asked, differs, property, wanted);
    }

    private static boolean isOf(Measurement measurement, PropertyDef property) {
        return measurement.getKey() != null && property.id().equals(measurement.getKey().getProperty());
    }

    private static List<Reading> counting(Measurement measurement, PropertyDef property) {
        return measurement.getReadings().stream().filter(Measurements::counts)
                .filter(r -> property.yesNo() ? r.getYes() != null : r.getValue() != null).toList();
    }

    private static PartValue valueOf(Specimen piece, List<Measurement> all, Set<Condition> differs, PropertyDef property, AgeSpan wanted) {
        List<AgeSpan> spans = AgeSpan.groups(ages(all));
        // A piece that was not read at the common age counts with its own latest one; the difference is named beside the verdict.
        AgeSpan own = spans.isEmpty() ? null : spans.stream().filter(s -> wanted != null && s.high() >= wanted.low() && s.low() <= wanted.high()).reduce((a, b) -> b)
                .orElse(spans.getLast());
        List<Measurement> measurements = own == null ? all : all.stream().filter(m -> Measurements.ageHours(m) == null || own.contains(Measurements.ageHours(m))).toList();
        List<AgeSpan> others = spans.stream().filter(s -> s != own).toList();
        int unknown = (int) measurements.stream().filter(m -> Measurements.ageHours(m) == null).mapToLong(m -> counting(m, property).size()).sum();
        AgeSpan age = own == null ? null : new AgeSpan(own.low(), own.high(), unknown);
        List<Reading> readings = measurements.stream().flatMap(m -> counting(m, property).stream()).toList();
        List<Instrument> instruments = measurements.stream().map(Measurement::getInstrument).filter(Objects::nonNull).distinct().toList();
        List<Session> sessions = measurements.stream().map(Measurement::getSession).filter(Objects::nonNull).distinct().toList();
        if (property.yesNo()) {
            int yes = (int) readings.stream().filter(Reading::getYes).count();
            return new PartValue(code(piece), id(piece), readings.size(), Double.NaN, Double.NaN, yes, readings.size() - yes, piece.isFailed(), differs, instruments, sessions, age, others, measurements);
        }
        return new PartValue(code(piece), id(piece), readings.size(), low(readings), high(readings), 0, 0, piece.isFailed(), differs, instruments, sessions, age, others, measurements);
    }

    /** Lower end of the median of numbers and bounds, one at least; minus infinity when half of them are only known to be less than something. */
    public static double low(List<Reading> readings) {
        return median(readings.stream().mapToDouble(r -> r.getCensoring() == Censoring.LESS_THAN ? Double.NEGATIVE_INFINITY : r.getValue()).toArray());
    }

    /** Upper end of the same. */
    public static double high(List<Reading> readings) {
        return median(readings.stream().mapToDouble(r -> r.getCensoring() == Censoring.MORE_THAN ? Double.POSITIVE_INFINITY : r.getValue()).toArray());
    }

    /** The median of bounds: the median of the lower ends and of the upper ends enclose the median of the values. */
    private static double median(double[] values) {
        if (Arrays.stream(values).allMatch(Double::isFinite)) {
            return Descriptive.median(values);
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** Conditions that matter for the property and in which two keys differ; a condition given in one and not in the other differs. */
    public static Set<Condition> differences(PropertyKey asked, PropertyKey read, PropertyDef property) {
        EnumSet<Condition> differs = EnumSet.noneOf(Condition.class);
        for (Condition condition : property.comparedBy()) {
            boolean same = switch (condition) {
                case PIECE -> asked.getPieceKind() == read.getPieceKind();
                case SPOT -> plain(asked.getSpot()).equals(plain(read.getSpot()));
                case SUPPORT -> plain(asked.getSupport()).equals(plain(read.getSupport()));
                case DWELL -> sameDwell(asked.getDwell(), read.getDwell());
            };
            if (!same) {
                differs.add(condition);
            }
        }
        return differs;
    }

    private static boolean sameDwell(Double one, Double other) {
        return one == null || other == null ? one == other : Math.abs(one - other) < SAME_DWELL;
    }

    private static String plain(String words) {
        return words == null ? "" : words.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    private static String code(Specimen piece) {
        return piece.getCode() == null ? id(piece) : piece.getCode();
    }

    private static String id(Specimen piece) {
        return piece.getId() == null ? "" : piece.getId();
    }

    /** The spread of single parts, pooled over trials made alike; null when no trial has two parts with a number. */
    public static KnownSpread pooledSpread(List<List<PartValue>> trials, String name) {
        double squares = 0;
        double df = 0;
        for (List<PartValue> trial : trials) {
            double[] values = numbers(trial);
            if (values.length >= 2) {
                double sd = Descriptive.standardDeviation(values).orElseThrow();
                squares += sd * sd * (values.length - 1);
                df += values.length - 1;
            }
        }
        return df == 0 ? null : new KnownSpread(Math.sqrt(squares / df), df, name);
    }

    /** The plain numbers among the values of parts that count. */
    static double[] numbers(List<PartValue> parts) {
        List<Double> numbers = new ArrayList<>();
        parts.stream().filter(p -> !p.failed() && !p.notComparable() && p.hasNumber() && !p.censored()).forEach(p -> numbers.add(p.value()));
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
