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
import org.flexwright.core.process.Mixture;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.Steps;
import org.flexwright.mixing.data.FillerBasis;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.Filler;
import org.flexwright.mixing.formula.WeightRatio;
import org.flexwright.model.PartRole;
import org.osgi.service.component.annotations.Component;

/** An amount of filler must say what it is counted on, and the planned grams must agree with it. */
@Component(service = FindingRule.class)
public final class FillerBasisRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.filler-basis";

    private static final Source ALGEBRA = Source.derived("Mass balance");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Filler: per cent of what";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (var found : Steps.of(context.trial(), WeighStep.ID, WeighDetails.class)) {
            WeighDetails details = found.details();
            Mixture mixture = Mixtures.of(found.step());
            Double polymer = polymer(mixture);
            if (details.getFiller() == null || details.getFiller() == 0) {
                continue;
            }
            if (details.getFillerBasis() == FillerBasis.UNSTATED) {
                out.accept(unstated(found, polymer));
            } else {
                grams(found, mixture, polymer).ifPresent(out);
            }
        }
    }

    private static Double polymer(Mixture mixture) {
        Double a = mixture.planned(PartRole.COMPONENT_A);
        Double b = mixture.planned(PartRole.COMPONENT_B);
        return a == null || b == null ? mixture.planned(PartRole.SINGLE) : Double.valueOf(a + b);
    }

    private static Finding unstated(Steps.Detailed<WeighDetails> found, Double polymer) {
        double amount = found.details().getFiller();
        String onPolymer = polymer == null ? Figures.of(amount, "phr") : Figures.of(amount * polymer / 100, "g");
        String onTotal = amount >= 100 ? "impossible" : polymer == null ? Figures.of(100 * amount / (100 - amount), "phr")
                : Figures.of(amount * polymer / (100 - amount), "g");
        return new Finding(ID, Severity.CAUTION, found.step().getId(), "fillerBasis",
                Say.FILLER_BASIS.with(StepNames.of(found.step()), Figures.of(amount, ""), onPolymer, onTotal), List.of("filler " + Figures.of(amount, "")),
                ALGEBRA, Say.FILLER_BASIS_REMEDY.with());
    }

    private static Optional<Finding> grams(Steps.Detailed<WeighDetails> found, Mixture mixture, Double polymer) {
        Double planned = mixture.planned(PartRole.FILLER);
        Optional<WeightRatio> ratio = PlannedRatio.of(found.details(), mixture.planned(PartRole.COMPONENT_A), mixture.planned(PartRole.COMPONENT_B));
        Filler.On on = on(found.details().getFillerBasis());
        boolean needsRatio = on == Filler.On.PART_A || on == Filler.On.PART_B;
        if (planned == null || polymer == null || needsRatio && ratio.isEmpty() || on == Filler.On.TOTAL && found.details().getFiller() >= 100) {
            return Optional.empty();
        }
        double stated = Filler.of(found.details().getFiller(), on, ratio.orElse(new WeightRatio(1))).phr() * polymer / 100;
        if (Math.abs(planned - stated) <= PartsRule.ROUNDING * stated) {
            return Optional.empty();
        }
        return Optional.of(new Finding(ID, Severity.CAUTION, found.step().getId(), "filler",
                Say.FILLER_GRAMS.with(StepNames.of(found.step()), Figures.of(planned, "g"), Figures.of(stated, "g")),
                List.of("planned " + Figures.of(planned, "g", 6), "stated " + Figures.of(stated, "g", 6)), ALGEBRA,
                Say.FILLER_GRAMS_REMEDY.with(Figures.of(stated, "g"))));
    }

    private static Filler.On on(FillerBasis basis) {
        return switch (basis) {
            case OF_TOTAL -> Filler.On.TOTAL;
            case OF_A -> Filler.On.PART_A;
            case OF_B -> Filler.On.PART_B;
            case PHR, UNSTATED -> Filler.On.PHR;
        };
    }
}
