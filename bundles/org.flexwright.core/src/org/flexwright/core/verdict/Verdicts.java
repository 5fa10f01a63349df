package org.flexwright.core.verdict;

import java.util.List;

import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Target;
import org.flexwright.model.TargetRule;

/**
 * The one rule for verdicts, over parts: 95 % t interval of the mean, or the exact interval of a share (Clopper and Pearson 1934). All
 * of it inside the target is in; all of it outside is above or below; everything else cannot be told.
 */
public final class Verdicts {
    /** Confidence level of every interval. */
    public static final double LEVEL = 0.95;
    /** Fewest parts judged by their own spread. */
    static final int FEWEST = 3;

    private Verdicts() {
    }

    /** Judges by the parts' own spread. */
    public static Judgement judge(Target target, PropertyDef property, List<PartValue> parts) {
        return judge(target, property, parts, null, List.of());
    }

    /** Judges with a spread known from elsewhere, which is then named; {@code spread} may be null. */
    public static Judgement judge(Target target, PropertyDef property, List<PartValue> parts, KnownSpread spread) {
        return judge(target, property, parts, spread, List.of());
    }

    /**
     * Judges.
     *
     * @param spread    spread known from elsewhere, or null
     * @param reference the reference part's values: the bias of a gauge cancels only against what was read with that gauge
     */
    public static Judgement judge(Target target, PropertyDef property, List<PartValue> parts, KnownSpread spread, List<PartValue> reference) {
        Case the = new Case(target, property, parts, reference);
        List<PartValue> comparable = parts.stream().filter(p -> !p.notComparable()).toList();
        boolean share = target.getRule() == TargetRule.NEVER || target.getRule() == TargetRule.ALWAYS;
        if (share != property.yesNo()) {
            return the.without(Verdict.CANNOT_TELL, "ruleDoesNotFit", property.title());
        }
        List<PartValue> read = comparable.stream().filter(p -> p.readings() > 0).toList();
        if (read.isEmpty() && parts.stream().anyMatch(PartValue::notComparable)) {
            return the.notComparable();
        }
        if (share) {
            return ShareVerdict.judge(the, comparable);
        }
        List<PartValue> sound = read.stream().filter(p -> !p.failed()).toList();
        if (sound.isEmpty()) {
            return comparable.isEmpty() ? the.without(Verdict.NOT_MEASURED, "notMeasured", property.title())
                    : the.without(Verdict.FAILED_PART, "allFailed", String.valueOf(comparable.size()));
        }
        return MeanVerdict.judge(the, sound, spread);
    }
}
