package org.flexwright.mixing.calc;

import java.util.List;

import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.rubber.Network;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** What an off index or an unfinished cure costs in stiffness. */
@Component(service = Calculation.class)
public final class UndercureCalculation implements Calculation<UndercureCalculation.Inputs, UndercureCalculation.Results> {

    private static final Source NETWORK = Source.fromMemory("Miller and Macosko 1976, ideal network of three- and two-armed molecules");

    /** How far the network got. */
    public record Inputs(
            @Field(label = "Index", min = 80, max = 130, def = "95", help = "100 is as many NCO groups as OH groups.") double index,
            @Field(label = "Conversion of the scarcer side", kind = QuantityKind.FRACTION, unit = "%", min = 50, max = 100, def = "100 %",
                    help = "100 % when the cure is finished.")
            double conversion) {
    }

    /** The network. */
    public record Results(
            @Field(label = "Conversion product", help = "Share of OH times share of NCO that reacted.") double alpha,
            @Field(label = "Stiffness", kind = QuantityKind.FRACTION, unit = "%", help = "Per cent of the complete network.") double stiffness) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.undercure", "Softer for lack of cure", 1,
                "For three-armed polyol and two-armed isocyanate alpha = p(OH) p(NCO) and G/G(full) = (2 - 1/alpha)^3, zero below alpha 0.5.", NETWORK,
                "An ideal network: no entanglements, loops, or hard segments, which a real casting rubber has. A direction, not a prediction.");
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
        double alpha = Network.alpha(in.index(), in.conversion() / 100);
        if (alpha <= 0.5) {
            return Outcome.refused("conversion", Say.UNDERCURE_GEL.with(Figures.of(alpha, "")), Say.UNDERCURE_GEL_REMEDY.with());
        }
        return Outcome.done(new Results(alpha, 100 * Network.relativeStiffness(alpha)), List.of(Say.UNDERCURE_OTHER.note(Source.commonPractice())));
    }
}
