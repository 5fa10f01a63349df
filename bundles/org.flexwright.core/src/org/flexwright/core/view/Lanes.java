package org.flexwright.core.view;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;

import org.flexwright.core.Message;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.verdict.PartBudget;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.model.Target;
import org.flexwright.numerics.Interval;

/**
 * Every reading behind a verdict on one scale: a lane for the reference, one a part, one for the mean of the parts; the target as a band
 * behind all. Numbers in the property's canonical unit.
 *
 * @param title property and target
 * @param scale common to all lanes
 * @param axis  the same scale with round numbers and unit
 * @param band  the target, cut off at the scale; null when it has no limits
 * @param lanes from top to bottom
 */
public record Lanes(String title, Strip.Scale scale, Axis axis, Interval band, List<Lane> lanes) {
    public Lanes {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(scale, "scale");
        lanes = List.copyOf(lanes);
    }

    /** What a lane is about. */
    public enum Kind {
        /** The reference part. */
        REFERENCE,
        /** A part that counts. */
        PART,
        /** A part that failed or does not compare. */
        ASIDE,
        /** The mean of the parts. */
        MEAN
    }

    /**
     * One lane.
     *
     * @param kind     what it is about
     * @param label    code of the part
     * @param readings every single reading
     * @param value    median of the readings, or the mean of the parts; NaN when only a bound is known
     * @param interval how sure the value is, 95 %; null when that is not known
     * @param words    the same in words
     */
    public record Lane(Kind kind, String label, List<Double> readings, double value, Interval interval, String words) {
        public Lane {
            readings = List.copyOf(readings);
        }
    }

    /** The lanes of a target; empty when nothing was read that is a number. */
    public static Optional<Lanes> of(Target target, PropertyDef property, List<PartValue> parts, Judgement judgement, List<PartValue> reference) {
        List<Lane> lanes = new ArrayList<>();
        reference.stream().filter(PartValue::hasNumber).forEach(part -> lanes.add(lane(part, property, part.notComparable() ? Kind.ASIDE : Kind.REFERENCE)));
        parts.stream().filter(PartValue::hasNumber).forEach(part -> lanes.add(lane(part, property, part.failed() || part.notComparable() ? Kind.ASIDE : Kind.PART)));
        if (lanes.isEmpty() || property.yesNo()) {
            return Optional.empty();
        }
        if (judgement.mean() != null) {
            lanes.add(new Lane(Kind.MEAN, words("mean"), List.of(), judgement.mean(), judgement.interval(), CellText.of(property, judgement, parts) + ", " + judgement.verdict().word()));
        }
        Interval limits = Limits.of(target);
        DoubleSummaryStatistics seen = new DoubleSummaryStatistics();
        lanes.forEach(lane -> lane.readings().forEach(seen::accept));
        lanes.stream().mapToDouble(Lane::value).filter(Double::isFinite).forEach(seen::accept);
        if (limits != null) {
            DoubleStream.of(limits.low(), limits.high()).filter(Double::isFinite).forEach(seen::accept);
        }
        double room = Math.max(0.15 * (seen.getMax() - seen.getMin()), 1e-9 + 0.001 * Math.abs(seen.getMax()));
        double low = seen.getMin() >= 0 ? Math.max(0, seen.getMin() - room) : seen.getMin() - room;
        Axis axis = Axis.over(property.title(), property.kind().unit().display(), low, seen.getMax() + room);
        Strip.Scale scale = new Strip.Scale(axis.min(), axis.max());
        Interval band = limits == null || limits.low() >= scale.high() || limits.high() <= scale.low() ? null
                : new Interval(Math.max(limits.low(), scale.low()), Math.min(limits.high(), scale.high()));
        return Optional.of(new Lanes(property.title() + ": " + Limits.text(target, property), scale, axis, band, lanes));
    }

    private static Lane lane(PartValue part, PropertyDef property, Kind kind) {
        Optional<PartBudget> budget = PartBudget.of(part, property);
        Interval interval = budget.flatMap(PartBudget::expanded).map(half -> Interval.around(part.value(), half)).orElse(null);
        String text = budget.map(PartBudget::text).orElseGet(() -> CellText.single(property, part));
        String word = kind == Kind.REFERENCE ? words("reference") : part.failed() ? words("failed") : kind == Kind.ASIDE ? words("aside") : "";
        return new Lane(kind, part.part(), DoubleStream.of(part.numbers()).boxed().toList(), part.value(), interval, word.isEmpty() ? text : text + ", " + word);
    }

    private static String words(String key) {
        return Message.of(Lanes.class, "lanes." + key).text();
    }
}
