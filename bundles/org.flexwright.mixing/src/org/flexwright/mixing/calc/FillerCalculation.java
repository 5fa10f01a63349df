package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.Filler;
import org.flexwright.mixing.formula.WeightRatio;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** An amount of filler or pigment counted every way at once. */
@Component(service = Calculation.class)
public final class FillerCalculation implements Calculation<FillerCalculation.Inputs, FillerCalculation.Results> {

    private static final Source ALGEBRA = Source.derived("Mass balance");

    /** An amount as a recipe gives it. */
    public record Inputs(
            @Field(min = 0, max = 1000, def = "10", help = "The bare number of the recipe.") double amount,
            @Field(label = "Counted on", def = "phr",
                    help = "phr: 100 g of polymer (A and B). Total: the whole mixture. Part A, part B: per cent of that part.")
            Filler.On countedOn,
            @Field(label = "Parts of A by weight", min = 0, minOpen = true, max = 1e6, def = "100",
                    help = "Mixing ratio of the polymer.")
            double ratioA,
            @Field(label = "Parts of B by weight", min = 0, minOpen = true, max = 1e6, def = "50",
                    help = "Mixing ratio of the polymer.")
            double ratioB,
            @Field(label = "Density of the filler", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.02, max = 20, def = "1.80 g/cm3",
                    help = "Of the grains, not of the heap.")
            double densityFiller,
            @Field(label = "Density of the polymer", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, def = "1.05 g/cm3",
                    help = "Of A and B mixed.")
            double densityPolymer,
            @Field(label = "Polymer in the batch", kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, def = "100 g",
                    help = "A and B together.")
            double polymer) {
    }

    /** The same amount, every way. */
    public record Results(
            @Field(label = "On 100 g of polymer", kind = QuantityKind.PARTS, unit = "phr", help = "Grams to 100 g of A and B.") double phr,
            @Field(label = "Of the total", kind = QuantityKind.FRACTION, unit = "%",
                    help = "Per cent of polymer and filler together.")
            double ofTotal,
            @Field(label = "Of part A", kind = QuantityKind.FRACTION, unit = "%", help = "Per cent of the mass of A.") double ofA,
            @Field(label = "Of part B", kind = QuantityKind.FRACTION, unit = "%", help = "Per cent of the mass of B.") double ofB,
            @Field(label = "Volume fraction", help = "Share of the volume, 0 to 1; what stiffness goes by.") double volumeFraction,
            @Field(label = "Filler to weigh", kind = QuantityKind.MASS, unit = "g", help = "For the polymer in the batch.") double grams) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.filler", "Filler: per cent of what", 1,
                "phr = grams of filler to 100 g of polymer; share of total w = phr/(100 + phr); volume fraction phi = (phr/rhoF)/(100/rhoP + phr/rhoF).",
                ALGEBRA, "Dry filler. A pigment paste brings its carrier along, which counts as plasticiser unless it reacts.");
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
        if (in.countedOn() == Filler.On.TOTAL && in.amount() >= 100) {
            return Outcome.refused("amount", Say.FILLER_ALL.with(Figures.of(in.amount(), "%")), Say.FILLER_ALL_REMEDY.with());
        }
        WeightRatio ratio = WeightRatio.ofWeight(in.ratioA(), in.ratioB());
        Filler filler = Filler.of(in.amount(), in.countedOn(), ratio);
        Results results = new Results(filler.phr(), filler.percentOfTotal(), filler.percentOfA(ratio), filler.percentOfB(ratio),
                filler.volumeFraction(in.densityFiller(), in.densityPolymer()), filler.phr() * in.polymer() / 100);
        return in.countedOn() == Filler.On.PHR ? Outcome.done(results)
                : Outcome.done(results, List.of(Say.FILLER_OF_WHAT.note(ALGEBRA, Figures.of(in.amount(), ""),
                        "the " + in.countedOn().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '), Figures.of(filler.phr(), ""))));
    }
}
