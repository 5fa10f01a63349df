package org.flexwright.core.verdict;

import java.util.List;
import java.util.OptionalInt;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.model.TargetRule;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;
import org.flexwright.numerics.MoreParts;

/**
 * The rule for yes and no. A part did it when any of its readings says so where it must never be, and when all of them do where it must
 * always be. A failed part counts as no where it must always be; where it must never be it counts only if it was seen to do it.
 */
final class ShareVerdict {
    private static final int MOST_PARTS = 1000;
    private static final double PER_CENT = 100;

    private ShareVerdict() {
    }

    static Judgement judge(Case the, List<PartValue> parts) {
        boolean never = the.target().getRule() == TargetRule.NEVER;
        List<PartValue> counted = parts.stream().filter(p -> never ? p.yes() > 0 || p.readings() > 0 && !p.failed() : p.readings() > 0 || p.failed()).toList();
        if (counted.isEmpty()) {
            return parts.isEmpty() ? the.without(Verdict.NOT_MEASURED, "notMeasured", the.property().title())
                    : the.without(Verdict.FAILED_PART, "allFailed", String.valueOf(parts.size()));
        }
        if (counted.stream().allMatch(p -> p.failed() && p.readings() == 0)) {
            return the.without(Verdict.FAILED_PART, "allFailed", String.valueOf(counted.size()));
        }
        int n = counted.size();
        int exceptions = (int) counted.stream().filter(p -> never ? p.yes() > 0 : p.failed() || p.no() > 0).count();
        Interval wrong = Intervals.clopperPearson(exceptions, n, Verdicts.LEVEL);
        Interval yes = never ? wrong : Intervals.clopperPearson(n - exceptions, n, Verdicts.LEVEL);
        double seen = (double) (never ? exceptions : n - exceptions) / n;
        Verdict outside = never ? Verdict.ABOVE : Verdict.BELOW;
        Outcome outcome = the.target().getAllowedShare() == null ? strict(never, exceptions, n, wrong, outside)
                : allowing(never, exceptions, n, wrong, the.target().getAllowedShare() / PER_CENT, outside);
        double target = never ? allowed(the) : PER_CENT - allowed(the);
        return new Judgement(outcome.verdict, new Interval(PER_CENT * yes.low(), PER_CENT * yes.high()), n, PER_CENT * seen, PER_CENT * seen - target,
                outcome.more, outcome.reason, the.notes(), the.rejected(), the.failed());
    }

    private static double allowed(Case the) {
        return the.target().getAllowedShare() == null ? 0 : the.target().getAllowedShare();
    }

    private record Outcome(Verdict verdict, OptionalInt more, Message reason) {
    }

    private static Outcome strict(boolean never, int exceptions, int n, Interval wrong, Verdict outside) {
        String count = String.valueOf(n);
        if (exceptions > 0) {
            return new Outcome(outside, OptionalInt.empty(), Case.message(never ? "did" : "didNot", String.valueOf(exceptions), count, share(wrong)));
        }
        if (n < Verdicts.FEWEST) {
            int more = Verdicts.FEWEST - n;
            return new Outcome(Verdict.CANNOT_TELL, OptionalInt.of(more), Case.message(never ? "noneFew" : "allFew", count, String.valueOf(more)));
        }
        return new Outcome(Verdict.IN, OptionalInt.empty(), Case.message(never ? "none" : "all", count, percent(wrong.high())));
    }

    private static Outcome allowing(boolean never, int exceptions, int n, Interval wrong, double allowed, Verdict outside) {
        Verdict verdict = place(wrong, allowed, outside);
        OptionalInt more = verdict == Verdict.CANNOT_TELL ? more((double) exceptions / n, n, allowed, outside) : OptionalInt.empty();
        String base = never ? "share.did" : "share.didNot";
        Object[] args = {String.valueOf(exceptions), String.valueOf(n), share(wrong), percent(allowed), more.isPresent() ? String.valueOf(more.getAsInt()) : ""};
        String key = verdict == Verdict.IN ? ".in" : verdict == outside ? ".out" : more.isPresent() ? ".more" : ".far";
        return new Outcome(verdict, more, Case.message(base + key, args));
    }

    private static Verdict place(Interval wrong, double allowed, Verdict outside) {
        return wrong.high() <= allowed ? Verdict.IN : wrong.low() > allowed ? outside : Verdict.CANNOT_TELL;
    }

    /** About how many parts beyond n would settle it if the share seen so far went on; whole parts make it a little uneven. */
    private static OptionalInt more(double share, int n, double allowed, Verdict outside) {
        OptionalInt all = MoreParts.first(n + 1, MOST_PARTS,
                parts -> place(Intervals.clopperPearson((int) Math.round(share * parts), parts, Verdicts.LEVEL), allowed, outside) != Verdict.CANNOT_TELL);
        return all.isPresent() ? OptionalInt.of(all.getAsInt() - n) : OptionalInt.empty();
    }

    private static String share(Interval share) {
        return Case.words("shareRange", FieldText.fixed(PER_CENT * share.low(), 0), FieldText.fixed(PER_CENT * share.high(), 0));
    }

    private static String percent(double share) {
        return FieldText.digits(Math.rint(PER_CENT * share)) + " %";
    }
}
