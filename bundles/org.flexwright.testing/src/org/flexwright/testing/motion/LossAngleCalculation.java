package org.flexwright.testing.motion;

import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Loss angle from the area of a sinusoidal loop. */
@Component(service = Calculation.class)
public final class LossAngleCalculation implements Calculation<LossAngleCalculation.Inputs, LossAngleCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.loss-angle";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "tan delta of a loop", 1,
            "Energy lost in a cycle W = pi x0 F0 sin delta; k' = F0 cos delta / x0 and k'' = F0 sin delta / x0, so that tan delta = W / (2 pi k' x0^2 / 2).",
            Source.derived("linear viscoelasticity"),
            "A sinusoidal load about a mean, small enough that the loop is an ellipse. State frequency, temperature, mean load and cycle: without them it compares with nothing.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Travel amplitude", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "1 mm", help = "Half of the whole travel.") double travel,
            @Field(label = "Force amplitude", kind = QuantityKind.FORCE, unit = "N", min = 0, minOpen = true, max = 100000, def = "10 N", help = "Half of the whole change of force.") double force,
            @Field(label = "Energy lost in a cycle", kind = QuantityKind.ENERGY, unit = "mJ", min = 0, max = 1e9, def = "6.2414 mJ", help = "Area of the loop.") double lost) {
    }

    /** Results. */
    public record Results(
            @Field(label = "tan delta", help = "Loss over storage.") double tanDelta,
            @Field(label = "Loss angle", kind = QuantityKind.ANGLE, unit = "deg", help = "Force ahead of travel.") double angle,
            @Field(label = "Storage stiffness, N/mm", help = "In phase with the travel.") double storage,
            @Field(label = "Loss stiffness, N/mm", help = "A quarter of a cycle ahead of the travel.") double loss,
            @Field(label = "Rebound at that angle", kind = QuantityKind.FRACTION, unit = "%", help = "Half a cycle at a constant loss angle; rough for impacts.") double rebound) {
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
        double most = Math.PI * in.travel() * in.force();
        double sine = in.lost() / most;
        if (!(sine < 1)) {
            return Outcome.refused("lost", Say.message("loss.much", Rounded.text(in.lost(), "mJ"), Rounded.text(most, "mJ")), Say.message("loss.much.remedy"));
        }
        double delta = Math.asin(sine);
        double tan = Math.tan(delta);
        Results results = new Results(tan, Math.toDegrees(delta), in.force() * Math.cos(delta) / in.travel(), in.force() * sine / in.travel(),
                100 * LossLoop.resilienceConstantAngle(tan));
        return Outcome.done(results, List.of(Say.note(INFO.source(), "loss.ellipse")));
    }
}
