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
import org.flexwright.core.trial.Stock;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** A lot used, by itself or in a premix, or meant to be used, after its date. It blocks nothing. */
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
            boolean past = step.getStartedAt() != null || context.trial().getMadeAt() != null;
            for (MaterialUse use : step.getUses()) {
                List<MaterialUse> materials = use.getPremix() == null ? List.of(use) : use.getPremix().getIngredients();
                materials.stream().filter(m -> m.getLot() != null && Stock.expired(m.getLot(), day)).forEach(m -> out.accept(expired(context, use, m, day, past)));
            }
        }
    }

    private Finding expired(RuleContext context, MaterialUse use, MaterialUse material, LocalDate day, boolean past) {
        Lot lot = material.getLot();
        return Say.finding(this, Severity.CAUTION, use, "lot", past ? "expired.used" : "expired.planned",
                List.of("lot=" + lot.getId(), "expires=" + lot.getExpires(), past ? "used=" + day : "planned"), SOURCE, Say.name(context.trial()), Say.lot(material, lot),
                lot.getExpires(), day);
    }

    private static LocalDate day(Trial trial, Step step, Instant now) {
        Instant at = step.getStartedAt() != null ? step.getStartedAt() : trial.getMadeAt() != null ? trial.getMadeAt() : now;
        return at.atZone(ZoneId.systemDefault()).toLocalDate();
    }
}
