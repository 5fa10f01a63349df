package org.flexwright.filament;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Drying of a sheet, strand or ball with a known diffusivity. */
@Component(service = Calculation.class)
public final class DiffusionCalculation implements Calculation<DiffusionCalculation.Inputs, DiffusionCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "filament.diffusion";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Diffusion out of a sheet, strand or ball", 1,
            "Share of water or solvent that has left a body which held it evenly, over Fo = D t / l^2: sheet sum 2 / b^2 exp(-b^2 Fo), b = (n + 1/2) pi; "
                    + "strand sum 4 / a^2 exp(-a^2 Fo), J0(a) = 0; ball 6 / pi^2 sum exp(-(n pi)^2 Fo) / n^2.",
            Source.published("Crank, The Mathematics of Diffusion, 1975, eqs 4.18, 5.23, 6.20"),
            "Surface kept free of it, constant diffusivity. The length is half the thickness of a sheet, the radius of the others.");

    /** Inputs. */
    public record Inputs(@Field(label = "Body", def = "cylinder", help = "Sheet drying from both faces, long round strand, or ball.") DryingShape shape,
            @Field(label = "Half thickness or radius", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "0.875 mm", help = "Half the thickness of a sheet; the radius of a strand or ball.") double size,
            @Field(label = "Diffusivity", kind = QuantityKind.DIFFUSIVITY, unit = "m2/s", min = 0, minOpen = true, max = 1e-6, def = "3.4e-12 m2/s", help = "At the temperature of the body.") double diffusivity,
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 1e10, def = "6 h", help = "Since it began to dry.") double time,
            @Field(label = "Wanted share left", kind = QuantityKind.FRACTION, unit = "%", min = 0.001, max = 99, def = "10 %", help = "Of what it held.") double wanted) {
    }

    /** Results. */
    public record Results(@Field(label = "Gone", kind = QuantityKind.FRACTION, unit = "%", help = "Of what it held, after that time.") double gone,
            @Field(label = "Fourier number", help = "Diffusivity times time by length squared.") double fourier,
            @Field(label = "Time to the wanted share", kind = QuantityKind.DURATION, unit = "s", help = "With this diffusivity.") double timeWanted,
            @Field(label = "Fourier number of the wanted share", help = "Of this body.") double fourierWanted) {
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
        double unit = Math.pow(in.size() / 1e3, 2) / in.diffusivity();
        double fourier = in.time() / unit;
        double wanted = in.shape().fourier(in.wanted() / 100);
        return Outcome.done(new Results(100 * (1 - in.shape().residual(fourier)), fourier, wanted * unit, wanted));
    }
}
