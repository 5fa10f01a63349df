package org.flexwright.core.find.rules;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.TrialState;
import org.osgi.service.component.annotations.Component;

/** A trial that is being made or was made while a step still holds copied values nobody looked at. */
@Component(service = FindingRule.class)
public final class UnconfirmedStepRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.unconfirmed-step";
    private static final Source SOURCE = Source.commonPractice("copied values are a guess until somebody confirms them");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("unconfirmed.title");
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        if (context.trial().getState() == TrialState.PLANNED) {
            return;
        }
        for (Step step : context.trial().getSteps()) {
            if (step.isUnconfirmed() && step.getState() != StepState.SKIPPED) {
                out.accept(Say.finding(this, Severity.CAUTION, step, "unconfirmed", "unconfirmed", List.of("unconfirmed", "state=" + context.trial().getState()), SOURCE,
                        Say.name(context.trial()), step.getTitle() == null ? step.getKind() : step.getTitle()));
            }
        }
    }
}
