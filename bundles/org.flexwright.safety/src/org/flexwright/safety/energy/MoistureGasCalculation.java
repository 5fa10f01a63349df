package org.flexwright.safety.energy;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.flexwright.safety.air.Vapour;
import org.osgi.service.component.annotations.Component;

/** Gas from water in isocyanate. */
@Component(service = Calculation.class)
public final class MoistureGasCalculation implements Calculation<MoistureGasCalculation.Inputs, MoistureGasCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.moisture-gas";

    private static final double KILOPASCAL_PER_BAR = 100;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Gas from damp isocyanate", 1,
            "Each mole of water lets go one mole of carbon dioxide: litres = grams / 18.015 x molar volume.",
            Source.published("isocyanate and water give carbon dioxide: NIOSH Pocket Guide, HDI; volume derived"),
            "All water reacts in the end. In a closed container it builds pressure until something gives.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Water", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 10000, def = "1 g", help = "In the part that holds isocyanate, from damp, filler or a wet tool.") double water,
            @Field(label = "Temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 100, def = "25 degC", help = "Of the gas.") double temperature,
            @Field(label = "Air space in the container", kind = QuantityKind.VOLUME, unit = "l", min = 0, minOpen = true, max = 1000, def = "0.5 l", help = "Above the liquid.") double headspace) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Carbon dioxide", kind = QuantityKind.VOLUME, unit = "l", help = "At one atmosphere.") double gas,
            @Field(label = "Pressure if closed", kind = QuantityKind.PRESSURE_GAUGE, unit = "bar gauge", help = "Above the surrounding air, all of it in the air space.") double pressure) {
    }

    @Override
    public CalculationInfo info() {
        return INFO;
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
        double gas = Exotherm.carbonDioxide(in.water(), Vapour.molarVolume(in.temperature(), Vapour.ATMOSPHERE));
        double pressure = gas / in.headspace() * Vapour.ATMOSPHERE / KILOPASCAL_PER_BAR;
        return Outcome.done(new Results(gas, pressure), List.of(Say.caution(Source.published("NIOSH Pocket Guide, HDI"), "moisture.never-seal")));
    }
}
