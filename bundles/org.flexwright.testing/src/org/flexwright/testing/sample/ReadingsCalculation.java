package org.flexwright.testing.sample;

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
import org.flexwright.numerics.Dixon;
import org.flexwright.numerics.Grubbs;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;
import org.flexwright.numerics.Outlier;
import org.flexwright.numerics.Sides;
import org.flexwright.numerics.ToleranceInterval;
import org.flexwright.numerics.Uncertainty;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Centre, spread and uncertainty of readings. */
@Component(service = Calculation.class)
public final class ReadingsCalculation implements Calculation<ReadingsCalculation.Inputs, ReadingsCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.readings";

    private static final double LEVEL = 0.95;
    private static final Source ORDER_STATISTICS = Source.derived("smallest and largest of n values enclose the median with 1 - 2^(1-n)");
    private static final Source T_INTERVAL = Source.derived("Student t interval, 95 %");
    private static final Source TOLERANCE = Source.derived("two-sided normal tolerance interval, 95 % of all with 95 % confidence, integrated (NIST/SEMATECH e-Handbook 7.2.6.3 has Howe's approximation)");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Several readings: centre and uncertainty", 2,
            "Median with the smallest and largest value as its band (probability 1 - 2^(1-n)), mean with its 95 % t interval t s "
                    + "/ sqrt(n), and the uncertainty with the gauge: u^2 = s^2/n + d^2/12 + a^2/3 for a step d of the display and a half "
                    + "width a from its sheet. Between which values 19 of 20 of all lie is a tolerance interval "
                    + "for values that spread like a bell, with 95 % confidence. A value far out is pointed at by Grubbs and Dixon, never dropped.",
            Source.published("JCGM 100:2008 (GUM); NIST/SEMATECH e-Handbook 1.3.5.17 for Grubbs; Rorabacher 1991 for Dixon"),
            "Readings of one thing. Readings on one part say how well that part is known, not how parts differ.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Values", min = 1, max = 1000, def = "61; 60.5; 62; 61; 60", help = "All of them, semicolons between.") List<Double> readings,
            @Field(label = "Step of the display", min = 0, def = "0.5", help = "In the unit of the values; 0 when it does not matter.") double resolution,
            @Field(label = "Half width of the gauge", min = 0, def = "1", help = "From its sheet or check; 0 when unknown.") double accuracy) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Median", help = "Band from smallest to largest.") Estimate median,
            @Field(label = "Probability of that band", kind = QuantityKind.FRACTION, unit = "%", help = "That it holds the median of what was read.") double coverage,
            @Field(label = "Mean", help = "With its 95 % t interval; empty for one value.") Estimate mean,
            @Field(label = "Standard deviation", help = "Of single values; empty for one.") Double deviation,
            @Field(label = "Spread", help = "Largest less smallest.") double spread,
            @Field(label = "Uncertainty with the gauge", help = "Half width at 95 %, step and sheet figure of the gauge included; empty for one value.") Double uncertainty,
            @Field(label = "19 of 20 of all", help = "Where 95 % of all such values lie, with 95 % confidence; empty for one value.") Estimate all,
            @Field(label = "Number", help = "Of values.") int count) {
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
        double[] x = in.readings().stream().mapToDouble(Double::doubleValue).toArray();
        Estimate median = new Estimate(Descriptive.min(x), Descriptive.median(x), Descriptive.max(x), ORDER_STATISTICS);
        double coverage = 100 * Intervals.medianMinMaxCoverage(x.length);
        if (x.length == 1) {
            return Outcome.done(new Results(median, coverage, null, null, 0, null, null, 1), List.of(Say.caution(INFO.source(), "readings.one")));
        }
        double deviation = Descriptive.standardDeviation(x).orElseThrow();
        Interval interval = Intervals.meanT(x, LEVEL).orElseThrow();
        Estimate mean = new Estimate(interval.low(), Descriptive.mean(x), interval.high(), T_INTERVAL);
        Uncertainty all = Uncertainty.combine(List.of(Uncertainty.Contribution.of("scatter", deviation / Math.sqrt(x.length), x.length - 1.0),
                Uncertainty.Contribution.of("step", Uncertainty.resolution(in.resolution()), Double.POSITIVE_INFINITY),
                Uncertainty.Contribution.of("gauge", Uncertainty.rectangular(in.accuracy()), Double.POSITIVE_INFINITY)));
        List<Remark> remarks = new ArrayList<>();
        if (x.length == 2) {
            remarks.add(Say.caution(INFO.source(), "readings.two"));
        }
        Grubbs.test(x, 1 - LEVEL, Sides.TWO).filter(Outlier::suspicious)
                .ifPresent(o -> remarks.add(Say.caution(INFO.source(), "readings.outlier", o.index() + 1, Rounded.text(o.value(), ""), Rounded.text(o.statistic(), ""), Rounded.text(o.critical(), ""))));
        Dixon.test(x, Dixon.Confidence.P95).filter(Outlier::suspicious)
                .ifPresent(o -> remarks.add(Say.caution(INFO.source(), "readings.dixon", o.index() + 1, Rounded.text(o.value(), ""), Rounded.text(o.statistic(), ""), Rounded.text(o.critical(), ""))));
        if (deviation == 0) {
            remarks.add(Say.note(INFO.source(), "readings.identical"));
        }
        Interval most = ToleranceInterval.of(x, LEVEL, LEVEL).orElseThrow();
        Estimate share = deviation == 0 ? null : new Estimate(most.low(), Descriptive.mean(x), most.high(), TOLERANCE);
        return Outcome.done(new Results(median, coverage, mean, deviation, Descriptive.range(x), all.standard() == 0 ? 0.0 : all.expanded(LEVEL), share, x.length), remarks);
    }
}
