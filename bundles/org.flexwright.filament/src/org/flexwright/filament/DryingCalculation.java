package org.flexwright.filament;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How long a strand dries, with what is known of how water moves in it. */
@Component(service = Calculation.class)
public final class DryingCalculation implements Calculation<DryingCalculation.Inputs, DryingCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.drying";

    private static final double STICKS_ABOVE = 55;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Drying a strand", 1,
            "Share of its water that a round strand still holds after a time, sum 4 / a_n^2 exp(-a_n^2 D t / r^2) over the zeros a_n of J0, and the time "
                    + "until a wanted share is left; D grows with temperature as exp(-Ea / (R T)). Without own values the published spread makes a band.",
            Source.published("Crank, The Mathematics of Diffusion, 1975, eq. 5.23; spread of D: " + WaterBand.DIFFUSIVITY_SOURCE + "; Ea: "
                    + WaterBand.ENERGY_SOURCE + ", falling to half at saturation"),
            "One strand in dry moving air. A wound spool dries more slowly, humid air leaves a floor, and Ea was measured at 27 to 40 degC only. "
                    + "Weigh the spool: that counts more.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Strand diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0.1, max = 10, def = "1.75 mm", help = "Mean of several places.") double diameter,
            @Field(label = "Temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = 0, max = 150, def = "50 degC", help = "Of the strand.") double temperature,
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 1e8, def = "6 h", help = "In the dryer.") double time,
            @Field(label = "Wanted share left", kind = QuantityKind.FRACTION, unit = "%", min = 0.001, max = 99, def = "10 %", help = "Of the water it held.") double wanted,
            @Field(label = "Diffusivity at 23 degC", kind = QuantityKind.DIFFUSIVITY, unit = "m2/s", min = 1e-16, max = 1e-6, optional = true, help = "Of water in your strand; left empty, the published spread.") Double diffusivity,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 0, max = 200, optional = true, help = "Of that diffusivity; left empty, the published values.") Double energy) {
    }

    /** Results. */
    public record Results(@Field(label = "Water left", kind = QuantityKind.FRACTION, unit = "%", help = "Of what it held, after that time.") Estimate left,
            @Field(label = "Time to the wanted share", kind = QuantityKind.DURATION, unit = "s", help = "At that temperature.") Estimate time,
            @Field(label = "Faster than at 23 degC", help = "How many times, by temperature alone.") Estimate gain) {
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
        WaterBand band = WaterBand.of(in.diffusivity(), in.energy());
        Estimate left = band.of(rate -> 100 * rate.residual(in.diameter(), in.temperature(), in.time()));
        Estimate time = band.of(rate -> rate.timeTo(in.wanted() / 100, in.diameter(), in.temperature()));
        Estimate gain = band.of(rate -> rate.gain(in.temperature()));
        List<Remark> remarks = in.temperature() > STICKS_ABOVE
                ? List.of(new Remark(Severity.CAUTION, Message.of(DryingCalculation.class, "drying.hot", Rounded.text(STICKS_ABOVE, "°C")),
                        Source.commonPractice("soft grades stick together above 55 to 60 degC")))
                : List.of();
        return Outcome.done(new Results(left, time, gain), remarks);
    }
}
