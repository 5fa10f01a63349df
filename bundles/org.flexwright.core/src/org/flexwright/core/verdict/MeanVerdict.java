package org.flexwright.core.verdict;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.flexwright.core.Message;
import org.flexwright.numerics.Descriptive;
import org.flexwright.numerics.FisherF;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;
import org.flexwright.numerics.MoreParts;

/** The rule for numbers. */
final class MeanVerdict {
    private static final int MOST_PARTS = 1000;

    private MeanVerdict() {
    }

    static Judgement judge(Case the, List<PartValue> parts, KnownSpread known) {
        Interval limits = Limits.of(the.target());
        if (limits == null) {
            return the.without(Verdict.CANNOT_TELL, "noLimits", the.property().title());
        }
        return parts.stream().anyMatch(PartValue::censored) ? bounds(the, parts, limits) : numbers(the, parts, limits, known);
    }

    /** Where an interval lies against the limits. */
    static Verdict place(Interval interval, Interval limits) {
        if (limits.contains(interval)) {
            return Verdict.IN;
        }
        return interval.isAbove(limits.high()) ? Verdict.ABOVE : interval.isBelow(limits.low()) ? Verdict.BELOW : Verdict.CANNOT_TELL;
    }

    private static Judgement bounds(Case the, List<PartValue> parts, Interval limits) {
        List<Verdict> places = parts.stream().map(p -> place(new Interval(p.low(), p.high()), limits)).distinct().toList();
        boolean agree = places.size() == 1 && places.get(0) != Verdict.CANNOT_TELL;
        int n = parts.size();
        if (agree && n >= Verdicts.FEWEST) {
            return new Judgement(places.get(0), null, n, null, null, OptionalInt.empty(),
                    Case.message("bounds." + places.get(0).name().toLowerCase(java.util.Locale.ROOT), String.valueOf(n), the.limits()), the.notes(), the.rejected(),
                    the.failed());
        }
        OptionalInt more = agree ? OptionalInt.of(Verdicts.FEWEST - n) : OptionalInt.empty();
        Message reason = agree ? Case.message("boundsFew", String.valueOf(n), String.valueOf(Verdicts.FEWEST - n)) : Case.message("boundsApart", the.limits());
        return new Judgement(Verdict.CANNOT_TELL, null, n, null, null, more, reason, the.notes(), the.rejected(), the.failed());
    }

    private static Judgement numbers(Case the, List<PartValue> parts, Interval limits, KnownSpread known) {
        double[] values = parts.stream().mapToDouble(PartValue::value).toArray();
        int n = values.length;
        double mean = Descriptive.mean(values);
        double difference = mean - Limits.origin(limits);
        List<Message> notes = the.notes();
        Spread spread = spread(the, parts, values, known, notes);
        if (spread == null || n < Verdicts.FEWEST && !spread.known()) {
            Interval interval = spread == null ? null : spread.interval(mean, n);
            int more = Verdicts.FEWEST - n;
            Message reason = Case.message(n == 1 ? "onePart" : "twoParts", differenceText(the, difference, limits), String.valueOf(more));
            notes.add(WhatHelps.few());
            return new Judgement(Verdict.CANNOT_TELL, interval, n, mean, difference, OptionalInt.of(more), reason, notes, the.rejected(), the.failed());
        }
        Interval interval = spread.interval(mean, n);
        Verdict verdict = place(interval, limits);
        OptionalInt more = verdict == Verdict.CANNOT_TELL ? spread.more(mean, n, limits) : OptionalInt.empty();
        the.bias(notes, parts, verdict, interval, limits);
        if (verdict == Verdict.CANNOT_TELL) {
            notes.addAll(WhatHelps.of(the, parts, mean, spread.sd(), spread.df(), spread.byStep(), limits));
        }
        return new Judgement(verdict, interval, n, mean, difference, more, reason(the, verdict, interval, n, more), notes, the.rejected(), the.failed());
    }

