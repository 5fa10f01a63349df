package org.flexwright.mixing.calc;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.WeightRatio;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** A mixing ratio by weight and by volume. */
@Component(service = Calculation.class)
public final class RatioConvertCalculation implements Calculation<RatioConvertCalculation.Inputs, RatioConvertCalculation.Results> {

    /** A ratio as some sheet gives it. */
    public record Inputs(
            @Field(label = "Parts of A", min = 0, minOpen = true, max = 1e6, def = "100", help = "As the sheet gives the ratio.") double ratioA,
            @Field(label = "Parts of B", min = 0, minOpen = true, max = 1e6, def = "50", help = "As the sheet gives the ratio.") double ratioB,
            @Field(label = "Parts by", def = "volume", help = "What the sheet counts the parts by.") RatioBasis basis,
            @Field(label = "Density of A", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, def = "1.05 g/cm3",
                    help = "From the sheet or weighed.")
            double densityA,
            @Field(label = "Density of B", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, def = "1.21 g/cm3",
                    help = "From the sheet or weighed.")
            double densityB) {
    }

    /** The ratio both ways. */
    public record Results(
            @Field(label = "B to 100 of A by weight", help = "Parts by weight.") double byWeight,
            @Field(label = "B to 100 of A by volume", help = "Parts by volume.") double byVolume,
            @Field(label = "A in the mixture", kind = QuantityKind.FRACTION, unit = "%", help = "Share by weight.") double shareA,
            @Field(label = "B in the mixture", kind = QuantityKind.FRACTION, unit = "%", help = "Share by weight.") double shareB) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.ratio-convert", "Ratio by weight and by volume", 1,
                "mB/mA = (vB/vA)(rhoB/rhoA). A ratio by volume that is weighed as if it were by weight is wrong by the ratio of the densities.",
                Source.derived("Definition of density"), "Both densities at the temperature the ratio is meant for.");
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
        WeightRatio ratio = in.basis().toWeight(in.ratioA(), in.ratioB(), in.densityA(), in.densityB());
        return Outcome.done(new Results(100 * ratio.bPerA(), 100 * ratio.volumeBPerA(in.densityA(), in.densityB()), 100 * ratio.shareA(),
                100 * ratio.shareB()));
    }
}
