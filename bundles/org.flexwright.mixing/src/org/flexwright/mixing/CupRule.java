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
import org.flexwright.core.process.Steps;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** Foam needs room: the mixture should not fill more than a third of the cup. */
@Component(service = FindingRule.class)
public final class CupRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.cup";

    private static final Source USUAL = Source.commonPractice("cup a quarter to a third full for degassing");

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Cup too small for degassing";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (var found : Steps.of(context.trial(), DegasStep.ID, DegasDetails.class)) {
            check(found.step(), found.details().getCupVolume(), found.details().getMixVolume()).ifPresent(out);
        }
    }

    private static Optional<Finding> check(Step step, Double cup, Double mixture) {
        String name = StepNames.of(step);
        if (cup == null || mixture == null || !(cup > 0)) {
            return Optional.of(new Finding(ID, Severity.NOTE, step.getId(), cup == null ? "cupVolume" : "mixVolume", Say.CUP_UNKNOWN.with(name),
                    List.of("cup " + cup, "mixture " + mixture), USUAL, Say.CUP_UNKNOWN_REMEDY.with()));
        }
        double filled = mixture / cup;
        if (filled <= CupRoom.THIRD) {
            return Optional.empty();
        }
        List<String> restsOn = List.of("cup " + Figures.of(cup, "ml", 6), "mixture " + Figures.of(mixture, "ml", 6));
        boolean over = filled > 1;
        return Optional.of(new Finding(ID, over ? Severity.STOP : Severity.CAUTION, step.getId(), "cupVolume",
                over ? Say.CUP_OVER.with(name, Figures.of(mixture, "ml"), Figures.of(cup, "ml")) : Say.CUP_FULL.with(name, Figures.percent(filled)),
                restsOn, USUAL, Say.CUP_REMEDY.with(Figures.of(Math.ceil(mixture / CupRoom.THIRD), "ml"))));
    }
}
