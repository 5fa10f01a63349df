package org.flexwright.testing.sample;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Share of parts that did something. */
@Component(service = Calculation.class)
public final class CountsCalculation implements Calculation<CountsCalculation.Inputs, CountsCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.counts";

    /** Below so many parts nothing is concluded. */
    private static final int FEWEST = 3;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Share of parts that did something", 1,
            "Share k / n with the exact interval of Clopper and Pearson: 4 of 5 is 80 %, and 28 to 99 % are not excluded.",
            Source.published("C. J. Clopper and E. S. Pearson 1934, Biometrika 26, 404"),
            "Parts made alike and tested once each. Several tries on one part are one part.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Did", min = 0, max = 100000, def = "4", help = "How many parts did it.") int did,
            @Field(label = "Of", min = 1, max = 100000, def = "5", help = "How many parts were tried.") int tried,
            @Field(label = "Confidence", kind = QuantityKind.FRACTION, unit = "%", min = 50, max = 99.99, def = "95 %", help = "Two-sided; 95 % is usual.") double level) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Share", kind = QuantityKind.FRACTION, unit = "%", help = "With its exact interval.") Estimate share,
            @Field(label = "In words", help = "As it may stand in a conclusion.") String words) {
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
        if (in.did() > in.tried()) {
            return Outcome.refused("did", Say.message("counts.more", in.did(), in.tried()), Say.message("counts.more.remedy"));
        }
        Interval exact = Intervals.clopperPearson(in.did(), in.tried(), in.level() / 100);
        double low = 100 * exact.low();
        double high = 100 * exact.high();
        String key = in.did() == 0 ? "counts.none" : in.did() == in.tried() ? "counts.all" : "counts.some";
        String words = Say.message(key, in.did(), in.tried(), Math.round(low), Math.round(high)).text();
        Results results = new Results(new Estimate(low, 100.0 * in.did() / in.tried(), high, INFO.source()), words);
        return in.tried() < FEWEST ? Outcome.done(results, List.of(Say.caution(INFO.source(), "counts.few", in.tried()))) : Outcome.done(results);
    }
}
