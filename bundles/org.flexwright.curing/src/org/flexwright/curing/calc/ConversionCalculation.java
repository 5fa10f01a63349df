package org.flexwright.curing.calc;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.curing.formula.Arrhenius;
import org.flexwright.curing.formula.OrderRate;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Conversion of an n-th order cure at one temperature. */
@Component(service = Calculation.class)
public final class ConversionCalculation implements Calculation<ConversionCalculation.Inputs, ConversionCalculation.Results> {

    private static final double YEAR = 365.25 * 86_400;

    /** Constants, temperature, time. */
    public record Inputs(
            @Field(label = "Rate at infinite temperature", kind = QuantityKind.RATE, unit = "1/s", min = 0, minOpen = true, max = 1e20, def = "1e6 1/s",
                    help = "A of k = A exp(-Ea/RT); times the starting concentration for a second-order constant.")
            double preExponential,
            @Field(label = "Activation energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 5, max = 200, def = "55 kJ/mol",
                    help = "35 to 75 is usual for urethanes.")
            double activationEnergy,
            @Field(min = 0.1, max = 5, def = "2", help = "1 or 2 is usual; fitted, any number between.") double order,
            @Field(kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 250, def = "60 degC",
                    help = "In the part, not on the oven's dial.")
            double temperature,
            @Field(kind = QuantityKind.DURATION, unit = "min", min = 0, max = 1e6, def = "60 min", help = "At that temperature.") double time,
            @Field(label = "Wanted conversion", kind = QuantityKind.FRACTION, unit = "%", min = 1, max = 99.9, def = "90 %",
                    help = "For the time it takes.")
            double wanted) {
    }

    /** What has reacted. */
    public record Results(
            @Field(label = "Rate", kind = QuantityKind.RATE, unit = "1/s", help = "k at that temperature.") double rate,
            @Field(label = "Conversion", kind = QuantityKind.FRACTION, unit = "%", help = "After that time.") double conversion,
            @Field(label = "Time to the wanted conversion", kind = QuantityKind.DURATION, unit = "min",
                    help = "At that temperature.")
            double timeTo) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.conversion", "Conversion at one temperature", 1,
                "dX/dt = k (1 - X)^n with k = A exp(-Ea/RT): X = 1 - [1 + (n - 1) k t]^(1/(1 - n)), for n = 1 X = 1 - exp(-k t).",
                Source.derived("Closed form of the rate law"), "Inside the temperatures the constants were fitted in, before the network turns stiff.");
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
        double k = new Arrhenius(in.preExponential(), in.activationEnergy()).at(in.temperature());
        double to = OrderRate.progress(in.order(), in.wanted() / 100) / k;
        if (!(to < YEAR)) {
            return Outcome.refused("temperature", Say.RATE_STANDS.with(), Say.RATE_STANDS_REMEDY.with());
        }
        double conversion = OrderRate.conversion(in.order(), k * in.time() * 60);
        List<Remark> remarks = new ArrayList<>(List.of(Say.OWN_CONSTANTS.note(Examples.TEST_RESIN)));
        if (conversion > 0.9 && in.temperature() < 40) {
            remarks.add(Say.VITRIFIED.note(Source.commonPractice(), Figures.percent(0.9)));
        }
        return Outcome.done(new Results(k, 100 * conversion, to / 60), remarks);
    }
}
