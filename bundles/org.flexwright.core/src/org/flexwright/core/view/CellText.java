package org.flexwright.core.view;

import java.util.List;

import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.numerics.Interval;

/** The value in a cell as text, the same in the window and on the command line. */
public final class CellText {
    /** From so many parts on the interval is a statement and the value is rounded to it. */
    private static final int INTERVAL_FROM = 3;

    private CellText() {
    }

    /** What parts say of a property: mean with its interval where that is a statement, a share with its count, bounds; empty when nothing was read. */
    public static String of(PropertyDef property, Judgement judgement, List<PartValue> parts) {
        if (judgement.mean() == null) {
            return bounds(property, judgement, parts);
        }
        if (property.yesNo()) {
            long did = Math.round(judgement.mean() * judgement.n() / 100);
            Interval share = judgement.interval();
            return Comparison.words("share", String.valueOf(did), String.valueOf(judgement.n()), FieldText.fixed(share.low(), 0), FieldText.fixed(share.high(), 0));
        }
        Interval interval = judgement.interval();
        boolean says = interval != null && (judgement.n() >= INTERVAL_FROM || judgement.verdict() != Verdict.CANNOT_TELL);
        return says ? FieldText.band(interval.low(), judgement.mean(), interval.high(), property.kind(), "") : FieldText.number(judgement.mean(), property.kind(), "");
    }

    private static String bounds(PropertyDef property, Judgement judgement, List<PartValue> parts) {
        List<PartValue> known = parts.stream().filter(p -> p.hasNumber() && !p.failed() && !p.notComparable()).toList();
        if (judgement.n() == 0 || known.isEmpty()) {
            return "";
        }
        double low = known.stream().mapToDouble(PartValue::low).min().orElseThrow();
        double high = known.stream().mapToDouble(PartValue::high).max().orElseThrow();
        return bound(property, low, high);
    }

    /** One piece's value. */
    static String single(PropertyDef property, PartValue value) {
        if (property.yesNo()) {
            return value.readings() == 0 ? "" : Comparison.words(value.yes() == 0 ? "no" : value.no() == 0 ? "yes" : "sometimes");
        }
        if (!value.hasNumber()) {
            return "";
        }
        return value.censored() ? bound(property, value.low(), value.high()) : FieldText.number(value.value(), property.kind(), "");
    }

    private static String bound(PropertyDef property, double low, double high) {
        if (Double.isInfinite(low) && Double.isInfinite(high)) {
            return "";
        }
        if (Double.isInfinite(high)) {
            return "> " + FieldText.number(low, property.kind(), "");
        }
        return Double.isInfinite(low) ? "< " + FieldText.number(high, property.kind(), "")
                : (FieldText.range(low, high) + " " + property.kind().unit().display()).strip();
    }
}
