package org.flexwright.curing.calc;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.curing.formula.Shrinkage;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Linear shrinkage and the size of the mould. */
@Component(service = Calculation.class)
public final class ShrinkageCalculation implements Calculation<ShrinkageCalculation.Inputs, ShrinkageCalculation.Results> {

    private static final Source GEOMETRY = Source.derived("Geometry and thermal expansion");

    /** Part and mould. */
    public record Inputs(
            @Field(label = "Volume shrinkage", kind = QuantityKind.FRACTION, unit = "%", min = 0, max = 30, def = "2 %",
                    help = "By cure, the same in all directions; from density before and after.")
            double volume,
            @Field(label = "Wanted size", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10000, def = "28 mm",
                    help = "Of the part in use.")
            double size,
            @Field(label = "Cure temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 300, def = "60 degC",
                    help = "When it takes its shape.")
            double cure,
            @Field(label = "Use temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 300, def = "23 degC",
                    help = "When it is measured.")
            double use,
            @Field(label = "Expansion of the part", min = 0, max = 1000, def = "150",
                    help = "Linear, millionths to a K: natural rubber 225 (an open materials database), urethanes 100 to 200, silicones 250 to 350 (from memory, unconfirmed).")
            double partExpansion,
            @Field(label = "Expansion of the mould", min = 0, max = 1000, def = "90",
                    help = "Linear, millionths to a K: printed plastics 70 to 100, aluminium 23, plaster 10 (from memory, unconfirmed).")
            double mouldExpansion) {
    }

    /** Sizes. */
    public record Results(
            @Field(label = "Linear shrinkage", kind = QuantityKind.FRACTION, unit = "%", help = "By cure alone.") double linear,
            @Field(label = "Size of the cold mould", kind = QuantityKind.LENGTH, unit = "mm",
                    help = "So that the part has the wanted size in use.")
            double mould,
            @Field(label = "Scale", help = "Mould to part.") double scale) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.shrinkage", "Shrinkage and mould size", 1,
                "Linear s = 1 - (1 - sv)^(1/3); cold mould = part/[(1 - s)(1 - aPart dT)(1 + aMould dT)], dT = cure less use temperature.", GEOMETRY,
                "Free to shrink the same in all directions; a core or an insert holds the part and changes that.");
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
        double linear = Shrinkage.linear(in.volume() / 100);
        double mould = Shrinkage.mouldSize(in.size(), linear, in.partExpansion() * 1e-6, in.mouldExpansion() * 1e-6, in.cure() - in.use());
        return Outcome.done(new Results(100 * linear, mould, mould / in.size()), List.of(Say.SHRINK_FIT.note(Source.commonPractice())));
    }
}
