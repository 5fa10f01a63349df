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
import org.flexwright.curing.formula.Resin;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Cure of three urethanes with published constants: worked examples to compare one's own resin with. */
@Component(service = Calculation.class)
public final class PublishedCureCalculation implements Calculation<PublishedCureCalculation.Inputs, PublishedCureCalculation.Results> {

    private static final Source SETS = Source.published("Baser and Khakhar 1994 by way of open foam code of the MoDeNa project; Kincal and Ozkar 1997, abstract");
    private static final double SLOW_CONCENTRATION = 0.7;
    private static final double SLOW_ENTHALPY = 41.1;
    private static final double TRUSTED = 0.5;

    /** Published sets. */
    public enum Set {
        /** A fast rigid urethane without water. */
        FAST_RIGID,
        /** A water-blown foam. */
        FOAM,
        /** HTPB with IPDI, a soft slow one, 0.7 mol/l. */
        SLOW_SOFT
    }

    /** Which, at what temperature, how long. */
    public record Inputs(
            @Field(def = "slow-soft", help = "Fast rigid: gels in minutes. Foam: water-blown. Slow soft: HTPB with IPDI, hours at 60 degC.") Set set,
            @Field(kind = QuantityKind.TEMPERATURE, unit = "degC", min = 15, max = 90, def = "60 degC", help = "Kept all along.") double temperature,
            @Field(kind = QuantityKind.DURATION, unit = "h", min = 0, max = 10000, def = "24 h", help = "At that temperature.") double time) {
    }

    /** What has reacted. */
    public record Results(
            @Field(kind = QuantityKind.FRACTION, unit = "%", help = "Of the hydroxyl groups, after that time.") double conversion,
            @Field(label = "Water used up", kind = QuantityKind.FRACTION, unit = "%", optional = true, help = "Of the foam; empty for the others.") Double water,
            @Field(label = "Time to 85 %", kind = QuantityKind.DURATION, unit = "h", optional = true, help = "At that temperature; empty for the foam.") Double timeTo,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", help = "Of the reaction with hydroxyl.") double activationEnergy) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.published", "Cure of published urethanes", 1,
                "Second-order cure with published constants, the fast one with the factor its users select above half conversion, the foam with its water: "
                        + "how far apart three urethanes can lie.",
                SETS, "Examples, never your own resin. The plain fast set is trustworthy to X = 0.5; units of the slow set are assumed to be l/mol/s.");
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
        double kelvin = in.temperature() + Arrhenius.ZERO_CELSIUS;
        double seconds = in.time() * 3600;
        Results results = switch (in.set()) {
            case FAST_RIGID -> fast(seconds, kelvin);
            case FOAM -> foam(seconds, kelvin);
            case SLOW_SOFT -> slow(seconds, kelvin);
        };
        return Outcome.done(results, List.of(Say.OWN_CONSTANTS.note(SETS)));
    }

    /** Plain law to half conversion, slowed beyond it as its users do. */
    private static Results fast(double seconds, double kelvin) {
        Resin resin = PublishedSets.baserKhakhar();
        Resin slowed = PublishedSets.baserKhakharCorrected();
        double plain = OrderRate.conversion(resin.order(), resin.rate().atKelvin(kelvin) * seconds);
        double conversion = plain <= TRUSTED ? plain : slowed.conversion(seconds, kelvin);
        return new Results(100 * conversion, null, slowed.isothermalTime(0.85, kelvin) / 3600, resin.rate().activationEnergy());
    }

    private static Results foam(double seconds, double kelvin) {
        double[] reacted = PublishedSets.foam(seconds, kelvin);
        return new Results(100 * reacted[0], 100 * reacted[1], null, PublishedSets.foamGelling().activationEnergy());
    }

    private static Results slow(double seconds, double kelvin) {
        double rate = SLOW_CONCENTRATION * PublishedSets.softPolyurethane(kelvin);
        return new Results(100 * OrderRate.conversion(2, rate * seconds), null, OrderRate.progress(2, 0.85) / rate / 3600,
                PublishedSets.activationEnergy(SLOW_ENTHALPY, kelvin));
    }
}
