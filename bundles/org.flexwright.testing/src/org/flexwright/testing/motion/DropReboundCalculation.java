package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.numerics.Descriptive;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Rebound from two heights. */
@Component(service = Calculation.class)
public final class DropReboundCalculation implements Calculation<DropReboundCalculation.Inputs, DropReboundCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.drop-rebound";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Rebound seen", 1,
            "Energy given back R = 100 h / h0 and coefficient of restitution e = sqrt(h / h0). tan delta is the one that gives "
                    + "this share at a constant loss angle, and the textbook shortcut R = exp(-pi tan delta) beside it.",
            Source.published("ASTM D2632 (28 g plunger, 400 mm fall, 12.5 mm piece) (from memory, unconfirmed); tan delta derived"),
            "Vertical rebound of a plunger or ball on one piece size. Instruments do not interchange; tan delta is rough for "
                    + "impacts.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Dropped from", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10000, def = "400 mm", help = "Lowest point of ball or plunger above the piece.") double drop,
            @Field(label = "Rebound heights", kind = QuantityKind.LENGTH, unit = "mm", min = 1, max = 50, def = "148 mm; 152 mm; 150 mm", help = "Each rebound after the first three, which condition the piece.") List<Double> rebounds) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Rebound", kind = QuantityKind.FRACTION, unit = "%", help = "Median, smallest and largest of the rebounds.") Estimate rebound,
            @Field(label = "Coefficient of restitution", help = "Square root of the share.") double restitution,
            @Field(label = "tan delta", help = "At a constant loss angle.") double tanDelta,
            @Field(label = "Rebound of the shortcut", kind = QuantityKind.FRACTION, unit = "%", help = "exp(-pi tan delta) at that tan delta.") double shortcut) {
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
        for (int i = 0; i < in.rebounds().size(); i++) {
            double height = in.rebounds().get(i);
            if (!(height > 0 && height < in.drop())) {
                return Outcome.refused("rebounds", Say.message("drop.height", i + 1, Rounded.text(height, "mm"), Rounded.text(in.drop(), "mm")), Say.message("drop.height.remedy"));
            }
        }
        double[] share = in.rebounds().stream().mapToDouble(h -> h / in.drop()).toArray();
        double median = Descriptive.median(share);
        double tanDelta = LossLoop.tanDeltaOf(median);
        Estimate rebound = new Estimate(100 * Descriptive.min(share), 100 * median, 100 * Descriptive.max(share), Source.derived("smallest and largest rebound"));
        List<Remark> remarks = new ArrayList<>();
        if (share.length < 3) {
            remarks.add(Say.caution(INFO.source(), "drop.few", share.length));
        }
        return Outcome.done(new Results(rebound, Math.sqrt(median), tanDelta, 100 * LossLoop.resilienceApproximate(tanDelta)), remarks);
    }
}
