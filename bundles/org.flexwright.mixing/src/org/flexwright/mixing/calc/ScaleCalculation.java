package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** What the step of a balance does to a mixing ratio. */
@Component(service = Calculation.class)
public final class ScaleCalculation implements Calculation<ScaleCalculation.Inputs, ScaleCalculation.Results> {

    private static final Source ROUNDING = Source.fromMemory("JCGM 100:2008, 4.3.7: rectangular distribution of a rounded reading");

    /** Two weighings on one balance. */
    public record Inputs(
            @Field(label = "Mass of A", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "20 g",
                    help = "Net grams of A.")
            double massA,
            @Field(label = "Mass of B", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "2 g",
                    help = "Net grams of B.")
            double massB,
            @Field(label = "Step of the balance", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1000, def = "0.1 g",
                    help = "Smallest change the display shows.")
            double step,
            @Field(kind = QuantityKind.FRACTION, unit = "%", min = 0, minOpen = true, max = 50, def = "1 %",
                    help = "How well the ratio should be known: one standard uncertainty.")
            double wish) {
    }

    /** How well the ratio is known. */
    public record Results(
            @Field(label = "Uncertainty of the ratio", kind = QuantityKind.FRACTION, unit = "%",
                    help = "One standard uncertainty; the index has the same.")
            double uncertainty,
            @Field(label = "Worst case", kind = QuantityKind.FRACTION, unit = "%", help = "Both off by one step in opposite senses.") double worst,
            @Field(label = "Smallest mass for the wish", kind = QuantityKind.MASS, unit = "g",
                    help = "Of the smaller part: 0.41 steps divided by the wish.")
            double smallest) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.scale", "Is the balance fine enough", 1,
                "A net weighing has u = step/sqrt(6); the ratio has sqrt((uA/mA)^2 + (uB/mB)^2), and so has the index.", ROUNDING,
                "Only the step counts here; what sticks to a cup that is poured over is often more.");
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
        double smaller = Math.min(in.massA(), in.massB());
        if (smaller <= in.step()) {
            return Outcome.refused(in.massA() < in.massB() ? "massA" : "massB",
                    Say.SCALE_SMALL.with(Figures.of(smaller, "g"), Figures.of(in.step(), "g")), Say.SCALE_SMALL_REMEDY.with());
        }
        double u = ScaleReading.ofRatio(in.step(), in.massA(), in.massB());
        Results results = new Results(100 * u, 100 * ScaleReading.worstRatio(in.step(), in.massA(), in.massB()),
                ScaleReading.smallestMass(in.step(), in.wish() / 100));
        return 100 * u <= in.wish() ? Outcome.done(results)
                : Outcome.done(results, List.of(Say.SCALE_COARSE.caution(ROUNDING, Figures.percent(u), Figures.of(in.wish(), "%"),
                        Figures.of(results.smallest(), "g", 3))));
    }
}
