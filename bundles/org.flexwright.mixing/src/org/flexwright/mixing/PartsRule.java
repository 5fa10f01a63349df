package org.flexwright.mixing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixtures;
import org.flexwright.mixing.formulation.FormulationPlan;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** Parts given to materials: a share must say of what, and planned grams must agree with the parts. What is weighed is not looked at. */
@Component(service = FindingRule.class)
public final class PartsRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.parts";

    private static final Source ALGEBRA = Source.derived("Mass balance");
    /** Planned grams may be rounded by this share; common practice, no source. */
    static final double ROUNDING = 0.03;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Parts of a formulation";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        context.trial().getSteps().stream().filter(s -> WeighStep.ID.equals(s.getKind())).forEach(step -> FormulationPlan.of(step).ifPresent(plan -> check(step, plan, out)));
    }

    private static void check(Step step, FormulationPlan plan, Consumer<Finding> out) {
        boolean asked = false;
        for (MaterialUse use : step.getUses()) {
            if (use.getParts() != null && use.getPartsOf() == PartsOf.UNSTATED) {
                Map<PartsOf, Double> readings = FormulationPlan.readings(step, use);
                asked |= !readings.isEmpty();
                if (!readings.isEmpty()) {
                    out.accept(ofWhat(step, use, readings));
                }
            }
            grams(step, use, plan).ifPresent(out);
        }
        boolean planned = step.getUses().stream().anyMatch(use -> use.getPlanned() != null || Mixtures.grams(use) != null);
        if (!asked && plan.problem() != null) {
            out.accept(new Finding(ID, planned ? Severity.NOTE : Severity.CAUTION, step.getId(), "", Say.PARTS_PROBLEM.with(StepNames.of(step), plan.problem().text()),
                    List.of(plan.problem().key()), ALGEBRA, Say.PARTS_PROBLEM_REMEDY.with()));
        }
    }

    private static Finding ofWhat(Step step, MaterialUse use, Map<PartsOf, Double> readings) {
        String each = readings.entrySet().stream().map(e -> Say.valueOf("MEANS_" + e.getKey().getName()).with(Figures.of(e.getValue(), "g")).text()).collect(Collectors.joining(", "));
        return new Finding(ID, Severity.CAUTION, use.getId(), "partsOf", Say.PARTS_OF_WHAT.with(StepNames.of(step), Figures.of(use.getParts(), ""), WeighAdvice.name(use), each),
                List.of("parts " + Figures.of(use.getParts(), "", 6)), ALGEBRA, Say.PARTS_OF_WHAT_REMEDY.with());
    }

    private static Optional<Finding> grams(Step step, MaterialUse use, FormulationPlan plan) {
        Double follows = plan.grams(use);
        if (follows == null || use.getPlanned() == null || Math.abs(use.getPlanned() - follows) <= ROUNDING * follows) {
            return Optional.empty();
        }
        return Optional.of(new Finding(ID, Severity.CAUTION, use.getId(), "planned",
                Say.PARTS_GRAMS.with(StepNames.of(step), Figures.of(use.getPlanned(), "g"), WeighAdvice.name(use), Figures.of(follows, "g")),
                List.of("planned " + Figures.of(use.getPlanned(), "g", 6), "parts " + Figures.of(follows, "g", 6)), ALGEBRA, Say.PARTS_GRAMS_REMEDY.with(Figures.of(follows, "g"))));
    }
}
