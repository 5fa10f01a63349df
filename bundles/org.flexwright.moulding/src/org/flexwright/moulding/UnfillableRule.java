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

/** A mould that cannot be filled through its gate before the mix has set, however long one presses. */
@Component(service = FindingRule.class)
public final class UnfillableRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "moulding.unfillable";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "More volume than the gate lets through before the mix sets";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        WorkingTimes.of(context.trial(), context.kinds())
                .ifPresent(working -> Moulds.fillings(context.trial()).forEach(fill -> check(fill.step(), fill.details(), working, out)));
    }

    private static void check(Step step, Filling d, WorkingTime working, Consumer<Finding> out) {
        GateFill fill = GateFill.of(d, working).orElse(null);
        if (fill == null || d.getPartVolume() == null || !(d.getPartVolume() > 0)) {
            return;
        }
        double limit = 1e6 * fill.flow().limitVolume();
        if (d.getPartVolume() >= limit) {
            out.accept(new Finding(ID, Severity.STOP, step.getId(), "partVolume",
                    Message.of(UnfillableRule.class, "unfillable", Rounded.text(d.getPartVolume(), "cm³"), Rounded.text(limit, "cm³"),
                            Rounded.text(fill.growth(), "")),
                    List.of("partVolume=" + d.getPartVolume(), "viscosity=" + d.getViscosity(), "workingMinutes=" + working.minutes().likely(),
                            "workingGrowth=" + fill.growth(), "gateRadius=" + d.getGateRadius(), "gateLength=" + d.getGateLength(),
                            fill.pressure().feature() + "=" + fill.pressure().value()),
                    ThickeningFlow.SOURCE, Message.of(UnfillableRule.class, "unfillable.remedy")));
        }
    }
}
