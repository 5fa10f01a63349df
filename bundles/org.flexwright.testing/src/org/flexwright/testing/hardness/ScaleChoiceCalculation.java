package org.flexwright.testing.hardness;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.GaugeScale;
import org.flexwright.testing.HardnessReading;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Which durometer scale suits a piece. */
@Component(service = Calculation.class)
public final class ScaleChoiceCalculation implements Calculation<ScaleChoiceCalculation.Inputs, ScaleChoiceCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.scale-choice";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Which durometer scale", 1,
            "From one trial reading: D below 20 goes to A, A below 20 to 00, A above 90 to D, 00 above 90 to A. A piece too thin for the scale gives an apparent hardness.",
            ScaleChoice.SCALE_SOURCE, "One trial reading on the piece itself. Read again on the new scale: nothing is converted.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Scale tried", def = "A", help = "Scale of the trial reading.") GaugeScale scale,
            @Field(label = "Reading", min = 0, max = 100, def = "14", help = "The trial reading.") double reading,
            @Field(label = "Thickness", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 500, def = "6.5 mm", help = "Rubber under the spot.") double thickness) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Scale to use", help = "The same one when it suits.") GaugeScale suited,
            @Field(label = "In the trustworthy window", help = "Whether the trial reading lies between 20 and 90.") boolean inWindow,
            @Field(label = "Stands for", help = "What a reading on this thickness stands for.") HardnessReading.Kind standsFor) {
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
        GaugeScale suited = ScaleChoice.suited(in.scale(), in.reading());
        List<Remark> remarks = new ArrayList<>();
        if (suited == in.scale() && !ScaleChoice.inWindow(in.reading())) {
            remarks.add(Say.caution(ScaleChoice.WINDOW_SOURCE, "window.alone", Rounded.text(in.reading(), ""), in.scale(), suited));
        }
        if (in.thickness() < HardnessReading.neededThickness(suited)) {
            remarks.add(Say.caution(Source.published("ISO 48-4:2018, clause not confirmed"), "thin.choice", Rounded.text(in.thickness(), "mm"),
                    Rounded.text(HardnessReading.neededThickness(suited), "mm"), suited));
        }
        return Outcome.done(new Results(suited, ScaleChoice.inWindow(in.reading()), HardnessReading.kindOf(suited, in.thickness(), false)), remarks);
    }
}
