package org.flexwright.filament;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How much wider a melt strand gets when it leaves the nozzle. */
@Component(service = Calculation.class)
public final class SwellCalculation implements Calculation<SwellCalculation.Inputs, SwellCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.swell";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Swell behind the nozzle", 1,
            "Diameter of the strand that leaves the nozzle by that of the hole, 0.13 + (1 + S^2 / 2)^(1/6), S the recoverable shear at the wall, N1 / (2 tau).",
            Source.fromMemory("Tanner 1970"), "Long land, melt left to itself; a line laid under the nozzle is shaped by layer height and width instead.");

    /** Inputs. */
    public record Inputs(@Field(label = "Recoverable shear S", min = 0, max = 20, def = "1", help = "First normal stress difference by twice the wall shear stress.") double shear,
            @Field(label = "Nozzle diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0.05, max = 5, def = "0.6 mm", help = "Of the hole.") double nozzle) {
    }

    /** Results. */
    public record Results(@Field(label = "Swells to", help = "Times the diameter of the hole.") double ratio,
            @Field(label = "Diameter of the strand", kind = QuantityKind.LENGTH, unit = "mm", help = "Behind the nozzle.") double diameter) {
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
        double ratio = 0.13 + Math.pow(1 + in.shear() * in.shear() / 2, 1.0 / 6);
        return Outcome.done(new Results(ratio, ratio * in.nozzle()));
    }
}
