package org.flexwright.testing.motion;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.numerics.LeastSquares;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Coefficient of restitution from the sound of a bouncing ball or part. */
@Component(service = Calculation.class)
public final class ReboundCalculation implements Calculation<ReboundCalculation.Inputs, ReboundCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.rebound";

    /** Expanded uncertainty at about 95 %. */
    private static final double COVERAGE = 2;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Rebound heard", 1,
            "Flight times T between impacts give e = T1 / T0, the share of energy given back e^2, and the height it was dropped "
                    + "from g T0^2 / (8 e^2). With more than three impacts e is fitted over all flights too: ln T(n) = n ln e + ln T0.",
            BouncingBall.SOURCE,
            "A compact part that does not spin or tumble on a firm floor; air drag left out. e falls with speed: compare the same "
                    + "drop height only.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Times of the impacts", kind = QuantityKind.DURATION, unit = "s", min = 3, max = 200, def = "0; 0.6; 1.08", help = "Seconds in a sound recording, three at least, rising.") List<Double> impacts,
            @Field(label = "Uncertainty of a time", kind = QuantityKind.DURATION, unit = "ms", min = 0, max = 1000, def = "1 ms", help = "Standard uncertainty of one impact.") double timing) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Coefficient of restitution", help = "From the first two flights, two standard uncertainties either way.") Estimate restitution,
            @Field(label = "Rebound", kind = QuantityKind.FRACTION, unit = "%", help = "Energy given back at the second impact.") Estimate rebound,
            @Field(label = "Dropped from", kind = QuantityKind.LENGTH, unit = "mm", help = "As the flights tell, two standard uncertainties either way; compare with the height you set.") Estimate dropHeight,
            @Field(label = "Coefficient over all flights", help = "Empty for three impacts.") Double fitted,
            @Field(label = "Comes to rest after", kind = QuantityKind.DURATION, unit = "s", help = "From the first impact.") double rest) {
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
        double[] flights = new double[in.impacts().size() - 1];
        for (int i = 0; i < flights.length; i++) {
            flights[i] = in.impacts().get(i + 1) - in.impacts().get(i);
            if (!(flights[i] > 0)) {
                return Outcome.refused("impacts", Say.message("rebound.order", i + 2), Say.message("rebound.order.remedy"));
            }
            if (i > 0 && flights[i] >= flights[i - 1]) {
                return Outcome.refused("impacts", Say.message("rebound.gains", i + 1, i), Say.message("rebound.gains.remedy"));
            }
        }
        double e = BouncingBall.restitution(flights[0], flights[1]);
        double two = COVERAGE * BouncingBall.restitutionUncertainty(flights[0], e, in.timing() / 1000);
        double low = Math.max(0, e - two);
        double high = Math.min(1, e + two);
        double t = in.timing() / 1000;
        double height = 1000 * BouncingBall.dropHeight(flights[0], e);
        double twice = COVERAGE * 1000 * BouncingBall.dropHeightUncertainty(flights[0], flights[1], t, t, t);
        Results results = new Results(new Estimate(low, e, high, BouncingBall.SOURCE), new Estimate(100 * low * low, 100 * e * e, 100 * high * high, BouncingBall.SOURCE),
                new Estimate(Math.max(0, height - twice), height, height + twice, BouncingBall.SOURCE), fitted(flights), BouncingBall.timeToRest(flights[0], e));
        return Outcome.done(results, List.of(Say.note(BouncingBall.SOURCE, "rebound.times"), Say.note(BouncingBall.SOURCE, "rebound.speed")));
    }

    /** Slope of ln T over the number of the flight; empty for two flights, which have no other answer than their ratio. */
    private static Double fitted(double[] flights) {
        if (flights.length < 3) {
            return null;
        }
        double[] number = new double[flights.length];
        double[] logarithm = new double[flights.length];
        for (int i = 0; i < flights.length; i++) {
            number[i] = i;
            logarithm[i] = Math.log(flights[i]);
        }
        return LeastSquares.line(number, logarithm).map(line -> Math.exp(line.slope())).orElseThrow();
    }
}
