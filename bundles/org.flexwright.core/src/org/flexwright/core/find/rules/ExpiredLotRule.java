package org.flexwright.core.find.rules;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** A lot used, or meant to be used, after its date. It blocks nothing. */
@Component(service = FindingRule.class)
public final class ExpiredLotRule implements FindingRule {
    /** Id of this rule. */
    public static final String ID = "core.expired-lot";
    private static final Source SOURCE = Source.commonPractice("the date on the container is the supplier’s promise; what is older is used at the maker’s own risk");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.words("expired.title");
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Step step : context.trial().getSteps()) {
            if (step.getState() == StepState.SKIPPED) {
                continue;
            }
            LocalDate day = day(context.trial(), step, context.now());
            for (MaterialUse use : step.getUses()) {
                Lot lot = use.getLot();
                if (lot != null && lot.getExpires() != null && lot.getExpires().isBefore(day)) {
                    boolean past = step.getStartedAt() != null || context.trial().getMadeAt() != null;
                    out.accept(Say.finding(this, Severity.CAUTION, use, "lot", past ? "expired.used" : "expired.planned",
                            List.of("lot=" + lot.getId(), "expires=" + lot.getExpires(), past ? "used=" + day : "planned"), SOURCE, Say.name(context.trial()), lotName(use, lot),
                            lot.getExpires(), day));
                }
            }
        }
    }

    private static LocalDate day(Trial trial, Step step, Instant now) {
        Instant at = step.getStartedAt() != null ? step.getStartedAt() : trial.getMadeAt() != null ? trial.getMadeAt() : now;
        return at.atZone(ZoneId.systemDefault()).toLocalDate();
    }

    private static String lotName(MaterialUse use, Lot lot) {
        String code = lot.getCode() == null ? Say.words("unnamed") : lot.getCode();
        return use.getGrade() == null || use.getGrade().getName() == null ? code : Say.words("lotOf", code, use.getGrade().getName());
    }
}
