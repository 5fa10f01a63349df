package org.flexwright.testing.hardness;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.Line;
import org.flexwright.numerics.StudentT;
import org.flexwright.numerics.Uncertainty;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** How fast a durometer reading sinks while the gauge rests: a simple creep index. */
@Component(service = Calculation.class)
public final class DecayCalculation implements Calculation<DecayCalculation.Inputs, DecayCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.hardness-decay";

    private static final Source SOURCE = Source.commonPractice("readings fall along a line over the logarithm of time");
    private static final double LEVEL = 0.95;
    private static final double COVERAGE = 2;
    private static final double HALF = 0.5;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Fall of a reading while the gauge rests", 1,
            "Fits H = H1 - c log10(t / 1 s) to readings of one contact. c is the fall for each ten times longer; H at another dwell follows from it.",
            SOURCE, "One contact, 0.5 s to some minutes. Between dwells of one material only; no substitute for reading at the same dwell.");

    /**
     * A reading of the contact.
     *
     * @param time    s from contact
     * @param reading points
     */
    public record Point(
            @Field(label = "Time", kind = QuantityKind.DURATION, unit = "s", min = 0.1, max = 100000, help = "From contact.") double time,
            @Field(label = "Reading", min = 0, max = 100, help = "At that time.") double reading) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Readings", min = 2, max = 100, def = "1; 62 | 3; 60.5 | 15; 58 | 60; 56", help = "Time and reading of one contact, two at least.") List<Point> readings,
            @Field(label = "Dwell wanted", kind = QuantityKind.DURATION, unit = "s", min = 0.1, max = 100000, def = "3 s", help = "Where the fitted reading is wanted.") double dwell) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Fall", help = "Points for each ten times longer.") Estimate fall,
            @Field(label = "Reading at 1 s", help = "Of the fitted line.") double atOneSecond,
            @Field(label = "Reading at the dwell wanted", help = "Of the fitted line.") double atDwell) {
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

    /** The fitted line over log10 of time; empty when all times are the same. */
    static Optional<Line> fit(List<Point> readings) {
        return LeastSquares.line(readings.stream().mapToDouble(p -> Math.log10(p.time())).toArray(), readings.stream().mapToDouble(Point::reading).toArray());
    }

    /** Points lost for each ten times longer, the band never narrower than the dial's step allows; of two points alone without a band. */
    static Estimate fall(Line line, List<Point> readings) {
        if (line.slopeError().isEmpty()) {
            return Estimate.exact(-line.slope(), SOURCE);
        }
        double scatter = StudentT.quantile((1 + LEVEL) / 2, line.n() - 2.0) * line.slopeError().getAsDouble();
        double least = COVERAGE * Uncertainty.resolution(step(readings)) / Math.sqrt(line.sumOfSquaresX());
        return Estimate.plusMinus(-line.slope(), Math.max(scatter, least), SOURCE);
    }

    /** The step it was read to, as the readings show it: whole points or half ones. */
    private static double step(List<Point> readings) {
        return readings.stream().allMatch(point -> point.reading() == Math.rint(point.reading())) ? 1 : HALF;
    }

    @Override
    public Outcome<Results> run(Inputs in) {
        Optional<Line> fitted = fit(in.readings());
        if (fitted.isEmpty()) {
            return Outcome.refused("readings", Say.message("same-times"), Say.message("same-times.remedy"));
        }
        Line line = fitted.get();
        Results results = new Results(fall(line, in.readings()), line.intercept(), line.at(Math.log10(in.dwell())));
        return line.n() == 2 ? Outcome.done(results, List.of(Say.note(SOURCE, "two-points"))) : Outcome.done(results);
    }
}
