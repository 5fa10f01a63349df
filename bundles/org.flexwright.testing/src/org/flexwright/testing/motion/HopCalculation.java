package org.flexwright.testing.motion;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Height of a hop from counted video frames. */
@Component(service = Calculation.class)
public final class HopCalculation implements Calculation<HopCalculation.Inputs, HopCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.hop";

    /** Expanded uncertainty at about 95 %. */
    private static final double COVERAGE = 2;
    /** Below so many frames the height is known to no better than a tenth or so. */
    private static final double FEW_FRAMES = 10;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Height from video frames", 1,
            "A hop that stays t in the air rises h = g t^2 / 8; a fall or rise of time t covers h = g t^2 / 2. Each event is "
                    + "known to one frame: u(t) = 1 / (fps sqrt 6); the band shown is two standard uncertainties.",
            Source.derived("free fall, g = 9.80665 m/s2"),
            "No drag, the same posture at take-off and landing. Slow-motion files may carry a wrong frame rate: film a known fall "
                    + "first.");

    /** What was counted. */
    public enum Motion {
        FLIGHT, FALL
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Motion", def = "flight", help = "Flight: take-off to landing. Fall: from rest down, or up to rest.") Motion motion,
            @Field(label = "Frames", min = 0, minOpen = true, max = 1000000, def = "96", help = "Counted between the two events; half frames when you can tell.") double frames,
            @Field(label = "Frame rate", kind = QuantityKind.FREQUENCY, unit = "fps", min = 0, minOpen = true, max = 1000000, def = "240 fps", help = "True rate of the recording.") double rate) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Height", kind = QuantityKind.LENGTH, unit = "mm", help = "Two standard uncertainties either way.") Estimate height,
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", help = "Frames over frame rate.") double time,
            @Field(label = "Standard uncertainty of the height", kind = QuantityKind.LENGTH, unit = "mm", help = "From the frames alone.") double uncertainty,
            @Field(label = "Relative uncertainty", kind = QuantityKind.FRACTION, unit = "%", help = "Standard uncertainty over height.") double share) {
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
        double time = in.frames() / in.rate();
        boolean flight = in.motion() == Motion.FLIGHT;
        double height = 1000 * (flight ? VideoHeight.ofFlight(time) : VideoHeight.ofFall(time));
        double uncertainty = 1000 * (flight ? VideoHeight.flightUncertainty(time, in.rate()) : VideoHeight.fallUncertainty(time, in.rate()));
        Estimate band = new Estimate(Math.max(0, height - COVERAGE * uncertainty), height, height + COVERAGE * uncertainty, INFO.source());
        Results results = new Results(band, time, uncertainty, 100 * uncertainty / height);
        return in.frames() < FEW_FRAMES ? Outcome.done(results, List.of(Say.caution(INFO.source(), "hop.few", Rounded.text(in.frames(), "")))) : Outcome.done(results);
    }
}
