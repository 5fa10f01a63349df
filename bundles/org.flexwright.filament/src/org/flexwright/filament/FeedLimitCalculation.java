package org.flexwright.filament;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Stiffness a strand needs for the viscosity of its own melt. */
@Component(service = Calculation.class)
public final class FeedLimitCalculation implements Calculation<FeedLimitCalculation.Inputs, FeedLimitCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.feed-limit";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Stiffness a strand needs", 1,
            "Ratio of strand modulus to melt viscosity above which the strand is not expected to buckle: E / eta = 32 c K^2 Q l (L / Rf)^2 / (pi^3 r^4), from "
                    + "Euler's load against the pressure of the nozzle land.",
            Source.derived("Euler's column against Hagen-Poiseuille flow; Venkataraman et al. 2000 found 3e5 to 5e5 1/s on their machine (from memory, "
                    + "unconfirmed)"),
            "Land of the nozzle only, losses at its entry by the factor c. The threshold hangs on the machine: take it as a comparison of settings.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Flow", kind = QuantityKind.FLOW, unit = "mm3/s", min = 0, minOpen = true, max = 1000, def = "2 mm3/s", help = "Melt laid in a second.") double flow,
            @Field(label = "Nozzle land", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 50, def = "1 mm", help = "Length of the narrow part of the hole.") double land,
            @Field(label = "Nozzle radius", kind = QuantityKind.LENGTH, unit = "mm", min = 0.01, max = 5, def = "0.2 mm", help = "Half the diameter of the hole.") double radius,
            @Field(label = "Free length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 2000, def = "10 mm", help = "Between drive wheel and guide.") double freeLength,
            @Field(label = "Strand radius", kind = QuantityKind.LENGTH, unit = "mm", min = 0.05, max = 5, def = "0.875 mm", help = "Half its diameter.") double strandRadius,
            @Field(label = "How the ends are held, K", min = 0.5, max = 2, def = "1", help = "0.5 both fast, 1 both free to turn.") double lengthFactor,
            @Field(label = "Entry losses c", min = 1, max = 20, def = "1", help = "Whole pressure by that of the land; 1 when only the land counts.") double losses) {
    }

    /** Results. */
    public record Results(@Field(label = "Modulus by viscosity, at least", kind = QuantityKind.RATE, unit = "1/s", help = "Modulus in Pa divided by viscosity in Pa s.") double ratio) {
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
        double slimness = in.freeLength() / in.strandRadius();
        return Outcome.done(new Results(32 * in.losses() * in.lengthFactor() * in.lengthFactor() * in.flow() * in.land() * slimness * slimness
                / (Math.pow(Math.PI, 3) * Math.pow(in.radius(), 4))));
    }
}
