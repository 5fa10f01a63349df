package org.flexwright.curing.calc;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.curing.formula.Arrhenius;
import org.flexwright.curing.formula.OrderRate;
import org.flexwright.curing.formula.PublishedSets;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Cure of two urethanes with published constants: worked examples to compare one's own resin with. */
@Component(service = Calculation.class)
public final class PublishedCureCalculation implements Calculation<PublishedCureCalculation.Inputs, PublishedCureCalculation.Results> {

    private static final Source SETS = Source.published("Baser and Khakhar 1994 by way of open foam code of the MoDeNa project; Kincal and Ozkar 1997, abstract");

    /** Published sets. */
    public enum Set {
        /** A fast rigid urethane without water. */
        FAST_RIGID,
        /** HTPB with IPDI, a soft slow one, 0.7 mol/l. */
        SLOW_SOFT;

        /** Rate constant times starting concentration, 1/s. */
        double rate(double celsius) {
            return switch (this) {
                case FAST_RIGID -> PublishedSets.baserKhakhar().rate().at(celsius);
                case SLOW_SOFT -> 0.7 * PublishedSets.softPolyurethane(celsius + Arrhenius.ZERO_CELSIUS);
            };
        }
    }

    /** Which, at what temperature, how long. */
    public record Inputs(
            @Field(def = "slow-soft", help = "Fast rigid: gels in minutes. Slow soft: HTPB with IPDI, hours at 60 degC.") Set set,
            @Field(kind = QuantityKind.TEMPERATURE, unit = "degC", min = 15, max = 90, def = "60 degC", help = "Kept all along.") double temperature,
            @Field(kind = QuantityKind.DURATION, unit = "h", min = 0, max = 10000, def = "24 h", help = "At that temperature.") double time) {
    }

    /** What has reacted. */
    public record Results(
            @Field(kind = QuantityKind.RATE, unit = "1/s", help = "Rate constant times starting concentration.") double rate,
            @Field(kind = QuantityKind.FRACTION, unit = "%", help = "Conversion after that time, second order.") double conversion,
            @Field(label = "Half is done after", kind = QuantityKind.DURATION, unit = "h", help = "At that temperature.") double half) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.published", "Cure of published urethanes", 1,
                "Second-order cure X = kt/(1 + kt) with published constants: how far apart two urethanes can lie.", SETS,
                "Examples, never your own resin. The fast set is trustworthy to X = 0.5; units of the slow set are assumed to be l/mol/s.");
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
        double rate = in.set().rate(in.temperature());
        Results results = new Results(rate, 100 * OrderRate.conversion(2, rate * in.time() * 3600), OrderRate.progress(2, 0.5) / rate / 3600);
        return Outcome.done(results, List.of(Say.OWN_CONSTANTS.note(SETS)));
    }
}
