package org.flexwright.vatprint;

import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.numerics.LeastSquares;
import org.flexwright.numerics.Line;
import org.flexwright.numerics.StudentT;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Fits a resin's working curve to measured cure depths. */
@Component(service = Calculation.class)
public final class WorkingCurveCalculation implements Calculation<WorkingCurveCalculation.Inputs, WorkingCurveCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "vatprint.working-curve";

    /** Upper end of a two-sided 95 % interval. */
    private static final double UPPER_END = 0.975;
    private static final int FEWEST_POINTS = 3;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Working curve of a resin", 1,
            "Penetration depth Dp and critical dose Ec from films cured with different doses: depth = Dp ln(E / Ec), fitted by least squares of "
                    + "depth on ln E; Dp is the slope, Ec the dose where the line meets zero depth. Both come with their 95 % interval.",
            WorkingCurve.SOURCE,
            "One resin, one lamp, one temperature, doses between the smallest and largest tried. Calipers squash soft films: measured depths come "
                    + "out thin (Bennett 2017). Values of other laboratories differ by up to 7 times in Dp and 70 times in Ec for the same resin "
                    + "(Kolibaba et al. 2024): use your own.");

    /** A cured film. */
    public record Film(
            @Field(label = "Dose", kind = QuantityKind.DOSE, unit = "mJ/cm2", min = 0, minOpen = true, max = 100000, help = "Irradiance times time.") double dose,
            @Field(label = "Depth", kind = QuantityKind.LENGTH, unit = "um", min = 0, minOpen = true, max = 20000, help = "Thickness of the cured film.") double depth) {
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Films", def = "8; 45 | 12; 108 | 18; 164 | 27; 228 | 40; 287", help = "Dose and cured depth of each film; three at least, at different doses.") List<Film> films) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Penetration depth Dp", kind = QuantityKind.LENGTH, unit = "um", help = "Slope, with its 95 % interval.") Estimate penetrationDepth,
            @Field(label = "Critical dose Ec", kind = QuantityKind.DOSE, unit = "mJ/cm2", help = "With its 95 % interval.") Estimate criticalDose,
            @Field(label = "Standard error of Dp", kind = QuantityKind.LENGTH, unit = "um", help = "Of the slope.") double slopeError,
            @Field(label = "Scatter about the curve", kind = QuantityKind.LENGTH, unit = "um", help = "Standard deviation of the depths about the line.") double scatter) {
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
        double[] x = in.films().stream().mapToDouble(film -> Math.log(film.dose())).toArray();
        double[] y = in.films().stream().mapToDouble(Film::depth).toArray();
        if (x.length < FEWEST_POINTS) {
            return refused("curve.few", x.length, FEWEST_POINTS);
        }
        Optional<Line> fitted = LeastSquares.line(x, y);
        if (fitted.isEmpty()) {
            return refused("curve.same-dose");
        }
        Line line = fitted.get();
        double factor = StudentT.quantile(UPPER_END, x.length - 2.0);
        double slopeError = line.slopeError().orElseThrow();
        double half = factor * slopeError;
        if (!(line.slope() - half > 0)) {
            return refused("curve.no-slope");
        }
        Source source = Source.ownRecord("fit of " + x.length + " films");
        return Outcome.done(new Results(Estimate.plusMinus(line.slope(), half, source), criticalDose(line, factor, source), slopeError,
                line.residualSd().orElseThrow()));
    }

    /** The dose at zero depth with its interval by Fieller's theorem: where the confidence band of the line meets zero. */
    private static Estimate criticalDose(Line line, double factor, Source source) {
        double meanY = line.at(line.meanX());
        double error = line.residualSd().orElseThrow();
        double g = factor * factor * error * error / (line.slope() * line.slope() * line.sumOfSquaresX());
        double centre = -meanY / line.slope();
        double root = factor * error / line.slope() * Math.sqrt((1 - g) / line.n() + centre * centre / line.sumOfSquaresX());
        double low = line.meanX() + (centre - root) / (1 - g);
        double high = line.meanX() + (centre + root) / (1 - g);
        return new Estimate(Math.exp(low), Math.exp(line.meanX() + centre), Math.exp(high), source);
    }

    private static Outcome<Results> refused(String key, Object... args) {
        return Outcome.refused("films", Message.of(WorkingCurveCalculation.class, key, args), Message.of(WorkingCurveCalculation.class, "curve.remedy"));
    }
}
