package org.flexwright.vatprint;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Layers of a vat print and how long they take. */
@Component(service = Calculation.class)
public final class PrintTimeCalculation implements Calculation<PrintTimeCalculation.Inputs, PrintTimeCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.time";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Time of a vat print", 1,
            "Layers N = height / layer height, rounded up; time = base layers (base exposure + move) + other layers (exposure + move).",
            Source.derived("sum over the layers"), "One exposure for all normal layers, the same move after each. Warming up and fades between base and "
                    + "normal layers come on top.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Height of the print", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "40 mm", help = "From the plate to the top, supports included.") double height,
            @Field(label = "Layer height", kind = QuantityKind.LENGTH, unit = "um", min = 1, max = 1000, def = "50 um", help = "Thickness of one layer.") double layer,
            @Field(label = "Base layers", kind = QuantityKind.COUNT, min = 0, max = 200, def = "5", help = "First layers with a longer exposure.") int baseLayers,
            @Field(label = "Base exposure", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 600, def = "30 s", help = "Of each base layer.") double baseExposure,
            @Field(label = "Exposure", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 600, def = "4 s", help = "Of each other layer.") double exposure,
            @Field(label = "Move", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 120, def = "6 s", help = "Lift, lower and wait, after each layer.") double move) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Layers", kind = QuantityKind.COUNT, help = "All, base layers included.") int layers,
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", help = "Of the whole print.") double time) {
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
        PrintTime time = PrintTime.of(in.height(), in.layer() / 1e3, in.baseLayers());
        return Outcome.done(new Results(time.layers(), time.seconds(in.baseExposure(), in.exposure(), in.move())));
    }
}
