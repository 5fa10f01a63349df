package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** A time between two pictures of a film: how long a part takes to come back, or stays in. */
@Component(service = Calculation.class)
public final class PictureTimeCalculation implements Calculation<PictureTimeCalculation.Inputs, PictureTimeCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.picture-time";

    /** Expanded uncertainty at about 95 %. */
    private static final double COVERAGE = 2;
    private static final double MILLI = 1000;
    /** Below so many pictures the time is known to no better than a tenth or so. */
    private static final double FEW = 10;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Time between two film pictures", 1,
            "t = (last - first) / rate. Each event is known to one picture: u(t) = 1 / (rate sqrt 6); the band shown is two standard uncertainties, and the time is "
                    + "within one picture either way for certain.",
            Source.derived("two events, each within one picture"),
            "Return time, hold time, fall time. The rate is the one of the recording, not of playing: a slow-motion file may carry another. Film a known fall first.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "First picture", min = 0, max = 1e9, def = "412", help = "Number of the picture where it begins: the finger lets go.") double first,
            @Field(label = "Last picture", min = 0, max = 1e9, def = "478", help = "Number of the picture where it ends: the part has its shape again.") double last,
            @Field(label = "Pictures a second", kind = QuantityKind.FREQUENCY, unit = "fps", min = 0, minOpen = true, max = 1000000, def = "240 fps", help = "True rate of the recording.") double rate) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", help = "Two standard uncertainties either way.") Estimate time,
            @Field(label = "Standard uncertainty", kind = QuantityKind.DURATION, unit = "ms", help = "From the pictures alone.") double uncertainty,
            @Field(label = "Within, for certain", kind = QuantityKind.DURATION, unit = "ms", help = "One picture either way.") double bound) {
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
        double pictures = in.last() - in.first();
        if (pictures < 0) {
            return Outcome.refused("last", Say.message("pictures.order", Rounded.text(in.last(), ""), Rounded.text(in.first(), "")), Say.message("pictures.order.remedy"));
        }
        if (pictures == 0) {
            return Outcome.refused("last", Say.message("pictures.same"), Say.message("pictures.same.remedy", Rounded.text(MILLI / in.rate(), "ms")));
        }
        double time = pictures / in.rate();
        double u = VideoHeight.timeUncertainty(in.rate());
        List<Remark> remarks = new ArrayList<>();
        if (pictures < FEW) {
            remarks.add(Say.caution(INFO.source(), "pictures.few", Rounded.text(pictures, "")));
        }
        return Outcome.done(new Results(new Estimate(Math.max(0, time - COVERAGE * u), time, time + COVERAGE * u, INFO.source()), MILLI * u, MILLI / in.rate()), remarks);
    }
}
