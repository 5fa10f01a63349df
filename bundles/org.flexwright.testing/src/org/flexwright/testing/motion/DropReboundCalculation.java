package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
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

/** Rebound of an own drop from two heights. The rebound of a standard is another thing, see {@link PlungerReboundCalculation}. */
@Component(service = Calculation.class)
public final class DropReboundCalculation implements Calculation<DropReboundCalculation.Inputs, DropReboundCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.drop-rebound";

    private static final Source SOURCE = Source.derived("energy of a height, m g h; tan delta for a constant loss angle");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Rebound seen, own drop", 2,
            "Energy given back R = 100 h / h0 and coefficient of restitution e = sqrt(h / h0). The band goes from the smallest to the largest "
                    + "rebound, widened by what the heights are read to. tan delta is the one that gives this share at a constant loss angle, and the "
                    + "textbook shortcut R = exp(-pi tan delta) beside it.",
            SOURCE,
            "A ball on the piece or the part on a firm plate. Compares with the same drop height, thing and surface only, never with the "
                    + "rebound of a standard's instrument; tan delta is rough for impacts.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Dropped from", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10000, def = "400 mm", help = "Lowest point of what falls above where it lands.") double drop,
            @Field(label = "Rebound heights", kind = QuantityKind.LENGTH, unit = "mm", min = 1, max = 50, def = "148 mm; 152 mm; 150 mm", help = "Each rebound after the first three, which condition the piece.") List<Double> rebounds,
            @Field(label = "Heights read to", kind = QuantityKind.LENGTH, unit = "mm", min = 0, max = 1000, def = "3 mm", help = "Half width: by eye beside a rule hardly better than 3 mm, from film pictures perhaps 1 mm.") double reading) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Rebound", kind = QuantityKind.FRACTION, unit = "%", help = "Median, smallest and largest of the rebounds.") Estimate rebound,
            @Field(label = "Coefficient of restitution", help = "Square root of the share, with its band.") Estimate restitution,
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
        Optional<Outcome<Results>> refused = ReboundHeights.refused(in.rebounds(), in.drop());
        if (refused.isPresent()) {
            return refused.get();
        }
        double[] share = in.rebounds().stream().mapToDouble(h -> h / in.drop()).toArray();
        double median = Descriptive.median(share);
        double tanDelta = LossLoop.tanDeltaOf(median);
        double least = Descriptive.min(share);
        double most = Descriptive.max(share);
        Estimate rebound = new Estimate(100 * Math.max(0, least - reading(least, in)), 100 * median, 100 * Math.min(1, most + reading(most, in)),
                Source.derived("smallest and largest rebound, widened by the reading of the heights"));
        List<Remark> remarks = new ArrayList<>();
        if (share.length < 3) {
            remarks.add(Say.caution(INFO.source(), "drop.few", share.length));
        }
        remarks.add(Say.note(SOURCE, "rebound.speed"));
        return Outcome.done(new Results(rebound, new Estimate(Math.sqrt(rebound.low() / 100), Math.sqrt(median), Math.sqrt(rebound.high() / 100), rebound.source()), tanDelta, 100 * LossLoop.resilienceApproximate(tanDelta)), remarks);
    }

    /** What the reading of both heights does to a share. */
    private static double reading(double share, Inputs in) {
        return Math.hypot(1, share) * in.reading() / in.drop();
    }
}
