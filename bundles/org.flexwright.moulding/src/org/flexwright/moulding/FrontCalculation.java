package org.flexwright.moulding;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.flow.Channel;
import org.flexwright.core.flow.RoundChannel;
import org.flexwright.core.flow.SlotChannel;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How far a thickening mix runs into a thin channel of the cavity. */
@Component(service = Calculation.class)
public final class FrontCalculation implements Calculation<FrontCalculation.Inputs, FrontCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "moulding.flow-length";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Flow length of a thickening mix", 1,
            "How far the mix has run into an empty bore or slot after a time, under constant pressure, while its viscosity grows as "
                    + "eta0 exp(t / tau). Bore: x^2 = R^2 p / (4 eta0) tau (1 - exp(-t / tau)); slot: x^2 = h^2 p / (6 eta0) tau (1 - exp(-t / tau)).",
            Source.derived("Hagen-Poiseuille flow behind a moving front, integrated over an exponentially growing viscosity"),
            "Laminar, index 1, cross-section constant, pressure held at the inlet, front not held up by trapped air or surface tension.");

    /** Shape of the channel. */
    public enum Shape {
        /** A bore. */
        BORE,
        /** A slot much wider than high. */
        SLOT
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Channel", def = "bore", help = "Round bore, or slot much wider than high.") Shape shape,
            @Field(label = "Radius or slot height", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100, def = "1 mm", help = "Radius of a bore; full height of a slot.") double size,
            @Field(label = "Pressure at the inlet", kind = QuantityKind.PRESSURE_GAUGE, unit = "kPa gauge", min = 0, minOpen = true, max = 1000, def = "50 kPa gauge", help = "Above the air in the cavity.") double pressure,
            @Field(label = "Viscosity at the start", kind = QuantityKind.VISCOSITY, unit = "Pa s", min = 0, minOpen = true, max = 10000, def = "2 Pa s", help = "Of the mix when it enters.") double viscosity,
            @Field(label = "Working time left", kind = QuantityKind.DURATION, unit = "s", min = 0, minOpen = true, max = 86400, def = "3.5 min", help = "From then to the end of the working time.") double workingTime,
            @Field(label = "Thickens by then", min = 1, minOpen = true, max = 1000, def = "2", help = "How many times thicker the mix is by then.") double growth,
            @Field(label = "After", kind = QuantityKind.DURATION, unit = "s", min = 0, minOpen = true, max = 86400, def = "60 s", help = "Time since the mix entered.") double after) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Front after that time", kind = QuantityKind.LENGTH, unit = "mm", help = "From the inlet.") double front,
            @Field(label = "Farthest it ever gets", kind = QuantityKind.LENGTH, unit = "mm", help = "When the mix has set.") double farthest) {
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
        double size = in.size() / 1e3;
        Channel channel = in.shape() == Shape.BORE ? new RoundChannel(size, 1) : new SlotChannel(1, size, 1);
        double tau = ThickeningFlow.timeConstant(in.workingTime(), in.growth());
        double pressure = 1e3 * in.pressure();
        double front = channel.frontLength(pressure, ThickeningFlow.driven(in.viscosity(), tau, in.after()));
        double farthest = channel.frontLength(pressure, tau / in.viscosity());
        return Outcome.done(new Results(1e3 * front, 1e3 * farthest));
    }
}
