package org.flexwright.curing.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Figures;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.curing.formula.Arrhenius;
import org.flexwright.curing.formula.CupHeat;
import org.flexwright.curing.formula.Resin;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** A batch that warms itself in the cup. */
@Component(service = Calculation.class)
public final class CupCalculation implements Calculation<CupCalculation.Inputs, CupCalculation.Results> {

    private static final double KELVIN = 273.15;

    /** Resin, cup and room. */
    public record Inputs(
            @Field(label = "Batch", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "500 g",
                    help = "What stands in the cup.")
            double batch,
            @Field(label = "Room", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 60, def = "23 degC",
                    help = "Also that of the components.")
            double room,
            @Field(label = "Heat transfer", min = 1, max = 200, def = "8", help = "W to a square metre and K; 5 to 10 in still air (from memory, unconfirmed).") double transfer,
            @Field(label = "Conversion at the end of working", kind = QuantityKind.FRACTION, unit = "%", min = 1, max = 95, def = "30 %",
                    help = "Where it no longer pours.")
            double limit,
            @Field(label = "Rate at infinite temperature", kind = QuantityKind.RATE, unit = "1/s", min = 0, minOpen = true, max = 1e20, def = "1e6 1/s",
                    help = "A of k = A exp(-Ea/RT).")
            double preExponential,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 10, max = 150, def = "55 kJ/mol",
                    help = "35 to 75 is usual for urethanes.")
            double activationEnergy,
            @Field(min = 0.5, max = 3, def = "2", help = "Order of the cure, 1 or 2 is usual.") double order,
            @Field(label = "Heat of cure", min = 0, max = 600, def = "80", help = "kJ to a kg of the mixture.") double heat,
            @Field(label = "Specific heat", kind = QuantityKind.SPECIFIC_HEAT, unit = "J/kg/K", min = 500, max = 5000, def = "1800 J/kg/K",
                    help = "1300 to 2000 is usual for elastomers (common practice, no source).")
            double specificHeat,
            @Field(kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.3, max = 5, def = "1.08 g/cm3", help = "Of the mixture.") double density) {
    }

    /** Cup, thin layer, no loss. */
    public record Results(
            @Field(label = "Hottest", kind = QuantityKind.TEMPERATURE, unit = "degC", max = 5000,
                    help = "One temperature all through.")
            double hottest,
            @Field(label = "after", kind = QuantityKind.DURATION, unit = "min", help = "From mixing.") double after,
            @Field(label = "Working time in this cup", kind = QuantityKind.DURATION, unit = "min",
                    help = "To the conversion given.")
            double workingTime,
            @Field(label = "in a thin layer", kind = QuantityKind.DURATION, unit = "min", help = "At room temperature all along.") double thin,
            @Field(label = "if no heat got away", kind = QuantityKind.DURATION, unit = "min", help = "The shortest it can be.") double shortest) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.cup", "Working time and size of the batch", 1,
                "rho cp dT/dt = rho H dX/dt - (h S/V)(T - Ta), surface of a sphere of that volume: a bigger batch has less surface to a gram, runs "
                        + "hotter and is shorter.",
                Examples.HEAT, "One temperature all through the cup (small Biot number); constants fitted near room temperature.");
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
        Resin resin = new Resin(new Arrhenius(in.preExponential(), in.activationEnergy()), in.order(), 1000 * in.heat(), in.specificHeat(),
                1000 * in.density(), 0.2, Resin.NONE);
        double room = in.room() + KELVIN;
        double thin = resin.isothermalTime(in.limit() / 100, room);
        double horizon = 20 * thin;
        CupHeat cup = new CupHeat(resin, in.batch() / 1000, room, in.transfer());
        Optional<CupHeat.Peak> peak = horizon < 1e8 ? cup.peak(horizon) : Optional.empty();
        Optional<Double> end = peak.isPresent() ? cup.timeTo(in.limit() / 100, horizon) : Optional.empty();
        if (end.isEmpty()) {
            return Outcome.refused("preExponential", Say.CUP_STILL.with(Figures.of(horizon / 3600, "h", 3)), Say.CUP_STILL_REMEDY.with());
        }
        double hottest = peak.get().kelvin() - KELVIN;
        Results results = new Results(hottest, peak.get().seconds() / 60, end.get() / 60, thin / 60, resin.adiabaticTime(in.limit() / 100, room) / 60);
        List<Remark> remarks = new ArrayList<>(List.of(Say.OWN_CONSTANTS.note(Examples.TEST_RESIN)));
        if (end.get() < 0.8 * thin) {
            remarks.add(Say.CUP_HOT.caution(Examples.HEAT, Figures.of(hottest, "\u00b0C", 3), Figures.of(thin / 60, "min", 3), Figures.of(end.get() / 60, "min", 3)));
        }
        return Outcome.done(results, remarks);
    }
}
