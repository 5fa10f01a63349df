package org.flexwright.testing.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

/** Rebound of a standard's plunger; a drop of one's own is another thing, see {@link DropReboundCalculation}. */
@Component(service = Calculation.class)
public final class PlungerReboundCalculation implements Calculation<PlungerReboundCalculation.Inputs, PlungerReboundCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.plunger-rebound";

    private static final double FALL = 400;
    private static final double THICKNESS = 12.5;
    /** Our reading of how near a piece should come, mm. */
    private static final double THICKNESS_ROOM = 0.5;
    private static final int CONDITIONING = 3;
    private static final int READ = 3;
    private static final Source SOURCE = Source.fromMemory("ASTM D2632: 28 g plunger, 400 mm fall, 12.5 mm piece, three blows first, then the fourth to the sixth are read");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Rebound, standard plunger", 1,
            "R = 100 h / 400 mm of the fourth to the sixth rebound of a 28 g plunger; the median counts.", SOURCE,
            "The instrument of the standard on a piece 12.5 mm thick. Does not compare with a pendulum, with another instrument or with a drop of one's own. Buy the standard before claiming to follow it.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Rebound heights", kind = QuantityKind.LENGTH, unit = "mm", min = 4, max = 50, def = "140 mm; 146 mm; 149 mm; 150 mm; 151 mm; 150 mm", help = "All of them in order; the first three condition the piece and do not count.") List<Double> rebounds,
            @Field(label = "Thickness of the piece", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100, def = "12.5 mm", help = "The standard has 12.5 mm.") double thickness) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Rebound", kind = QuantityKind.FRACTION, unit = "%", help = "Median, smallest and largest of those that count.") Estimate rebound,
            @Field(label = "Rebounds that count", kind = QuantityKind.COUNT, help = "From the fourth on.") int counted) {
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
        Optional<Outcome<Results>> refused = ReboundHeights.refused(in.rebounds(), FALL);
        if (refused.isPresent()) {
            return refused.get();
        }
        double[] share = in.rebounds().stream().skip(CONDITIONING).limit(READ).mapToDouble(h -> 100 * h / FALL).toArray();
        List<Remark> remarks = new ArrayList<>();
        if (share.length < READ) {
            remarks.add(Say.caution(SOURCE, "plunger.few", share.length, READ));
        }
        if (in.rebounds().size() > CONDITIONING + READ) {
            remarks.add(Say.note(SOURCE, "plunger.more", in.rebounds().size() - CONDITIONING - READ));
        }
        if (Math.abs(in.thickness() - THICKNESS) > THICKNESS_ROOM) {
            remarks.add(Say.caution(SOURCE, "plunger.thickness", Rounded.text(in.thickness(), "mm")));
        }
        Estimate rebound = new Estimate(Descriptive.min(share), Descriptive.median(share), Descriptive.max(share), Source.derived("smallest and largest of those that count"));
        return Outcome.done(new Results(rebound, share.length), remarks);
    }
}
