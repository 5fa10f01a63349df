package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Net weight from gross and tare, with what the balance leaves open. */
@Component(service = Calculation.class)
public final class GrossNetCalculation implements Calculation<GrossNetCalculation.Inputs, GrossNetCalculation.Results> {

    private static final Source ROUNDING = Source.fromMemory("JCGM 100:2008, 4.3.7: rectangular distribution of a rounded reading");
    private static final double FEW_STEPS = 50;

    /** Two readings. */
    public record Inputs(
            @Field(kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, def = "31.42 g", help = "Cup with what is in it.") double gross,
            @Field(kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, def = "8.54 g", help = "The same cup empty.") double tare,
            @Field(label = "Step of the balance", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1000, def = "0.01 g",
                    help = "Smallest change the display shows.")
            double step) {
    }

    /** The net weight. */
    public record Results(
            @Field(kind = QuantityKind.MASS, unit = "g", help = "Gross less tare; band of two standard uncertainties.") Estimate net,
            @Field(label = "Relative uncertainty", kind = QuantityKind.FRACTION, unit = "%",
                    help = "One standard uncertainty of the reading alone.")
            double relative) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.gross-net", "Net weight", 1,
                "Net = gross - tare. Each reading lies anywhere within half a step, so the net has u = step/sqrt(6); the band shown is 2 u.", ROUNDING,
                "Only the step counts here: a balance that drifts, tilts or stands in a draught is worse.");
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
        double net = in.gross() - in.tare();
        if (!(net > 0)) {
            return Outcome.refused("gross", Say.NET_NEGATIVE.with(Figures.of(in.gross(), "g"), Figures.of(in.tare(), "g")), Say.NET_NEGATIVE_REMEDY.with());
        }
        double u = ScaleReading.ofNet(in.step());
        Results results = new Results(Estimate.plusMinus(net, 2 * u, ROUNDING), 100 * u / net);
        double steps = net / in.step();
        return steps >= FEW_STEPS ? Outcome.done(results)
                : Outcome.done(results, List.of(Say.NET_FEW_STEPS.caution(ROUNDING, Figures.of(steps, "", 2), Figures.percent(u / net))));
    }
}
