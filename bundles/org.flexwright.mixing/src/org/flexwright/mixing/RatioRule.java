package org.flexwright.mixing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.Weighed;
import org.flexwright.mixing.formula.WeightRatio;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.flexwright.core.process.Mixtures;
import org.osgi.service.component.annotations.Component;

/** The ratio in the cup, and that of the plan, against the ratio meant. Caution above the own limit, stop above twice of it. */
@Component(service = FindingRule.class)
public final class RatioRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.ratio";

    private static final Source LIMIT = Source.commonPractice("own limit of the ratio; stop above twice of it");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Mixing ratio outside the own limit";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Step step : context.trial().getSteps()) {
            if (WeighStep.ID.equals(step.getKind())) {
                WeighDetails details = step.getDetails() instanceof WeighDetails d ? d : null;
                WeighAdvice advice = WeighAdvice.of(step);
                if (PlannedRatio.lacksDensity(details)) {
                    out.accept(density(step, details));
                }
                if (advice.outside()) {
                    out.accept(weighed(step, advice));
                } else if (advice.weighed() == null) {
                    planned(step, details, advice.ownLimit()).ifPresent(out);
                }
            }
        }
    }

    private static Finding weighed(Step step, WeighAdvice advice) {
        Weighed weighed = advice.weighed();
        boolean twice = Math.abs(weighed.deviation()) > 2 * advice.ownLimit();
        String shortOf = weighed.shortOf().name();
        return new Finding(ID, twice ? Severity.STOP : Severity.CAUTION, step.getId(), "ratioB",
                Say.RATIO_OFF.with(StepNames.of(step), Figures.percent(weighed.deviation()), Figures.percent(advice.ownLimit()), shortOf),
                List.of("A " + Figures.of(weighed.gramsA(), "g", 6), "B " + Figures.of(weighed.gramsB(), "g", 6),
                        "planned B to 100 g of A " + Figures.of(100 * advice.ratio().bPerA(), "g", 6), "own limit " + Figures.percent(advice.ownLimit())),
                LIMIT, Say.RATIO_OFF_REMEDY.with(Figures.of(advice.addition(), "g", 3), advice.mends().map(t -> WeighAdvice.name(t.use())).orElse(shortOf)));
    }

    private static Optional<Finding> planned(Step step, WeighDetails details, double limit) {
        Double a = Mixtures.of(step).planned(PartRole.COMPONENT_A);
        Optional<WeightRatio> grams = PlannedRatio.ofGrams(a, Mixtures.of(step).planned(PartRole.COMPONENT_B));
        Optional<WeightRatio> stated = PlannedRatio.stated(details);
        if (grams.isEmpty() || stated.isEmpty() || Math.abs(grams.get().bPerA() / stated.get().bPerA() - 1) <= limit) {
            return Optional.empty();
        }
        String is = Figures.of(100 * grams.get().bPerA(), "g");
        String meant = Figures.of(100 * stated.get().bPerA(), "g");
        return Optional.of(new Finding(ID, Severity.CAUTION, step.getId(), "ratioB", Say.PLAN_RATIO.with(StepNames.of(step), is, meant),
                List.of("planned grams " + is, "ratio " + meant), LIMIT, Say.PLAN_RATIO_REMEDY.with(Figures.of(stated.get().bFor(a), "g"))));
    }

    private static Finding density(Step step, WeighDetails details) {
        boolean a = details.getDensityA() == null;
        return new Finding(ID, Severity.CAUTION, step.getId(), a ? "densityA" : "densityB",
                Say.DENSITY_MISSING.with(StepNames.of(step), a ? "the density of A" : "the density of B"),
                List.of("ratio " + Figures.of(details.getRatioA(), "") + ":" + Figures.of(details.getRatioB(), "") + " by volume"),
                Source.derived("mB/mA = (vB/vA)(rhoB/rhoA)"), Say.DENSITY_MISSING_REMEDY.with());
    }
}
