package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.model.Instrument;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;
import org.flexwright.numerics.MoreParts;

/**
 * What would settle a verdict that cannot be told: more parts, more readings on each, or another gauge. The spread of the parts' values is
 * split into what reading alone explains and what the parts differ by; readings can take away the first only.
 */
final class WhatHelps {
    /** Nobody reads one part more often. */
    private static final int MOST_READINGS = 30;
    private static final double TENTHS = 10;

    private WhatHelps() {
    }

    /** The sentences. {@code sd} is the spread of one part's value that the verdict used, with its degrees of freedom. */
    static List<Message> of(Case the, List<PartValue> parts, double mean, double sd, double df, boolean byStep, Interval limits) {
        List<Message> said = new ArrayList<>();
        Optional<ReadingScatter> scatter = ReadingScatter.of(parts, the.property());
        if (byStep) {
            said.add(Case.message("helps.step"));
        } else if (scatter.isEmpty()) {
            said.add(Case.message("helps.unknown"));
        } else {
            said.add(split(the, parts, mean, sd, df, limits, scatter.get()));
        }
        accuracy(the, parts, mean, limits).ifPresent(said::add);
        return said;
    }

    /** What to say of one part, or of two, whose own spread is not known. */
    static Message few() {
        return Case.message("helps.few");
    }

    private static Message split(Case the, List<PartValue> parts, double mean, double sd, double df, Interval limits, ReadingScatter scatter) {
        double reading = scatter.amongValues(parts);
        double between = Math.sqrt(Math.max(0, sd * sd - reading * reading));
        int n = parts.size();
        if (!settles(mean, between, df, n, limits)) {
            return Case.message("helps.parts", between > 0 ? the.number(between, between / 2) : the.number(0, 0), the.number(scatter.sd(), scatter.sd() / 2), scatter.from());
        }
        int now = (int) Math.round(parts.stream().mapToInt(PartValue::readings).average().orElse(1));
        OptionalInt readings = now >= MOST_READINGS ? OptionalInt.empty() : MoreParts.first(now + 1, MOST_READINGS, r -> settles(mean, Math.hypot(between, scatter.ofMedian(r)), df, n,
                limits));
        // a split of two variances by few parts is known to a tenth at best
        String share = FieldText.fixed(Math.min(1, Math.rint(TENTHS * Math.min(1, reading * reading / (sd * sd))) / TENTHS) * 100, 0);
        String one = the.number(scatter.sd(), scatter.sd() / 2);
        return readings.isPresent() ? Case.message("helps.readings", share, one, scatter.from(), String.valueOf(readings.getAsInt()), String.valueOf(now))
                : Case.message("helps.gauge", share, one, scatter.from());
    }

    private static boolean settles(double mean, double sd, double df, int n, Interval limits) {
        return MeanVerdict.place(Intervals.meanKnownSpread(mean, n, sd, df, Verdicts.LEVEL), limits) != Verdict.CANNOT_TELL;
    }

    /** A mean nearer to an edge than the gauge is sure of stays in doubt however many parts are read. */
    private static Optional<Message> accuracy(Case the, List<PartValue> parts, double mean, Interval limits) {
        double near = Math.min(Math.abs(mean - limits.low()), Math.abs(mean - limits.high()));
        for (Instrument gauge : parts.stream().flatMap(p -> p.instruments().stream()).distinct().toList()) {
            double accuracy = GaugeAmounts.canonical(gauge, gauge.getAccuracy(), the.property());
            if (accuracy > near && !the.cancels(gauge)) {
                return Optional.of(Case.message("helps.accuracy", gauge.getName() == null ? Case.words("gauge") : gauge.getName(), the.number(accuracy, 0)));
            }
        }
        return Optional.empty();
    }
}
