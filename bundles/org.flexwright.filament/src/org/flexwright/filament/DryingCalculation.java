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
        // the middle of a spread of rates is taken on a logarithmic scale
        WaterDiffusion middle = new WaterDiffusion(Math.sqrt(band.slow().diffusivity() * band.fast().diffusivity()),
                (band.slow().energy() + band.fast().energy()) / 2);
        Estimate left = band(100 * left(band.fast(), in), 100 * left(middle, in), 100 * left(band.slow(), in), band.source());
        Estimate time = band(time(band.fast(), in), time(middle, in), time(band.slow(), in), band.source());
        Estimate gain = band(band.slow().gain(in.temperature()), middle.gain(in.temperature()), band.fast().gain(in.temperature()), band.source());
        List<Remark> remarks = in.temperature() > STICKS_ABOVE
                ? List.of(new Remark(Severity.CAUTION, Message.of(DryingCalculation.class, "drying.hot", Rounded.text(STICKS_ABOVE, "degC")),
                        Source.commonPractice("soft grades stick together above 55 to 60 degC")))
                : List.of();
        return Outcome.done(new Results(left, time, gain), remarks);
    }

    /** Below room temperature the slow and fast ends change places. */
    private static Estimate band(double one, double likely, double other, Source source) {
        double low = Math.min(likely, Math.min(one, other));
        double high = Math.max(likely, Math.max(one, other));
        return new Estimate(low, likely, high, source);
    }

    private static double left(WaterDiffusion water, Inputs in) {
        return water.residual(in.diameter(), in.temperature(), in.time());
    }

    private static double time(WaterDiffusion water, Inputs in) {
        return water.timeTo(in.wanted() / 100, in.diameter(), in.temperature());
    }
}
