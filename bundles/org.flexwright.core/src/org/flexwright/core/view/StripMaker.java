package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.Collection;
import java.util.DoubleSummaryStatistics;
import java.util.List;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;
import org.flexwright.numerics.Interval;

/**
 * Makes the strips of one row on one scale. The scale holds the target's edges, every part and the reference with some room; intervals
 * wider than that are cut off, so that one wild interval does not squeeze the rest.
 *
 * @param scale     null when the row has no number
 * @param band      the target; null when it has no limits
 * @param reference the reference part's value, or null
 */
record StripMaker(PropertyDef property, Strip.Scale scale, Interval band, Double reference) {
    private static final double ROOM = 0.15;

    static StripMaker of(Target target, PropertyDef property, Collection<List<PartValue>> parts, Collection<Judgement> judgements, List<PartValue> reference) {
        Double diamond = reference.stream().filter(p -> !p.notComparable() && p.hasNumber() && !p.censored()).map(PartValue::value).findFirst().orElse(null);
        if (property.yesNo()) {
            boolean some = judgements.stream().anyMatch(j -> j.interval() != null);
            return new StripMaker(property, some ? new Strip.Scale(0, 100) : null, allowed(target), null);
        }
        Interval band = Limits.of(target);
        DoubleSummaryStatistics seen = new DoubleSummaryStatistics();
        parts.forEach(values -> values.stream().filter(p -> p.hasNumber() && !p.notComparable()).forEach(p -> {
            accept(seen, p.low());
            accept(seen, p.high());
        }));
        if (diamond != null) {
            seen.accept(diamond);
        }
        if (band != null) {
            accept(seen, band.low());
            accept(seen, band.high());
        }
        return new StripMaker(property, seen.getCount() == 0 ? null : withRoom(seen.getMin(), seen.getMax()), band, diamond);
    }

    private static void accept(DoubleSummaryStatistics seen, double value) {
        if (Double.isFinite(value)) {
            seen.accept(value);
        }
    }

    private static Strip.Scale withRoom(double low, double high) {
        double room = high > low ? ROOM * (high - low) : Math.max(Math.abs(low) * ROOM, ROOM);
        // what never was below 0 gets no room there: no force, mass or time is
        return new Strip.Scale(low >= 0 ? Math.max(0, low - room) : low - room, high + room);
    }

    private static Interval allowed(Target target) {
        double share = target.getAllowedShare() == null ? 0 : target.getAllowedShare();
        return target.getRule() == TargetRule.ALWAYS ? new Interval(100 - share, 100) : new Interval(0, share);
    }

    private double bandLow() {
        return band == null ? scale.high() : Math.max(band.low(), scale.low());
    }

    private double bandHigh() {
        return band == null ? scale.high() : Math.min(band.high(), scale.high());
    }

    /** The strip of the reference's own column. */
    Strip ofReference() {
        return scale == null || reference == null ? null : new Strip(scale, bandLow(), bandHigh(), null, null, false, false, null, List.of(), reference);
    }

    Strip of(Judgement judgement, List<PartValue> parts) {
        if (scale == null || judgement.n() == 0 && parts.stream().noneMatch(PartValue::hasNumber)) {
            return null;
        }
        Interval interval = judgement.interval();
        Double low = interval == null ? null : Math.max(interval.low(), scale.low());
        Double high = interval == null ? null : Math.min(interval.high(), scale.high());
        return new Strip(scale, bandLow(), bandHigh(), low, high, interval != null && interval.low() < scale.low(), interval != null && interval.high() > scale.high(),
                judgement.mean(), dots(parts), reference);
    }

    private static List<Strip.Dot> dots(List<PartValue> parts) {
        List<Strip.Dot> dots = new ArrayList<>();
        for (PartValue part : parts) {
            if (!part.hasNumber() || part.notComparable() || Double.isInfinite(part.low()) && Double.isInfinite(part.high())) {
                continue;
            }
            boolean above = Double.isInfinite(part.high());
            boolean below = Double.isInfinite(part.low());
            double at = above ? part.low() : below ? part.high() : (part.low() + part.high()) / 2;
            dots.add(new Strip.Dot(at, part.part(), part.failed() ? Strip.Mark.FAILED : above ? Strip.Mark.MORE_THAN : below ? Strip.Mark.LESS_THAN : Strip.Mark.VALUE));
        }
        return dots;
    }
}
