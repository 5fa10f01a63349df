package org.flexwright.core.verdict;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Target;
import org.flexwright.numerics.Interval;

/** A target's limits as numbers and as words. */
public final class Limits {

    private Limits() {
    }

    /** Where a numeric target lets the mean lie, in the property's canonical unit; null when a number is missing or the ends are the wrong way round. */
    public static Interval of(Target target) {
        Double low = null;
        Double high = null;
        switch (target.getRule()) {
            case AT_LEAST -> {
                low = target.getLow();
                high = Double.POSITIVE_INFINITY;
            }
            case AT_MOST -> {
                low = Double.NEGATIVE_INFINITY;
                high = target.getHigh();
            }
            case BETWEEN -> {
                low = target.getLow();
                high = target.getHigh();
            }
            case NOMINAL -> {
                if (target.getNominal() != null && target.getTolerance() != null) {
                    low = target.getNominal() - Math.abs(target.getTolerance());
                    high = target.getNominal() + Math.abs(target.getTolerance());
                }
            }
            case NEVER, ALWAYS -> {
                return null;
            }
        }
        return low == null || high == null || low > high ? null : new Interval(low, high);
    }

    /** From where the difference is counted: the middle, or the one limit there is. */
    static double origin(Interval limits) {
        if (Double.isInfinite(limits.low())) {
            return limits.high();
        }
        return Double.isInfinite(limits.high()) ? limits.low() : (limits.low() + limits.high()) / 2;
    }

    /** The target in words: {@code 42 ± 3 Shore A}, {@code 0.7 … 0.9 N}, {@code at least 0.6}, {@code never}. */
    public static String text(Target target, PropertyDef property) {
        String unit = property.kind().unit().display();
        String text = switch (target.getRule()) {
            case AT_LEAST -> words("target.atLeast", digits(target.getLow()), unit);
            case AT_MOST -> words("target.atMost", digits(target.getHigh()), unit);
            case BETWEEN -> words("target.between", digits(target.getLow()), digits(target.getHigh()), unit);
            case NOMINAL -> words("target.nominal", digits(target.getNominal()), digits(target.getTolerance()), unit);
            case NEVER -> target.getAllowedShare() == null ? words("target.never") : words("target.neverBut", digits(target.getAllowedShare()));
            case ALWAYS -> target.getAllowedShare() == null ? words("target.always") : words("target.alwaysBut", digits(target.getAllowedShare()));
        };
        return text.strip();
    }

    private static String digits(Double value) {
        return value == null ? words("target.missing") : FieldText.digits(value);
    }

    private static String words(String key, Object... args) {
        return Message.of(Limits.class, key, args).text();
    }
}
