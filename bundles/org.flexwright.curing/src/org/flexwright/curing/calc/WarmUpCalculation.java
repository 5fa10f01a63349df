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
import org.flexwright.curing.formula.Body;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How long a part takes to warm through. */
@Component(service = Calculation.class)
public final class WarmUpCalculation implements Calculation<WarmUpCalculation.Inputs, WarmUpCalculation.Results> {

    private static final Source TABLES = Source.published("Yovanovich, one-term expressions: within 1 % only above Fo 0.18 to 0.24, abstract");
    private static final double ONE_TERM = 0.2;
    private static final Source SERIES = Source.derived("Heat conduction: whole series, roots solved");

    /** Part and oven. */
    public record Inputs(
            @Field(def = "slab", help = "Slab: warmed from both faces. Cylinder: long rod. Sphere: ball.") Body shape,
            @Field(label = "Full thickness or diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "20 mm",
                    help = "Not half of it: that is taken care of.")
            double thickness,
            @Field(label = "Start", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 300, def = "23 degC",
                    help = "Of the part.")
            double start,
            @Field(label = "Oven", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 300, def = "60 degC",
                    help = "Around it, or of the mould wall.")
            double oven,
            @Field(label = "Centre wanted", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -40, max = 300, def = "55 degC",
                    help = "For the time it takes.")
            double wanted,
            @Field(kind = QuantityKind.DURATION, unit = "min", min = 0, minOpen = true, max = 1e5, def = "10 min",
                    help = "For the centre then.")
            double time,
            @Field(label = "Heat transfer", min = 1, max = 1e5, def = "20",
                    help = "W to a square metre and K: 5 to 10 in still air, 20 with a fan, over 500 in water or a metal mould (from memory, unconfirmed).")
            double transfer,
            @Field(label = "Conductivity", kind = QuantityKind.THERMAL_CONDUCTIVITY, unit = "W/m/K", min = 0.02, max = 400, def = "0.2 W/m/K",
                    help = "0.15 to 0.25 for elastomers (common practice, no source).")
            double conductivity,
            @Field(kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.02, max = 20, def = "1.08 g/cm3", help = "Of the part.") double density,
            @Field(label = "Specific heat", kind = QuantityKind.SPECIFIC_HEAT, unit = "J/kg/K", min = 100, max = 5000, def = "1800 J/kg/K",
                    help = "1300 to 2000 for elastomers (common practice, no source).")
            double specificHeat) {
    }

    /** The centre. */
    public record Results(
            @Field(label = "Biot number",
                    help = "Below 0.1 the part is even inside, above 10 the surface is as hot as the oven at once.")
            double biot,
            @Field(label = "Centre then", kind = QuantityKind.TEMPERATURE, unit = "degC", help = "After that time.") double centre,
            @Field(label = "Surface then", kind = QuantityKind.TEMPERATURE, unit = "degC", help = "After that time.") double surface,
            @Field(label = "Time to the wanted centre", kind = QuantityKind.DURATION, unit = "min", help = "From putting it in.") double timeTo) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.warm-up", "Warming through", 1,
                "Heat conduction with Bi = h L/k and Fo = alpha t/L^2, L half the thickness: sum of C exp(-z^2 Fo) f(z x) over the roots, slab z tan z = Bi, "
                        + "cylinder z J1 = Bi J0, sphere 1 - z cot z = Bi. One term is not enough below Fo 0.2, so all are used.",
                SERIES, "No reaction heat, material values constant, long rods and wide slabs.");
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
        double span = in.oven() - in.start();
        if (span == 0) {
            return Outcome.refused("oven", Say.WARM_NOTHING.with(), Say.WARM_NOTHING_REMEDY.with());
        }
        double share = (in.oven() - in.wanted()) / span;
        if (!(share >= 0.001 && share <= 0.99)) {
            return Outcome.refused("wanted", Say.WARM_OUTSIDE.with(celsius(in.wanted()), celsius(in.start()), celsius(in.oven())), Say.WARM_OUTSIDE_REMEDY.with());
        }
        double half = in.thickness() / 2000;
        double diffusivity = in.conductivity() / (1000 * in.density() * in.specificHeat());
        double biot = in.transfer() * half / in.conductivity();
        double fourier = diffusivity * in.time() * 60 / (half * half);
        double timeTo = in.shape().fourierFor(biot, share) * half * half / diffusivity / 60;
        List<Remark> remarks = new ArrayList<>(List.of(Say.WARM_DEMOULD.note(SERIES)));
        if (fourier < ONE_TERM) {
            double table = in.oven() - span * in.shape().oneTerm(biot, fourier, 0);
            remarks.add(Say.WARM_ONE_TERM.note(TABLES, Figures.of(fourier, "", 2), Figures.of(table, "\u00b0C")));
        }
        return Outcome.done(new Results(biot, in.oven() - span * in.shape().left(biot, fourier, 0), in.oven() - span * in.shape().left(biot, fourier, 1), timeTo), remarks);
    }

    private static String celsius(double value) {
        return Figures.of(value, "\u00b0C");
    }
}
