package org.flexwright.mixing;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** Materials weighed in another order than the step lists them: a recipe that is to be repeated has to say which it was. */
@Component(service = FindingRule.class)
public final class AddingOrderRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.adding-order";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Order of adding";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Step step : context.trial().getSteps()) {
            if (WeighStep.ID.equals(step.getKind())) {
                AddingOrder.of(step).filter(order -> !order.kept()).ifPresent(order -> {
                    String done = AddingOrder.words(order.done());
                    String meant = AddingOrder.words(order.meant());
                    out.accept(new Finding(ID, Severity.NOTE, step.getId(), "", Say.ORDER_OTHER.with(StepNames.of(step), done, meant), List.of("done " + done, "meant " + meant),
                            Source.commonPractice("powder wets out, and a cup scrapes clean, better in one order than in the other"), Say.ORDER_OTHER_REMEDY.with()));
                });
            }
        }
    }
}
