package org.flexwright.curing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.curing.formula.AdiabaticRise;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How hot a batch could get. */
@Component(service = Calculation.class)
public final class AdiabaticCalculation implements Calculation<AdiabaticCalculation.Inputs, AdiabaticCalculation.Results> {

    /** Heat and mass. */
    public record Inputs(
            @Field(label = "NCO groups", min = 0, minOpen = true, max = 20, def = "1.0695",
                    help = "Equivalents to a kg of the mixture.")
            double equivalents,
            @Field(label = "Heat of reaction", min = 1, max = 500, def = "74.9",
                    help = "kJ to an equivalent of NCO; 70.75 and 74.9 in published urethane sets.")
            double heat,
            @Field(label = "Specific heat", kind = QuantityKind.SPECIFIC_HEAT, unit = "J/kg/K", min = 500, max = 5000, def = "1800 J/kg/K",
                    help = "1300 to 2000 is usual for elastomers (common practice, no source).")
            double specificHeat,
            @Field(label = "Start", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 150, def = "23 degC",
                    help = "Temperature after mixing.")
            double start) {
    }

    /** The rise. */
    public record Results(
            @Field(label = "Rise", kind = QuantityKind.TEMPERATURE_DIFFERENCE, unit = "K", help = "If no heat gets away.") double rise,
            @Field(label = "End", kind = QuantityKind.TEMPERATURE, unit = "degC", max = 5000, help = "Temperature it could reach.") double end) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.adiabatic", "Heat if none gets away", 1, "dT = (equivalents to a kg) x (heat to an equivalent)/cp.", Examples.HEAT,
                "The upper limit; thin or small parts stay far below.");
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
        double rise = AdiabaticRise.kelvin(in.equivalents(), in.heat(), in.specificHeat());
        double end = in.start() + rise;
        return end < 120 ? Outcome.done(new Results(rise, end))
                : Outcome.done(new Results(rise, end), List.of(Say.ADIABATIC_HOT.caution(Source.commonPractice(), Figures.of(end, "\u00b0C", 3))));
    }
}
