package org.flexwright.safety.light;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** How soon a curing lamp reaches the limits for eye and skin. */
@Component(service = Calculation.class)
public final class UvCalculation implements Calculation<UvCalculation.Inputs, UvCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.uv";

    private static final double WATTS = 10;
    private static final double UVA_END = 400;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Curing lamp: seconds to the limits", 1,
            "Weighted eye and skin dose 30 J/m2 with S = 0.3 x 0.736^(l - 300) + 10^(2 - 0.0163 l), lens dose 10 000 J/m2 for 315 "
                    + "to 400 nm, blue-light dose 100 J/m2 weighted with B for a small source; each over the irradiance.",
            UvDose.SOURCE,
            "Limits for workers and a day of 8 h. One narrow line; real LEDs are 10 to 20 nm wide. Curing lamps at hand distance "
                    + "are far brighter than 1 mW/cm2.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Wavelength", min = 300, max = 405, def = "405", help = "Of the lamp, nm; 300 to 405.") double wavelength,
            @Field(label = "Irradiance", kind = QuantityKind.IRRADIANCE, unit = "mW/cm2", min = 0, minOpen = true, max = 100000, def = "1 mW/cm2", help = "At the eye or hand, measured or from the lamp maker.") double irradiance) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Eye and skin, weighted", kind = QuantityKind.DURATION, unit = "s", help = "Empty where the weight is zero.") Double skin,
            @Field(label = "Lens of the eye", kind = QuantityKind.DURATION, unit = "s", help = "Empty above 400 nm.") Double lens,
            @Field(label = "Retina, small source", kind = QuantityKind.DURATION, unit = "s", help = "Of a source that looks small.") Double blue) {
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
        double watts = WATTS * in.irradiance();
        List<Remark> remarks = new ArrayList<>();
        remarks.add(Say.caution(Source.commonPractice(), "uv.box"));
        if (in.wavelength() > UVA_END) {
            remarks.add(Say.caution(Source.commonPractice(), "uv.width"));
        }
        return Outcome.done(new Results(orNull(UvDose.skinSeconds(in.wavelength(), watts)), orNull(UvDose.lensSeconds(in.wavelength(), watts)),
                orNull(UvDose.blueSeconds(in.wavelength(), watts))), remarks);
    }

    private static Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
