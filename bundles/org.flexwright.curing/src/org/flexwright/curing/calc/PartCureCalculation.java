package org.flexwright.curing.calc;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.curing.formula.Arrhenius;
import org.flexwright.curing.formula.Body;
import org.flexwright.curing.formula.ReactiveBody;
import org.flexwright.curing.formula.Resin;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** A part that cures and warms itself between warm walls. */
@Component(service = Calculation.class)
public final class PartCureCalculation implements Calculation<PartCureCalculation.Inputs, PartCureCalculation.Results> {

    private static final Source CELLS = Source.derived("Heat conduction with reaction, finite volumes on two grids");
    private static final double KELVIN = 273.15;
    private static final int LOOKS = 120;

    /** Part, wall and resin. */
    public record Inputs(
            @Field(def = "slab", help = "Slab: walls on both faces. Cylinder: long rod. Sphere: ball.") Body shape,
            @Field(label = "Full thickness or diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 1, max = 200, def = "20 mm",
                    help = "Not half of it: that is taken care of.")
            double thickness,
            @Field(label = "Start", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 150, def = "23 degC",
                    help = "Of the mixture poured in.")
            double start,
            @Field(label = "Mould wall", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 150, def = "60 degC",
                    help = "Held all along.")
            double wall,
            @Field(kind = QuantityKind.DURATION, unit = "min", min = 0.1, max = 10000, def = "30 min", help = "In the mould.") double time,
            @Field(label = "Conductivity", kind = QuantityKind.THERMAL_CONDUCTIVITY, unit = "W/m/K", min = 0.05, max = 5, def = "0.2 W/m/K",
                    help = "0.15 to 0.25 for elastomers (common practice, no source).")
            double conductivity,
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

    /** The centre. */
    public record Results(
            @Field(label = "Centre at the end", kind = QuantityKind.TEMPERATURE, unit = "degC", max = 5000, help = "After that time.") double centre,
            @Field(label = "Conversion of the centre", kind = QuantityKind.FRACTION, unit = "%", help = "After that time.") double conversion,
            @Field(label = "Hottest", kind = QuantityKind.TEMPERATURE, unit = "degC", max = 5000,
                    help = "Of the centre, up to that time.")
            double hottest,
            @Field(label = "at", kind = QuantityKind.DURATION, unit = "min", help = "When it was hottest.") double hottestAt) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.part", "Cure inside a part", 1,
                "rho cp dT/dt = k lap T + rho H dX/dt with dX/dt = A exp(-Ea/RT)(1 - X)^n, surface held at the wall. Cells of equal width on two grids, "
                        + "extrapolated.",
                CELLS, "Wide slabs, long rods, balls; constants inside their range; no gas gap between part and mould.");
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
                1000 * in.density(), in.conductivity(), Resin.NONE);
        if (resin.rate(0, Math.max(in.wall(), in.start()) + KELVIN) > 1) {
            return Outcome.refused("preExponential", Say.RATE_STANDS.with(), Say.RATE_STANDS_REMEDY.with());
        }
        double[] times = new double[LOOKS];
        for (int i = 0; i < LOOKS; i++) {
            times[i] = in.time() * 60 * (i + 1) / LOOKS;
        }
        ReactiveBody.Centre[] course = new ReactiveBody(in.shape(), resin, in.thickness() / 2000, in.start() + KELVIN, in.wall() + KELVIN).centre(times);
        ReactiveBody.Centre hottest = course[0];
        for (ReactiveBody.Centre c : course) {
            hottest = c.kelvin() > hottest.kelvin() ? c : hottest;
        }
        ReactiveBody.Centre end = course[LOOKS - 1];
        return Outcome.done(new Results(end.kelvin() - KELVIN, 100 * end.conversion(), hottest.kelvin() - KELVIN, hottest.seconds() / 60),
                remarks(in, hottest.kelvin() - KELVIN - in.wall(), end.conversion()));
    }

    private static List<Remark> remarks(Inputs in, double overshoot, double conversion) {
        List<Remark> remarks = new ArrayList<>(List.of(Say.OWN_CONSTANTS.note(Examples.TEST_RESIN)));
        if (overshoot > 20) {
            remarks.add(Say.PART_OVERSHOOT.caution(Source.commonPractice(), Figures.of(overshoot, "K", 3)));
        }
        if (conversion < 0.8) {
            remarks.add(Say.PART_LATE.caution(Source.commonPractice(), Figures.percent(conversion)));
        }
        return remarks;
    }
}
