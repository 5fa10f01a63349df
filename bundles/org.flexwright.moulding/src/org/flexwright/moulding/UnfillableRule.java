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
import org.flexwright.core.flow.RoundChannel;
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
        Moulds.fillings(context.trial()).forEach(fill -> check(fill.step(), fill.details(), out));
    }

    private void check(Step step, Filling d, Consumer<Finding> out) {
        Entered pressure = Entered.of("Pressure", d.getPlannedPressure(), d.getActualPressure());
        if (pressure == null || !allPositive(pressure.value(), d.getWorkingMinutes(), d.getViscosity(), d.getGateRadius(), d.getGateLength(),
                d.getPartVolume())) {
            return;
        }
        double growth = d.getWorkingGrowth() == null ? ThickeningFlow.DOUBLING : d.getWorkingGrowth();
        if (!(growth > 1)) {
            return;
        }
        double timeConstant = ThickeningFlow.timeConstant(60 * d.getWorkingMinutes(), growth);
        ThickeningFlow flow = ThickeningFlow.through(new RoundChannel(d.getGateRadius() / 1e3, d.getGateLength() / 1e3), d.getViscosity(),
                timeConstant, 1e3 * pressure.value());
        double limit = 1e6 * flow.limitVolume();
        if (d.getPartVolume() >= limit) {
            out.accept(new Finding(ID, Severity.STOP, step.getId(), "partVolume",
                    Message.of(UnfillableRule.class, "unfillable", Rounded.text(d.getPartVolume(), "cm3"), Rounded.text(limit, "cm3"),
                            Rounded.text(growth, "")),
                    List.of("partVolume=" + d.getPartVolume(), "viscosity=" + d.getViscosity(), "workingMinutes=" + d.getWorkingMinutes(),
                            "workingGrowth=" + growth, "gateRadius=" + d.getGateRadius(), "gateLength=" + d.getGateLength(),
                            pressure.feature() + "=" + pressure.value()),
                    ThickeningFlow.SOURCE, Message.of(UnfillableRule.class, "unfillable.remedy")));
        }
    }

    private static boolean allPositive(Double... values) {
        for (Double value : values) {
            if (value == null || !(value > 0)) {
                return false;
            }
        }
        return true;
    }
}
