package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.mixing.WeighAdvice.Target;
import org.flexwright.model.PartRole;

/** The weighing advice as lines: {@code targetA, targetB, ratio, deviation, addA or addB}, then {@code target1} and so on for the rest. */
final class WeighAdviceLines {

    private static final Source BALANCE = Source.derived("Mass balance of what is planned and weighed");

    private WeighAdviceLines() {
    }

    static List<StepAdvice> of(WeighAdvice advice) {
        List<StepAdvice> lines = new ArrayList<>();
        for (int i = 0; i < advice.targets().size(); i++) {
            target(advice.targets().get(i), advice, lines);
        }
        if (advice.ratio() != null) {
            lines.add(line("ratio", "B to 100 g of A, planned", 100 * advice.ratio().bPerA(), "g", null));
        }
        if (advice.weighed() != null) {
            lines.add(line("trueRatio", "B to 100 g of A, in the cup", 100 * advice.weighed().actual().bPerA(), "g", null));
            lines.add(line("deviation", "Deviation of B to A", 100 * advice.weighed().deviation(), "%", remark(advice)));
            advice.mends().ifPresent(t -> lines.add(line("add" + mark(t, advice), "Add of " + WeighAdvice.name(t.use()), advice.addition(), "g", null)));
        }
        return lines;
    }

    private static void target(Target target, WeighAdvice advice, List<StepAdvice> lines) {
        if (target.now() != null) {
            boolean next = advice.next().filter(n -> n.use() == target.use()).isPresent() && advice.weighed() == null;
            lines.add(line("target" + mark(target, advice), "Target of " + WeighAdvice.name(target.use()), target.now(), "g",
                    next ? remark(advice) : null));
        }
    }

    /** A or B for the first use that is that component, else the place among the uses from 1. */
    private static String mark(Target target, WeighAdvice advice) {
        PartRole role = target.use().getRole();
        boolean first = advice.targets().stream().filter(t -> t.use().getRole() == role).findFirst().orElseThrow() == target;
        return first && role == PartRole.COMPONENT_A ? "A" : first && role == PartRole.COMPONENT_B ? "B" : String.valueOf(advice.targets().indexOf(target) + 1);
    }

    private static StepAdvice line(String name, String label, double value, String unit, Remark remark) {
        return new StepAdvice(name, label, Estimate.exact(value, BALANCE), unit, remark);
    }

    private static Remark remark(WeighAdvice advice) {
        boolean twice = advice.outside() && Math.abs(advice.weighed().deviation()) > 2 * advice.ownLimit();
        Severity severity = twice ? Severity.STOP : advice.outside() ? Severity.CAUTION : Severity.NOTE;
        return new Remark(severity, advice.sentence(), Source.commonPractice("own limit of the ratio"));
    }
}
