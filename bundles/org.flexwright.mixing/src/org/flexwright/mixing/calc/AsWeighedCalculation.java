package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.mixing.formula.Weighed;
import org.flexwright.mixing.formula.WeightRatio;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** The true ratio of what was weighed, and what mends it. */
@Component(service = Calculation.class)
public final class AsWeighedCalculation implements Calculation<AsWeighedCalculation.Inputs, AsWeighedCalculation.Results> {

    private static final Source LIMIT = Source.commonPractice("Own limit of the ratio");

    /** Plan and balance. */
    public record Inputs(
            @Field(label = "Planned A", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "22.88 g",
                    help = "Planned grams of A, or its parts by weight.")
            double plannedA,
            @Field(label = "Planned B", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "21.57 g",
                    help = "Planned grams of B, or its parts by weight.")
            double plannedB,
            @Field(label = "Weighed A", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "24.88 g",
                    help = "Grams of A in the cup.")
            double weighedA,
            @Field(label = "Weighed B", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, optional = true,
                    help = "Grams of B in the cup; empty: not weighed yet, its target then follows A.")
            Double weighedB,
            @Field(label = "Own limit", kind = QuantityKind.FRACTION, unit = "%", min = 0.05, max = 50, def = "2 %",
                    help = "Largest deviation of the ratio you accept; common practice, no source.")
            double ownLimit) {
    }

    /** Where the cup stands. */
    public record Results(
            @Field(label = "Planned: B to 100 g of A", kind = QuantityKind.MASS, unit = "g", help = "The ratio meant.") double plannedRatio,
            @Field(label = "In the cup: B to 100 g of A", kind = QuantityKind.MASS, unit = "g", optional = true,
                    help = "The true ratio; empty until B is weighed.")
            Double trueRatio,
            @Field(label = "Deviation", kind = QuantityKind.FRACTION, unit = "%", optional = true,
                    help = "Of B to A against the plan; negative: B is short.")
            Double deviation,
            @Field(label = "Short of", help = "The component there is too little of.") String shortOf,
            @Field(label = "Add", kind = QuantityKind.MASS, unit = "g", min = 0,
                    help = "Grams of the short component that mend the ratio exactly.")
            double add,
            @Field(label = "Target of B now", kind = QuantityKind.MASS, unit = "g",
                    help = "Grams of B that belong to the weighed A.")
            double targetB) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.as-weighed", "Ratio as weighed", 1,
                "The ratio in the cup against the plan: deviation = (B/A weighed)/(B/A planned) - 1. Nothing can be taken out again, so the short "
                        + "component is added: B = A (B/A planned) when B is short. While B is not weighed its target follows the weighed A.",
                Source.derived("Mass balance"), "Cup and balance the same for both; what sticks to the first cup is not counted.");
    }

    @Override
    public Class<Inputs> inputType() {
        return Inputs.class;
    }

    @Override
    public Class<Results> resultType() {
        return Results.class;
    }

    @Override
    public Outcome<Results> run(Inputs in) {
        WeightRatio planned = WeightRatio.ofWeight(in.plannedA(), in.plannedB());
        double targetB = planned.bFor(in.weighedA());
        if (in.weighedB() == null) {
            return Outcome.done(new Results(100 * planned.bPerA(), null, null, "B", targetB, targetB), List.of(Say.WEIGHED_NEXT.note(LIMIT,
                    Figures.of(in.weighedA(), "g"), Figures.of(targetB, "g"), Figures.of(in.plannedB(), "g"))));
        }
        Weighed weighed = new Weighed(planned, in.weighedA(), in.weighedB());
        String shortOf = weighed.shortOf() == Weighed.Short.NONE ? "none" : weighed.shortOf().name();
        Results results = new Results(100 * planned.bPerA(), 100 * weighed.actual().bPerA(), 100 * weighed.deviation(), shortOf,
                weighed.addition(), targetB);
        return Outcome.done(results, List.of(judge(weighed, in.ownLimit() / 100)));
    }

    private static Remark judge(Weighed weighed, double limit) {
        double off = Math.abs(weighed.deviation());
        Object[] args = { Figures.percent(weighed.deviation()), Figures.percent(limit), weighed.shortOf().name(),
                Figures.of(weighed.addition(), "g", 3) };
        return off > 2 * limit ? Say.WEIGHED_TWICE.stop(LIMIT, args)
                : off > limit ? Say.WEIGHED_LIMIT.caution(LIMIT, args) : Say.WEIGHED_INSIDE.note(LIMIT, args);
    }
}
