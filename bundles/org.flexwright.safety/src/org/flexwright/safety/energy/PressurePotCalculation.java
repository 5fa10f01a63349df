package org.flexwright.safety.energy;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Energy kept in the air of a pressure pot. */
@Component(service = Calculation.class)
public final class PressurePotCalculation implements Calculation<PressurePotCalculation.Inputs, PressurePotCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.pressure-pot";

    private static final double KILOPASCAL_PER_BAR = 100;
    private static final double HIGHLY_HAZARDOUS = 100;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Energy in a pressure pot", 1,
            "Three usual figures for the air that is left above the filling: isentropic P V / (g - 1) (1 - (P0 / P)^((g - 1) / "
                    + "g)), isothermal P V ln(P / P0), and Brode (P - P0) V / (g - 1), the largest. P absolute, g = 1.4.",
            PressureEnergy.ISENTROPIC_SOURCE,
            "Air in a closed pot. It says what would be let go, not whether the pot holds: that is for its maker, its plate and "
                    + "local pressure-equipment law.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Pressure", kind = QuantityKind.PRESSURE_GAUGE, unit = "bar gauge", min = 0, minOpen = true, max = 100, def = "4 bar gauge", help = "Gauge pressure in the pot.") double pressure,
            @Field(label = "Volume of the pot", kind = QuantityKind.VOLUME, unit = "l", min = 0, minOpen = true, max = 10000, def = "10 l", help = "Empty.") double volume,
            @Field(label = "Filled with", kind = QuantityKind.VOLUME, unit = "l", min = 0, max = 10000, def = "0 l", help = "Mould and mix; only air keeps energy.") double filled) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Isentropic", kind = QuantityKind.ENERGY, unit = "kJ", help = "Usual in pressure codes.") double isentropic,
            @Field(label = "Isothermal", kind = QuantityKind.ENERGY, unit = "kJ", help = "Of a slow leak.") double isothermal,
            @Field(label = "Largest usual figure", kind = QuantityKind.ENERGY, unit = "kJ", help = "Brode; shown for caution.") double brode) {
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
        if (in.filled() >= in.volume()) {
            return Outcome.refused("filled", Say.message("pot.full", Rounded.text(in.filled(), "l"), Rounded.text(in.volume(), "l")), Say.message("pot.full.remedy"));
        }
        double absolute = KILOPASCAL_PER_BAR * in.pressure() + PressureEnergy.ATMOSPHERE;
        double air = (in.volume() - in.filled()) / 1000;
        double largest = PressureEnergy.brode(absolute, air);
        List<Remark> remarks = new ArrayList<>();
        remarks.add(Say.caution(Source.commonPractice(), "pot.usual"));
        if (largest > HIGHLY_HAZARDOUS) {
            remarks.add(new Remark(Severity.STOP, Say.message("pot.much", Rounded.text(largest, "kJ")), Source.published("UC Berkeley EHS: above 100 kJ highly hazardous")));
        }
        return Outcome.done(new Results(PressureEnergy.isentropic(absolute, air), PressureEnergy.isothermal(absolute, air), largest), remarks);
    }
}
