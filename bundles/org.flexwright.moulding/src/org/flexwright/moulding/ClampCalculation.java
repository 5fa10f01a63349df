package org.flexwright.moulding;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Force that keeps a mould closed. */
@Component(service = Calculation.class)
public final class ClampCalculation implements Calculation<ClampCalculation.Inputs, ClampCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "moulding.clamp";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Clamp force", 1,
            "Force with which the mix pushes the halves of a mould apart, F = pressure times area seen along the pull, and the clamp force with a margin.",
            Source.derived("force = pressure times projected area; the margin of 1.5 is common practice, no source"),
            "Full pressure over the whole area, as at the end of filling.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Pressure in the mould", kind = QuantityKind.PRESSURE_GAUGE, unit = "kPa gauge", min = 0, minOpen = true, max = 5000, def = "50 kPa gauge", help = "Highest while filling, above the surrounding air.") double pressure,
            @Field(label = "Area along the pull", kind = QuantityKind.AREA, unit = "cm2", min = 0, minOpen = true, max = 10000, def = "20 cm2", help = "Shadow of all cavities and runners on the parting plane.") double area,
            @Field(label = "Margin", min = 1, max = 10, def = "1.5", help = "Clamp force divided by opening force; 1.5 is common practice.") double margin) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Opening force", kind = QuantityKind.FORCE, unit = "N", help = "Of the mix.") double opening,
            @Field(label = "Clamp with", kind = QuantityKind.FORCE, unit = "N", help = "Opening force times margin.") double clamp) {
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
        double opening = 1e3 * in.pressure() * in.area() / 1e4;
        return Outcome.done(new Results(opening, opening * in.margin()));
    }
}
