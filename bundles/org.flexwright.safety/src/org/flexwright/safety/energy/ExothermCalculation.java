package org.flexwright.safety.energy;

import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** How warm a reacting cup can get. */
@Component(service = Calculation.class)
public final class ExothermCalculation implements Calculation<ExothermCalculation.Inputs, ExothermCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.exotherm";

    /** A cup above about this is stopped and spread thin (common practice, no source). */
    private static final double STOP_CUP = 60;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Heat of a reacting cup", 1,
            "Rise when no heat leaves: n dH / cp with the moles of reacting groups in a kilogram of mix.",
            Exotherm.SOURCE,
            "Upper bound: a thin layer loses most of its heat, a big cup almost none. Heat and capacity are remembered figures "
                    + "for polyurethane.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Reacting groups", min = 0, minOpen = true, max = 20, def = "1.5", help = "mol in a kilogram of mix; isocyanate share / 42 g/mol x 10 per per cent.") double groups,
            @Field(label = "Heat of reaction", kind = QuantityKind.MOLAR_ENERGY, unit = "kJ/mol", min = 0, minOpen = true, max = 500, def = "95 kJ/mol", help = "Of one mole of groups.") double heat,
            @Field(label = "Heat capacity", kind = QuantityKind.SPECIFIC_HEAT, unit = "kJ/kg/K", min = 0, minOpen = true, max = 10, def = "1.9 kJ/kg/K", help = "Of the mix.") double capacity,
            @Field(label = "Start temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 100, def = "23 degC", help = "Of the mix.") double start) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Rise", kind = QuantityKind.TEMPERATURE_DIFFERENCE, unit = "K", help = "When no heat leaves.") double rise,
            @Field(label = "Hottest", kind = QuantityKind.TEMPERATURE, unit = "degC", help = "Start and rise together.") double hottest) {
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
        double rise = Exotherm.adiabaticRise(in.groups(), in.heat(), in.capacity());
        double hottest = in.start() + rise;
        return hottest > STOP_CUP ? Outcome.done(new Results(rise, hottest), List.of(Say.caution(Source.commonPractice(), "exotherm.hot", Rounded.text(STOP_CUP, "°C"))))
                : Outcome.done(new Results(rise, hottest));
    }
}
