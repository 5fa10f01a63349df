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
import org.flexwright.core.process.Mixtures;
import org.flexwright.mixing.formula.Formulation;
import org.flexwright.mixing.formula.MoistureFoam;
import org.flexwright.mixing.formulation.MixtureFigures;
import org.flexwright.model.Step;
import org.osgi.service.component.annotations.Component;

/** The index of a urethane as weighed, before that as planned: far off stops, beside the usual is a caution, and what hides it is said. */
@Component(service = FindingRule.class)
public final class IndexRule implements FindingRule {

    /** Id of this rule. */
    public static final String ID = "mixing.index";

    static final Source SOURCE = Source.published("Polyurethane Manufacturers Association, technical library, section 5: equivalent weights");
    private static final Source USUAL = Source.commonPractice("index 95 to 105 for castings");
    private static final Source FOAM = Source.commonPractice("gas above about 1 % of the batch volume shows as bubbles");
    private static final double LOW = 95;
    private static final double HIGH = 105;
    private static final double GAS = 0.01;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Index";
    }

    @Override
    public void check(RuleContext context, Consumer<Finding> out) {
        for (Step step : context.trial().getSteps()) {
            if (WeighStep.ID.equals(step.getKind())) {
                boolean weighed = Mixtures.of(step).actualRatio() != null;
                MixtureFigures is = weighed ? MixtureFigures.weighed(step) : MixtureFigures.planned(step);
                if (is.urethane()) {
                    index(step, is, weighed).ifPresent(out);
                    gas(step, is).ifPresent(out);
                    damp(step, is).ifPresent(out);
                }
            }
        }
    }

    private static Optional<Finding> index(Step step, MixtureFigures is, boolean weighed) {
        double index = is.index();
        String name = StepNames.of(step);
        if (Double.isNaN(index)) {
            return Optional.of(new Finding(ID, Severity.NOTE, step.getId(), "", Say.INDEX_UNKNOWN.with(name, is.noIndex().text()), List.of("missing " + String.join(", ", is.missing())),
                    SOURCE, Say.INDEX_UNKNOWN_REMEDY.with()));
        }
        if (index >= LOW && index <= HIGH) {
            return Optional.empty();
        }
        boolean far = index < Formulation.LOWEST_INDEX || index > Formulation.HIGHEST_INDEX;
        return Optional.of(new Finding(ID, far ? Severity.STOP : Severity.CAUTION, step.getId(), "index",
                (far ? Say.INDEX_FAR : index < LOW ? Say.INDEX_LOW : Say.INDEX_HIGH).with(name, Figures.of(index, ""), (weighed ? Say.AS_WEIGHED : Say.AS_PLANNED).with().text()),
                List.of("index " + Figures.of(index, "", 6), weighed ? "weighed" : "planned"), USUAL, Say.INDEX_OFF_REMEDY.with()));
    }

    private static Optional<Finding> gas(Step step, MixtureFigures is) {
        double gas = MoistureFoam.co2Volume(is.water());
        if (!(gas > GAS * is.volume())) {
            return Optional.empty();
        }
        return Optional.of(new Finding(ID, Severity.CAUTION, step.getId(), "",
                Say.WATER_GAS.with(StepNames.of(step), Figures.of(is.water(), "g", 2), Figures.of(gas, "ml", 2), Figures.percent(gas / is.volume())),
                List.of("water " + Figures.of(is.water(), "g", 6), "volume " + Figures.of(is.volume(), "ml", 6)), FOAM, Say.WATER_GAS_REMEDY.with()));
    }

    private static Optional<Finding> damp(Step step, MixtureFigures is) {
        return is.mayBeDamp().isEmpty() ? Optional.empty()
                : Optional.of(new Finding(ID, Severity.NOTE, step.getId(), "", Say.WATER_UNKNOWN.with(StepNames.of(step), String.join(", ", is.mayBeDamp())),
                        List.of("powders " + String.join(", ", is.mayBeDamp())), Source.commonPractice("fine powders take up water from the room"), Say.WATER_UNKNOWN_REMEDY.with()));
    }
}
