package org.flexwright.mixing;

import java.util.List;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixture;
import org.flexwright.core.process.Mixtures;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** More pigment paste than the usual 1 to 3 % of the mixture. */
@Component(service = FindingRule.class)
public final class PigmentRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.pigment";

    private static final double USUAL = 0.03;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Much pigment paste";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Step step : context.trial().getSteps()) {
            Mixture mixture = Mixtures.of(step);
            Double pigment = mixture.planned(PartRole.PIGMENT);
            Double total = mixture.plannedTotal();
            if (WeighStep.ID.equals(step.getKind()) && pigment != null && pigment > USUAL * total) {
                out.accept(new Finding(ID, Severity.CAUTION, step.getId(), "", Say.PIGMENT_MUCH.with(StepNames.of(step), Figures.percent(pigment / total)),
                        List.of("pigment " + Figures.of(pigment, "g", 6), "total " + Figures.of(total, "g", 6)),
                        Source.commonPractice("1 to 3 % of paste"), Say.PIGMENT_MUCH_REMEDY.with()));
            }
        }
    }
}
