package org.flexwright.safety.energy;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** How hot a surface burns at a touch. */
@Component(service = Calculation.class)
public final class TouchCalculation implements Calculation<TouchCalculation.Inputs, TouchCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.touch";

    /** Below so many degrees nobody is burnt even after hours (ISO 13732-1, from memory). */
    private static final double LABEL = 43;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Hot surfaces and touch", 1,
            "Burn thresholds of ISO 13732-1 for bare metal, glass and plastic at a contact time; the temperature you entered is "
                    + "put beside them.",
            TouchThreshold.SOURCE,
            "Thresholds of a healthy adult, not limits; children burn sooner and let go later. Wipe oil and water off before you "
                    + "measure.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Surface", def = "metal", help = "What is touched.") TouchThreshold.Surface surface,
            @Field(label = "Contact", def = "one-second", help = "How long it is touched.") TouchThreshold.Contact contact,
            @Field(label = "Surface temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 500, def = "60 degC", help = "Measured on the surface.") double temperature) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Burn threshold", kind = QuantityKind.TEMPERATURE, unit = "degC", help = "For that surface and time.") Estimate threshold,
            @Field(label = "Compared", help = "With that threshold.") String comparison) {
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
        Optional<Estimate> threshold = TouchThreshold.of(in.surface(), in.contact());
        if (threshold.isEmpty()) {
            return Outcome.refused("contact", Say.message("touch.no-figure", in.surface(), in.contact()), Say.message("touch.no-figure.remedy"));
        }
        Estimate band = threshold.get();
        String key = in.temperature() < band.low() ? "touch.below" : in.temperature() > band.high() ? "touch.above" : "touch.within";
        List<Remark> remarks = in.temperature() >= LABEL ? List.of(Say.caution(TouchThreshold.SOURCE, "touch.label", Rounded.text(LABEL, "°C"))) : List.of();
        return Outcome.done(new Results(band, Say.message(key, Rounded.text(in.temperature(), "°C"), Rounded.text(band.low(), "°C"), Rounded.text(band.high(), "°C")).text()), remarks);
    }
}
