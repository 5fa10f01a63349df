package org.flexwright.safety.energy;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Forces on a vacuum vessel. */
@Component(service = Calculation.class)
public final class VacuumCalculation implements Calculation<VacuumCalculation.Inputs, VacuumCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.vacuum";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Force on a vacuum lid", 1,
            "Force = air pressure x area of the lid; energy of a collapse at most air pressure x volume.",
            Source.derived("one atmosphere, 101.325 kPa"),
            "Full vacuum at sea level. It does not say whether a vessel holds: use one made for vacuum.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Diameter of the lid", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 5000, def = "250 mm", help = "Round lid.") double diameter,
            @Field(label = "Volume of the vessel", kind = QuantityKind.VOLUME, unit = "l", min = 0, minOpen = true, max = 10000, def = "10 l", help = "Inside.") double volume) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Force on the lid", kind = QuantityKind.FORCE, unit = "kN", help = "At full vacuum.") double force,
            @Field(label = "The same", kind = QuantityKind.FORCE, unit = "kgf", help = "Weight of so many kilograms.") double kilograms,
            @Field(label = "Energy of a collapse", kind = QuantityKind.ENERGY, unit = "kJ", help = "At most.") double collapse) {
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
        double force = PressureEnergy.lidForce(in.diameter() / 1000);
        return Outcome.done(new Results(force, PressureEnergy.kilogramForce(force), PressureEnergy.collapse(in.volume() / 1000)),
                List.of(Say.caution(Source.published("NASA lesson 0256, 1994; DOE/EH-0248, 1992; Prudent Practices 1995, 6.E.3.3"), "vacuum.usual")));
    }
}
