package org.flexwright.vatprint;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Upper bound of the force that lifts a print off a rigid vat floor. */
@Component(service = Calculation.class)
public final class PeelCalculation implements Calculation<PeelCalculation.Inputs, PeelCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.peel";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Lift force, upper bound", 1,
            "Force that lifts a round face out of resin over a rigid flat window, F = 3 pi eta R^4 v / (2 h^3) (Stefan). It shows what the force "
                    + "grows with: area, viscosity and speed; and how a wider gap helps.",
            Source.fromMemory("Stefan's squeeze-film formula, textbook; that staging the speed lowers the force: Gritsenko et al. 2022, Appl. Sci. 12:442, abstract"),
            "An upper bound: rigid window, full contact, round face. A flexible film peels from the edge with less; suction in hollow shapes comes on top.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Viscosity of the resin", kind = QuantityKind.VISCOSITY, unit = "Pa s", min = 0, minOpen = true, max = 1000, def = "1 Pa s", help = "At the temperature of the vat.") double viscosity,
            @Field(label = "Radius of the face", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 500, def = "10 mm", help = "Of a disc as large as the layer.") double radius,
            @Field(label = "Lift speed", kind = QuantityKind.SPEED, unit = "mm/s", min = 0, minOpen = true, max = 100, def = "1 mm/s", help = "At the start of the lift.") double speed,
            @Field(label = "Gap", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10, def = "0.1 mm", help = "Liquid between print and window: one layer at the start.") double gap) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Lift force, at most", kind = QuantityKind.FORCE, unit = "N", help = "Upper bound for a rigid window.") double force) {
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
        double force = 1.5 * Math.PI * in.viscosity() * Math.pow(in.radius() / 1e3, 4) * (in.speed() / 1e3) / Math.pow(in.gap() / 1e3, 3);
        return Outcome.done(new Results(force));
    }
}
