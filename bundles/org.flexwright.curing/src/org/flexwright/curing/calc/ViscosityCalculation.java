package org.flexwright.curing.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.curing.formula.Arrhenius;
import org.flexwright.curing.formula.CastroMacosko;
import org.flexwright.curing.formula.OrderRate;
import org.flexwright.curing.formula.PublishedSets;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Viscosity of a curing resin and when it has grown too much. */
@Component(service = Calculation.class)
public final class ViscosityCalculation implements Calculation<ViscosityCalculation.Inputs, ViscosityCalculation.Results> {

    private static final Source CASTRO = Source.published("Castro and Macosko 1982, constants by way of open foam code of the MoDeNa project");

    /** Where the flow constants come from. */
    public enum Constants {
        /** Those typed. */
        OWN,
        /** Set 1 of the publication. */
        SET_1,
        /** Set 2 of the publication. */
        SET_2
    }

    /** Flow and cure. */
    public record Inputs(
            @Field(label = "Constants of flow", def = "own", help = "Own: the five that follow. Set 1, set 2: two published ones, for comparison.") Constants constants,
            @Field(label = "Front factor", min = 0, minOpen = true, max = 1, def = "4.1e-8", help = "A in Pa s.") double front,
            @Field(label = "Flow energy", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 0, max = 150, def = "38.3 kJ/mol",
                    help = "How viscosity falls on warming.")
            double flowEnergy,
            @Field(label = "Exponent a", min = 0, max = 20, def = "4", help = "Growth at the start.") double a,
            @Field(label = "Exponent b", min = -10, max = 10, def = "-2", help = "Change of the growth with conversion.") double b,
            @Field(label = "Gel point", kind = QuantityKind.FRACTION, unit = "%", min = 10, max = 99, def = "85 %",
                    help = "Conversion at which it stops flowing.")
            double gel,
            @Field(label = "Rate", kind = QuantityKind.RATE, unit = "1/s", min = 0, minOpen = true, max = 100, def = "0.0018 1/s",
                    help = "k of the cure at that temperature.")
            double rate,
            @Field(min = 0.5, max = 3, def = "2", help = "Order of the cure.") double order,
            @Field(kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 200, def = "25 degC",
                    help = "Kept all along.")
            double temperature,
            @Field(kind = QuantityKind.DURATION, unit = "s", min = 0, max = 1e7, def = "60 s", help = "From mixing.") double time,
            @Field(label = "Viscosity may grow", min = 1, max = 10000, def = "2", help = "Times; 2 is doubling.") double fold,
            @Field(label = "Rise if no heat gets away", kind = QuantityKind.TEMPERATURE_DIFFERENCE, unit = "K", min = 0, max = 400, optional = true,
                    help = "For a cup that keeps its heat; empty: one temperature.")
            Double rise) {
    }

    /** Viscosity. */
    public record Results(
            @Field(label = "At the start", kind = QuantityKind.VISCOSITY, unit = "Pa s", help = "Just after mixing.") double start,
            @Field(label = "At that time", kind = QuantityKind.VISCOSITY, unit = "Pa s", optional = true,
                    help = "Empty when it has gelled.")
            Double now,
            @Field(help = "Liquid or gelled at that time.") String state,
            @Field(label = "Time to the growth", kind = QuantityKind.DURATION, unit = "s",
                    help = "Working time by viscosity at one temperature.")
            double workingTime) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("curing.viscosity", "Viscosity while curing", 1,
                "eta = A exp(E/RT) (Xg/(Xg - X))^(a + bX) with X from the n-th order cure; the working time ends when eta has grown so many times.", CASTRO,
                "One temperature. In a warm cup the viscosity falls first and then runs away, which fools the one who stirs.");
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
        if (in.fold() <= 1) {
            return Outcome.refused("fold", Say.VISCOSITY_FOLD.with(), Say.VISCOSITY_FOLD_REMEDY.with());
        }
        CastroMacosko viscosity = switch (in.constants()) {
            case OWN -> new CastroMacosko(in.front(), in.flowEnergy(), in.a(), in.b(), in.gel() / 100);
            case SET_1 -> PublishedSets.viscosity1();
            case SET_2 -> PublishedSets.viscosity2();
        };
        double gel = viscosity.gel();
        if (viscosity.a() + viscosity.b() * gel <= 0) {
            return Outcome.refused("b", Say.VISCOSITY_GEL.with(Figures.percent(gel)), Say.VISCOSITY_GEL_REMEDY.with());
        }
        double kelvin = in.temperature() + Arrhenius.ZERO_CELSIUS;
        OptionalDouble now = viscosity.at(OrderRate.conversion(in.order(), in.rate() * in.time()), kelvin);
        double working = OrderRate.progress(in.order(), viscosity.conversionAt(in.fold())) / in.rate();
        Results results = new Results(viscosity.at(0, kelvin).orElseThrow(), now.isPresent() ? Double.valueOf(now.getAsDouble()) : null,
                now.isPresent() ? "liquid" : "gelled", working);
        return Outcome.done(results, remarks(in, viscosity, kelvin));
    }

    private static List<Remark> remarks(Inputs in, CastroMacosko viscosity, double kelvin) {
        List<Remark> remarks = new ArrayList<>(List.of(Say.OWN_CONSTANTS.note(CASTRO)));
        double thinnest = in.rise() == null ? 0 : viscosity.thinnest(kelvin, in.rise());
        if (thinnest > 0) {
            remarks.add(Say.VISCOSITY_THINS.caution(CASTRO, Figures.of(viscosity.at(thinnest, kelvin + thinnest * in.rise()).orElseThrow(), "Pa s"),
                    Figures.percent(thinnest)));
        }
        return remarks;
    }
}
