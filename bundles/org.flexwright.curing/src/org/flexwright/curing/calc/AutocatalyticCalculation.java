package org.flexwright.curing.calc;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.curing.formula.KamalSourour;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Conversion of a cure that drives itself. */
@Component(service = Calculation.class)
public final class AutocatalyticCalculation implements Calculation<AutocatalyticCalculation.Inputs, AutocatalyticCalculation.Results> {

    /** Constants and time. */
    public record Inputs(
            @Field(label = "Starting rate k1", kind = QuantityKind.RATE, unit = "1/s", min = 0, minOpen = true, max = 10, def = "0.001 1/s",
                    help = "At the temperature at hand; above zero, else nothing starts.")
            double k1,
            @Field(label = "Driven rate k2", kind = QuantityKind.RATE, unit = "1/s", min = 0, max = 10, def = "0.005 1/s",
                    help = "At the temperature at hand.")
            double k2,
            @Field(label = "Order m", min = 0, max = 3, def = "1", help = "Of what has reacted.") double m,
            @Field(label = "Order n", min = 0.5, max = 3, def = "1", help = "Of what is left.") double n,
            @Field(kind = QuantityKind.DURATION, unit = "s", min = 0, max = 1e6, def = "300 s", help = "At that temperature.") double time,
            @Field(label = "Wanted conversion", kind = QuantityKind.FRACTION, unit = "%", min = 1, max = 99.9, def = "90 %",
                    help = "For the time it takes.")
            double wanted) {
    }

    /** What has reacted. */
    public record Results(
            @Field(label = "Conversion", kind = QuantityKind.FRACTION, unit = "%", help = "After that time.") double conversion,
            @Field(label = "Time to the wanted conversion", kind = QuantityKind.DURATION, unit = "s", help = "At that temperature.") double timeTo,
            @Field(label = "Rate now", kind = QuantityKind.RATE, unit = "1/s", help = "Conversion a second after that time.") double rate,
            @Field(label = "Fastest at", kind = QuantityKind.FRACTION, unit = "%", optional = true, help = "Conversion of the highest rate; for m = n = 1 only.")
            Double fastest) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.autocatalytic", "Cure that drives itself", 1,
                "dX/dt = (k1 + k2 X^m)(1 - X)^n (Kamal and Sourour); closed form for m = n = 1, integrated otherwise.",
                Source.derived("Rate law of Kamal and Sourour"), "One temperature; with two activation energies a schedule must be integrated.");
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
        KamalSourour cure = new KamalSourour(in.k1(), in.k2(), in.m(), in.n());
        double horizon = cure.timeTo(0.9999);
        double conversion = in.time() >= horizon ? cure.conversion(horizon) : cure.conversion(in.time());
        return Outcome.done(new Results(100 * conversion, cure.timeTo(in.wanted() / 100), cure.rate(conversion),
                in.m() == 1 && in.n() == 1 ? Double.valueOf(100 * cure.fastest()) : null), List.of(Say.OWN_CONSTANTS.note(Examples.TEST_RESIN)));
    }
}
