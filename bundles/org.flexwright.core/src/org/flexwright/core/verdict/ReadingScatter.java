package org.flexwright.core.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Measurements;
import org.flexwright.model.Censoring;
import org.flexwright.model.GaugeCell;
import org.flexwright.model.GaugeStudy;
import org.flexwright.model.Instrument;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.MedianSpread;

/**
 * How single readings on one piece scatter, and so how much of the difference between parts is only reading.
 *
 * @param sd   standard deviation of one reading, in the property's canonical unit, from 0 up
 * @param df   degrees of freedom behind it; infinite when it was stated as known
 * @param from where it comes from, in words
 */
public record ReadingScatter(double sd, double df, String from) {
    /** With fewer degrees of freedom a standard deviation is hardly known to half its size. */
    private static final int FEWEST = 4;

    /** @throws IllegalArgumentException when a figure is impossible */
    public ReadingScatter {
        Objects.requireNonNull(from, "from");
        if (!(sd >= 0) || Double.isInfinite(sd) || !(df > 0)) {
            throw new IllegalArgumentException("A scatter needs a standard deviation from 0 up and degrees of freedom above 0.");
        }
    }

    /** What the gauges the parts were read with are known to scatter by, the largest; empty when none says so. */
    public static Optional<ReadingScatter> known(List<PartValue> parts, PropertyDef property) {
        return parts.stream().flatMap(p -> p.instruments().stream()).distinct().map(gauge -> known(gauge, property)).flatMap(Optional::stream)
                .max(Comparator.comparingDouble(ReadingScatter::sd));
    }

    /** What a gauge is known to scatter by; empty when it does not say so in a unit that fits. */
    public static Optional<ReadingScatter> known(Instrument gauge, PropertyDef property) {
        double sd = GaugeAmounts.canonical(gauge, gauge.getSpread(), property);
        if (!(sd > 0)) {
            return Optional.empty();
        }
        GaugeStudy study = gauge.getStudy();
        String name = gauge.getName() == null ? Case.words("gauge") : gauge.getName();
        String from = study != null ? Case.words("scatter.study", name, Objects.toString(study.getCode(), "")) : Case.words("scatter.typed", name,
                gauge.getSpreadFrom() == null || gauge.getSpreadFrom().isBlank() ? Case.words("scatter.noOrigin") : gauge.getSpreadFrom());
        return Optional.of(new ReadingScatter(sd, study == null ? Double.POSITIVE_INFINITY : Math.max(1, df(study)), from));
    }

    /** Readings of the study that repeat one before them. */
    private static int df(GaugeStudy study) {
        return study.getCells().stream().mapToInt(ReadingScatter::repeats).sum();
    }

    private static int repeats(GaugeCell cell) {
        long counted = cell.getReadings().stream().filter(r -> r.getValue() != null && r.getCensoring() == Censoring.NONE)
                .filter(Measurements::counts).count();
        return (int) Math.max(0, counted - 1);
    }

    /** What the repeated readings on these parts say together; empty with fewer than four readings that repeat one before them. */
    public static Optional<ReadingScatter> own(List<PartValue> parts) {
        double squares = 0;
        int df = 0;
        for (PartValue part : parts) {
            double[] numbers = part.numbers();
            if (numbers.length > 1) {
                double sd = Descriptive.standardDeviation(numbers).orElseThrow();
                squares += sd * sd * (numbers.length - 1);
                df += numbers.length - 1;
            }
        }
        return df < FEWEST ? Optional.empty() : Optional.of(new ReadingScatter(Math.sqrt(squares / df), df, Case.words("scatter.own")));
    }

    /** What is known of the gauge, unless the readings on these parts scatter significantly more; else those readings. */
    public static Optional<ReadingScatter> of(List<PartValue> parts, PropertyDef property) {
        Optional<ReadingScatter> known = known(parts, property);
        Optional<ReadingScatter> own = own(parts);
        boolean ownCounts = known.isEmpty() || own.isPresent() && MeanVerdict.contradicts(own.get().sd, own.get().df, known.get().sd, known.get().df);
        return ownCounts ? own : known;
    }

    /** Standard deviation that reading alone gives the median of so many readings. */
    public double ofMedian(int readings) {
        return sd * MedianSpread.factor(readings) / Math.sqrt(readings);
    }

    /** Standard deviation that reading alone gives the values of these parts, each the median of its readings. */
    double amongValues(List<PartValue> parts) {
        return Math.sqrt(parts.stream().mapToDouble(p -> ofMedian(Math.max(1, p.readings()))).map(u -> u * u).average().orElse(0));
    }
}
