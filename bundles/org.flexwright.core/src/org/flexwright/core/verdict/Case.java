package org.flexwright.core.verdict;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.model.Instrument;
import org.flexwright.model.Target;
import org.flexwright.numerics.Interval;

/** What is being judged, and the parts of a judgement that are the same for means and shares. */
record Case(Target target, PropertyDef property, List<PartValue> parts, List<PartValue> reference) {

    String unit() {
        return property.yesNo() ? "%" : property.kind().unit().display();
    }

    String limits() {
        return Limits.text(target, property);
    }

    /** A number with unit, rounded to its half width; plain when that is zero. */
    String number(double value, double halfWidth) {
        return ((halfWidth > 0 && Double.isFinite(halfWidth) ? FieldText.rounded(value, halfWidth) : FieldText.digits(value)) + " " + unit()).strip();
    }

    String range(Interval interval) {
        String range = interval.high() > interval.low() ? FieldText.range(interval.low(), interval.high()) : FieldText.digits(interval.low());
        return (range + " " + unit()).strip();
    }

    static String words(String key, Object... args) {
        return Message.of(Case.class, key, args).text();
    }

    static Message message(String key, Object... args) {
        return Message.of(Case.class, key, args);
    }

    Judgement without(Verdict verdict, String key, Object... args) {
        return new Judgement(verdict, null, 0, null, null, OptionalInt.empty(), message(key, args), notes(), rejected(), failed());
    }

    Judgement notComparable() {
        EnumSet<Condition> differs = EnumSet.noneOf(Condition.class);
        parts.forEach(p -> differs.addAll(p.differs()));
        String names = differs.stream().map(c -> words("condition." + c.name().toLowerCase(Locale.ROOT))).collect(Collectors.joining(", "));
        return without(Verdict.NOT_COMPARABLE, "notComparable", names);
    }

    int failed() {
        return (int) parts.stream().filter(PartValue::failed).count();
    }

    List<String> rejected() {
        return parts.stream().filter(p -> !p.notComparable() && rejects(p)).map(PartValue::partId).toList();
    }

    /** A part is beyond a reject limit when even the kinder bound of its value is. */
    private boolean rejects(PartValue part) {
        if (!part.hasNumber()) {
            return false;
        }
        return target.getRejectBelow() != null && part.high() < target.getRejectBelow() || target.getRejectAbove() != null && part.low() > target.getRejectAbove();
    }

    /** Notes that hold whatever the verdict is. */
    List<Message> notes() {
        List<Message> notes = new ArrayList<>();
        for (PartValue part : parts) {
            if (part.failed()) {
                notes.add(part.readings() == 0 || property.yesNo() ? message("note.failed", part.part())
                        : message("note.failedRead", part.part(), valueText(part)));
            }
            if (!part.notComparable() && rejects(part)) {
                boolean below = target.getRejectBelow() != null && part.high() < target.getRejectBelow();
                notes.add(message(below ? "note.rejectBelow" : "note.rejectAbove", part.part(), valueText(part),
                        number(below ? target.getRejectBelow() : target.getRejectAbove(), 0)));
            }
        }
        long other = parts.stream().filter(PartValue::notComparable).count();
        if (other > 0 && other < parts.size()) {
            notes.add(message("note.leftAside", String.valueOf(other)));
        }
        ages(notes);
        return notes;
    }

    /** How old the parts were, where that could matter: read again much later, read at different ages, or partly unknown. */
    private void ages(List<Message> notes) {
        List<PartValue> aged = parts.stream().filter(p -> !p.notComparable() && p.readings() > 0 && p.age() != null).toList();
        if (aged.isEmpty()) {
            return;
        }
        AgeSpan all = new AgeSpan(aged.stream().mapToDouble(p -> p.age().low()).min().orElseThrow(), aged.stream().mapToDouble(p -> p.age().high()).max()
                .orElseThrow(), aged.stream().mapToInt(p -> p.age().unknown()).sum());
        List<Double> ends = aged.stream().flatMap(p -> p.otherAges().stream()).flatMap(s -> java.util.stream.Stream.of(s.low(), s.high())).toList();
        if (!ends.isEmpty()) {
            String others = AgeSpan.groups(ends).stream().map(AgeSpan::text).collect(Collectors.joining(", "));
            notes.add(message("note.age", all.text(), others));
        }
        if (aged.stream().anyMatch(p -> !p.age().near(all))) {
            notes.add(message("note.agesApart", all.text()));
        }
        if (all.unknown() > 0) {
            notes.add(message("note.ageUnknown", String.valueOf(all.unknown())));
        }
    }

    private String valueText(PartValue part) {
        if (!part.censored()) {
            return number(part.value(), 0);
        }
        if (Double.isInfinite(part.high())) {
            return words("moreThan", number(part.low(), 0));
        }
        return Double.isInfinite(part.low()) ? words("lessThan", number(part.high(), 0)) : range(new Interval(part.low(), part.high()));
    }

    /** A note when the gauge's own error could change the verdict and does not cancel against a reference read with it. */
    void bias(List<Message> notes, List<PartValue> used, Verdict verdict, Interval interval, Interval limits) {
        for (Instrument gauge : used.stream().flatMap(p -> p.instruments().stream()).distinct().toList()) {
            double accuracy = GaugeAmounts.canonical(gauge, gauge.getAccuracy(), property);
            if (!(accuracy > 0) || cancels(gauge) || verdict == Verdict.CANNOT_TELL) {
                continue;
            }
            Interval wider = new Interval(interval.low() - accuracy, interval.high() + accuracy);
            if (MeanVerdict.place(wider, limits) != verdict) {
                notes.add(message("note.bias", gauge.getName() == null ? words("gauge") : gauge.getName(), number(accuracy, 0)));
            }
        }
    }

    /** True when the reference was read with this gauge too: then its own error is in both. */
    boolean cancels(Instrument gauge) {
        return !reference.isEmpty() && reference.stream().allMatch(r -> r.instruments().contains(gauge));
    }

    /** One display step of the coarsest gauge, in the canonical unit; 0 when unknown. */
    double resolution(List<PartValue> used) {
        return used.stream().flatMap(p -> p.instruments().stream()).distinct().mapToDouble(g -> GaugeAmounts.canonical(g, g.getResolution(), property)).filter(r -> r > 0).max().orElse(0);
    }
}
