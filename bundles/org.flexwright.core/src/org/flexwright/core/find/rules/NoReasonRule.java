package org.flexwright.core.find.rules;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Part;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.osgi.service.component.annotations.Component;

/** A failed or discarded trial, or a failed part, without a word why. */
@Component(service = FindingRule.class)
public final class NoReasonRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.no-reason";
    private static final Source SOURCE = Source.commonPractice("a failure with its reason saves the next trial; without it, it is only a loss");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("noReason.title");
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        Trial trial = context.trial();
        boolean over = trial.getState() == TrialState.FAILED || trial.getState() == TrialState.DISCARDED;
        if (over && Say.blank(trial.getStateReason())) {
            String key = trial.getState() == TrialState.FAILED ? "noReason.failed" : "noReason.discarded";
            out.accept(Say.finding(this, Severity.CAUTION, trial, "stateReason", key, List.of("state=" + trial.getState()), SOURCE, Say.name(trial)));
        }
        for (Part part : trial.getParts()) {
            if (part.isFailed() && Say.blank(part.getFailReason())) {
                out.accept(Say.finding(this, Severity.NOTE, part, "failReason", "noReason.part", List.of("failed"), SOURCE, Say.name(trial), Say.name(part)));
            }
        }
    }
}
