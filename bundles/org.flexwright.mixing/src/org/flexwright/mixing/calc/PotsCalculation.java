package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.Pots;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How many pots a number of parts needs within the working time. */
@Component(service = Calculation.class)
public final class PotsCalculation implements Calculation<PotsCalculation.Inputs, PotsCalculation.Results> {

    private static final Source RESERVE = Source.commonPractice("1.3 times the filling time left at the start of filling");
    private static final double LEFT = 1.3;

    /** Parts, grams and times. */
    public record Inputs(
            @Field(label = "Parts", min = 1, max = 10000, def = "10", help = "How many parts are wanted.") int parts,
            @Field(label = "A for all parts", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "76.26 g",
                    help = "Grams of A for all of them, from the batch calculation.")
            double massA,
            @Field(label = "B for all parts", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "71.91 g",
                    help = "Grams of B for all of them, from the batch calculation.")
            double massB,
            @Field(kind = QuantityKind.DURATION, unit = "min", min = 0, minOpen = true, max = 1e5, def = "20 min",
                    help = "From first contact of A and B, for the size of pot you mix.")
            double workingTime,
            @Field(label = "Until filling starts", kind = QuantityKind.DURATION, unit = "min", min = 0, max = 1e5, def = "7 min",
                    help = "Mixing and degassing, from first contact.")
            double before,
            @Field(label = "Filling one part", kind = QuantityKind.DURATION, unit = "min", min = 0, minOpen = true, max = 1e4, def = "2 min",
                    help = "Pouring or pressing one mould full.")
            double perPart) {
    }

    /** Pots. */
    public record Results(
            @Field(label = "Pots", help = "Mixed one after the other.") int pots,
            @Field(label = "Parts in the fullest pot", help = "Parts spread evenly over the pots.") int partsAPot,
            @Field(label = "A in that pot", kind = QuantityKind.MASS, unit = "g", help = "Its share of A.") double potA,
            @Field(label = "B in that pot", kind = QuantityKind.MASS, unit = "g", help = "Its share of B.") double potB) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.pots", "Pots for many parts", 1,
                "A pot fills floor[(working time - time before)/(1.3 x filling one part)] parts; the parts are spread evenly over as few pots as that needs.",
                RESERVE, "What stays in each cup is not added: every further pot loses its own. A bigger pot is hotter and shorter.");
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
        int perPot = Pots.fitting(in.workingTime(), in.before(), in.perPart(), LEFT);
        if (perPot < 1) {
            return Outcome.refused("workingTime", Say.POTS_NONE.with(Figures.of(in.workingTime() - in.before(), "min", 3), Figures.of(LEFT * in.perPart(), "min", 3)),
                    Say.POTS_NONE_REMEDY.with());
        }
        Pots pots = new Pots(in.parts(), perPot);
        double share = (double) pots.fullest() / in.parts();
        Results results = new Results(pots.pots(), pots.fullest(), share * in.massA(), share * in.massB());
        return pots.pots() == 1 ? Outcome.done(results) : Outcome.done(results, List.of(Say.POTS_LOSS.note(Source.commonPractice(), String.valueOf(pots.pots()))));
    }
}