    /** The spread that counts: the parts' own, unless one is known and the parts do not contradict it. */
    private static Spread spread(Case the, List<PartValue> parts, double[] values, KnownSpread known, List<Message> notes) {
        // Readings rounded to a step hide a spread of up to a step over the square root of 12: the spread is never taken to be less.
        // Without a gauge the digits as written stand for its step.
        double gauge = the.resolution(parts);
        double step = gauge > 0 ? gauge : GaugeAmounts.writtenStep(values);
        double byStep = step / Math.sqrt(12);
        // Nor less than what the gauge is known to scatter by: parts that happen to read alike are no proof that it read better.
        Optional<ReadingScatter> gaugeScatter = ReadingScatter.known(parts, the.property());
        double byGauge = gaugeScatter.map(s -> s.amongValues(parts)).orElse(0.0);
        double least = Math.max(byStep, byGauge);
        double own = values.length < 2 ? Double.NaN : Descriptive.standardDeviation(values).orElseThrow();
        if (known != null) {
            double sd = Math.max(known.sd(), least);
            if (Double.isNaN(own) || !contradicts(own, values.length - 1.0, sd, known.df())) {
                notes.add(Case.message("note.known", the.number(sd, 0), known.name()));
                return new Spread(sd, known.df(), true, false);
            }
            notes.add(Case.message("note.contradicts", known.name()));
        }
        if (Double.isNaN(own)) {
            return null;
        }
        if (own < least) {
            notes.add(byGauge > byStep ? Case.message("note.gauge", the.number(gaugeScatter.get().sd(), gaugeScatter.get().sd() / 2), gaugeScatter.get().from())
                    : Case.message(gauge > 0 ? "note.step" : "note.written", the.number(step, 0)));
        }
        return new Spread(Math.max(own, least), values.length - 1.0, false, own < byStep && byStep >= byGauge);
    }

    /** Spread of the parts significantly above the known one: one-sided F test at 2.5 %. */
    static boolean contradicts(double own, double ownDf, double known, double knownDf) {
        if (known == 0) {
            return own > 0;
        }
        // Ten million degrees of freedom stand for "exactly known": the quantile no longer changes in the digits that matter.
        return FisherF.upper(own * own / (known * known), ownDf, Math.min(knownDf, 1e7)) < (1 - Verdicts.LEVEL) / 2;
    }

    private record Spread(double sd, double df, boolean known, boolean byStep) {

        Interval interval(double mean, int n) {
            return Intervals.meanKnownSpread(mean, n, sd, df, Verdicts.LEVEL);
        }

        /** Parts needed beyond the n there are, at this spread. */
        OptionalInt more(double mean, int n, Interval limits) {
            OptionalInt all = known ? withKnown(mean, limits) : MoreParts.needed(mean, sd, limits.low(), limits.high(), Verdicts.LEVEL);
            return all.isPresent() && all.getAsInt() > n ? OptionalInt.of(all.getAsInt() - n) : OptionalInt.empty();
        }

        private OptionalInt withKnown(double mean, Interval limits) {
            boolean onAnEdge = mean == limits.low() || mean == limits.high();
            return onAnEdge ? OptionalInt.empty() : MoreParts.first(1, MOST_PARTS, n -> place(interval(mean, n), limits) != Verdict.CANNOT_TELL);
        }
    }

    private static Message reason(Case the, Verdict verdict, Interval interval, int n, OptionalInt more) {
        String range = the.range(interval);
        String parts = n == 1 ? Case.words("counted.one") : Case.words("counted.many", n);
        return switch (verdict) {
            case IN -> Case.message("in", range, parts, the.limits());
            case ABOVE -> Case.message("above", range, parts, the.limits());
            case BELOW -> Case.message("below", range, parts, the.limits());
            default -> more.isPresent() ? Case.message("across", range, parts, the.limits(), String.valueOf(more.getAsInt()))
                    : Case.message("acrossFar", range, parts, the.limits());
        };
    }

    private static String differenceText(Case the, double difference, Interval limits) {
        boolean middle = !Double.isInfinite(limits.low()) && !Double.isInfinite(limits.high());
        if (difference == 0) {
            return Case.words(middle ? "difference.onMiddle" : "difference.onLimit");
        }
        String amount = the.number(Math.abs(difference), 0);
        return Case.words((difference > 0 ? "difference.above" : "difference.below") + (middle ? "Middle" : "Limit"), amount);
    }
}
