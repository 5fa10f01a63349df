package org.flexwright.moulding;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.process.WorkingTimes;
import org.flexwright.model.Step;
import org.flexwright.moulding.data.Filling;
import org.osgi.service.component.annotations.Component;

/** Filling that takes too much of the mix's working time, or ends after it. */
@Component(service = FindingRule.class)
public final class FillTimeRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "moulding.fill-time";
    /** Largest share of the working time that filling usually takes. */
    static final double USUAL_SHARE = 1.0 / 3;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Fill time against working time";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        WorkingTimes.of(context.trial(), context.kinds())
                .ifPresent(working -> Moulds.fillings(context.trial()).forEach(fill -> check(fill.step(), fill.details(), working, out)));
    }

    private void check(Step step, Filling details, WorkingTime working, Consumer<Finding> out) {
        Entered fill = Entered.of("FillMinutes", details.getPlannedFillMinutes(), details.getActualFillMinutes());
        if (fill == null) {
            return;
        }
        double start = fill.isActual() || step.getPlannedStart() == null ? 0 : Math.max(0, step.getPlannedStart());
        double end = start + fill.value();
        double likely = working.minutes().likely();
        if (end > likely) {
            String key = start > 0 ? "fill-time.ends-late" : "fill-time.whole";
            out.accept(finding(step, fill, Severity.STOP, Message.of(FillTimeRule.class, key, Rounded.text(end, "min"), working.text()), working, start));
        } else if (end > working.minutes().low()) {
            out.accept(finding(step, fill, Severity.CAUTION, Message.of(FillTimeRule.class, "fill-time.perhaps-late", Rounded.text(end, "min"), working.text()),
                    working, start));
        } else if (fill.value() > likely * USUAL_SHARE) {
            out.accept(finding(step, fill, Severity.CAUTION, Message.of(FillTimeRule.class, "fill-time.third", Rounded.text(fill.value(), "min"),
                    Rounded.text(100 * fill.value() / likely, "%"), working.text()), working, start));
        }
    }

    private Finding finding(Step step, Entered fill, Severity severity, Message message, WorkingTime working, double start) {
        return new Finding(ID, severity, step.getId(), fill.feature(), message,
                List.of(fill.feature() + "=" + fill.value(), "workingMinutes=" + working.text(), "start=" + start),
                Source.commonPractice("fill within a third of the working time, never past its end"), Message.of(FillTimeRule.class, "fill-time.remedy"));
    }
}
