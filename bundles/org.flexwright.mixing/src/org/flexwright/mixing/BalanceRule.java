package org.flexwright.mixing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixture;
import org.flexwright.core.process.Mixtures;
import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** A balance too coarse for the ratio: its step alone uses up half of the own limit. */
@Component(service = FindingRule.class)
public final class BalanceRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.balance";

    private static final Source ROUNDING = Source.fromMemory("JCGM 100:2008, 4.3.7: rectangular distribution of a rounded reading");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Balance too coarse for the ratio";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        context.trial().getSteps().stream().filter(s -> WeighStep.ID.equals(s.getKind())).forEach(s -> check(s).ifPresent(out));
    }

    private static Optional<Finding> check(Step step) {
        OptionalDouble coarsest = Balances.coarsest(step);
        Mixture mixture = Mixtures.of(step);
        Double a = grams(mixture, PartRole.COMPONENT_A);
        Double b = grams(mixture, PartRole.COMPONENT_B);
        if (coarsest.isEmpty() || a == null || b == null || !(a > 0) || !(b > 0)) {
            return Optional.empty();
        }
        double resolution = coarsest.getAsDouble();
        double limit = WeighAdvice.of(step).ownLimit();
        double u = ScaleReading.ofRatio(resolution, a, b);
        if (u <= WeighAdvice.BALANCE_SHARE * limit) {
            return Optional.empty();
        }
        return Optional.of(new Finding(ID, Severity.CAUTION, step.getId(), "ownLimit",
                Say.BALANCE_COARSE.with(StepNames.of(step), Figures.of(resolution, "g"), Figures.percent(u), Figures.percent(limit)),
                List.of("step " + Figures.of(resolution, "g"), "A " + Figures.of(a, "g", 6), "B " + Figures.of(b, "g", 6), "own limit " + Figures.percent(limit)),
                ROUNDING, Say.BALANCE_COARSE_REMEDY.with(Figures.of(ScaleReading.smallestMass(resolution, WeighAdvice.BALANCE_SHARE * limit), "g", 2))));
    }

    private static Double grams(Mixture mixture, PartRole role) {
        return mixture.actual(role) == null ? mixture.planned(role) : mixture.actual(role);
    }
}
