package org.flexwright.curing;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Steps;
import org.flexwright.curing.data.DemouldDetails;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** Taken out of the mould sooner than planned, or while the leftover was soft. */
@Component(service = FindingRule.class)
public final class DemouldEarlyRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "curing.demould-early";

    private static final Source PLAN = Source.ownRecord("Planned age at demoulding");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Demoulded too soon";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (var found : Steps.of(context.trial(), DemouldStep.ID, DemouldDetails.class)) {
            Step step = found.step();
            Double planned = found.details().getPlannedAge();
            Double actual = found.details().getAge();
            if (planned != null && actual != null && actual < planned) {
                String was = Figures.of(actual, "h", 3);
                String meant = Figures.of(planned, "h", 3);
                out.accept(new Finding(ID, Severity.CAUTION, step.getId(), "age", Say.DEMOULD_EARLY.with(StepNames.of(step), was, meant),
                        List.of("after " + was, "planned " + meant), PLAN, Say.DEMOULD_EARLY_REMEDY.with()));
            }
            if (Boolean.FALSE.equals(found.details().getLeftoverFirm())) {
                out.accept(new Finding(ID, Severity.CAUTION, step.getId(), "leftoverFirm", Say.DEMOULD_SOFT.with(StepNames.of(step)),
                        List.of("leftover soft"), Source.commonPractice(), Say.DEMOULD_SOFT_REMEDY.with()));
            }
        }
    }
}
