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
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Excess temperature in the middle of a part and whether it can run away. */
@Component(service = Calculation.class)
public final class InternalHeatCalculation implements Calculation<InternalHeatCalculation.Inputs, InternalHeatCalculation.Results> {

    private static final Source FRANK = Source.fromMemory("Frank-Kamenetskii; critical numbers solved from the equation");

    /** Source and part. */
    public record Inputs(
            @Field(def = "slab", help = "Slab: cooled on both faces. Cylinder: long rod. Sphere: ball.") Body shape,
            @Field(label = "Full thickness or diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 2000, def = "20 mm",
                    help = "Not half of it: that is taken care of.")
            double thickness,
            @Field(label = "Heat set free", min = 0, minOpen = true, max = 1e8, def = "50000",
                    help = "W to a cubic metre at the wall temperature: density x heat of cure x rate.")
            double source,
            @Field(label = "Conductivity", kind = QuantityKind.THERMAL_CONDUCTIVITY, unit = "W/m/K", min = 0.02, max = 400, def = "0.2 W/m/K",
                    help = "0.15 to 0.25 for elastomers (common practice, no source).")
            double conductivity,
            @Field(label = "Wall", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 300, def = "60 degC",
                    help = "Held all along.")
            double wall,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 5, max = 200, def = "55 kJ/mol",
                    help = "35 to 75 is usual for urethanes.")
            double activationEnergy) {
    }

    /** The middle. */
    public record Results(
            @Field(label = "Rise of the middle", kind = QuantityKind.TEMPERATURE_DIFFERENCE, unit = "K",
                    help = "With an even source that does not grow.")
            double rise,
            @Field(label = "Runaway number", help = "(E/RT^2)(L^2 q/k), L half the thickness.") double number,
            @Field(label = "Critical number", help = "Above it nothing steady is possible: 0.88 slab, 2.00 cylinder, 3.32 sphere.") double critical) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.internal-heat", "Heat in the middle", 1,
                "Steady rise q L^2/2k (slab), q L^2/4k (cylinder), q L^2/6k (sphere); runaway when (E/RT^2)(L^2 q/k) is above 0.88, 2.00 or 3.32.", FRANK,
                "A hint, not a proof of harmlessness: the resin is used up while it heats, so real parts are milder.");
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
        double half = in.thickness() / 2000;
        double number = Body.reactionNumber(in.activationEnergy(), in.wall() + Arrhenius.ZERO_CELSIUS, half, in.source(), in.conductivity());
        double critical = in.shape().criticalNumber();
        Results results = new Results(in.shape().sourceRise(in.source(), half, in.conductivity()), number, critical);
        List<Remark> remarks = new ArrayList<>();
        if (number > critical) {
            remarks.add(Say.HEAT_RUNAWAY.stop(FRANK, Figures.of(number, "", 3), Figures.of(critical, "", 3)));
        } else if (number > critical / 2) {
            remarks.add(Say.HEAT_NEAR.caution(FRANK, Figures.of(number, "", 3), Figures.of(critical, "", 3)));
        }
        return Outcome.done(results, remarks);
    }
}
