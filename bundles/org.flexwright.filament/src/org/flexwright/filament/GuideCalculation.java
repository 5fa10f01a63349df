package org.flexwright.filament;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Friction of a strand in a bent guide tube. */
@Component(service = Calculation.class)
public final class GuideCalculation implements Calculation<GuideCalculation.Inputs, GuideCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.guide";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Friction in a bent guide", 1,
            "How many times the pull or push grows over a bent guide tube, exp(mu theta), theta being the sum of all bends.",
            Source.derived("capstan equation, textbook"), "Strand that bends without stiffness of its own; soft strands stick more than a coefficient says.");

    /** Inputs. */
    public record Inputs(@Field(label = "Friction coefficient", min = 0, max = 2, def = "0.2", help = "Strand on tube.") double friction,
            @Field(label = "Sum of bends", kind = QuantityKind.ANGLE, unit = "deg", min = 0, max = 3600, def = "90 deg", help = "All bends added, whichever way.") double angle,
            @Field(label = "Force at one end", kind = QuantityKind.FORCE, unit = "N", min = 0, max = 1000, def = "1 N", help = "The smaller one.") double force) {
    }

    /** Results. */
    public record Results(@Field(label = "Grows by a factor", help = "Force at one end by that at the other.") double factor,
            @Field(label = "Force at the other end", kind = QuantityKind.FORCE, unit = "N", help = "The larger one.") double otherForce) {
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
        double factor = Math.exp(in.friction() * Math.toRadians(in.angle()));
        return Outcome.done(new Results(factor, factor * in.force()));
    }
}
