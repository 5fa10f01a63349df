package org.flexwright.moulding;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.flow.Channel;
import org.flexwright.core.flow.PowerLaw;
import org.flexwright.core.flow.SlotChannel;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Air through a vent, and what is left of it when it cannot leave. */
@Component(service = Calculation.class)
public final class VentCalculation implements Calculation<VentCalculation.Inputs, VentCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "moulding.vent";

    private static final double AIR_VISCOSITY = 1.81e-5;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Vents and trapped air", 1,
            "Pressure that pushes the air out through a slot, p = 12 eta L Q / (w h^3) with eta 1.81e-5 Pa s for air; pressure at which the mix "
                    + "itself would flow through it as fast; and the share of its volume a trapped bubble keeps, p1 / (p1 + dp).",
            Source.derived("slot flow and Boyle's law; viscosity of air at about 20 degC from memory, unconfirmed"),
            "Slot much wider than high, slow flow, bubble at constant temperature. The same formula with the parting gap tells of flash.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Vent width", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, def = "5 mm", help = "Long side of the slot.") double width,
            @Field(label = "Vent height", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 10, def = "0.1 mm", help = "Depth of the slot.") double height,
            @Field(label = "Vent length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 500, def = "3 mm", help = "In the direction of flow.") double length,
            @Field(label = "Filling speed", kind = QuantityKind.FLOW, unit = "cm3/s", min = 0, minOpen = true, max = 1000, def = "1 cm3/s", help = "Air must leave as fast as mix comes in.") double flow,
            @Field(label = "Viscosity of the mix", kind = QuantityKind.VISCOSITY, unit = "Pa s", min = 0, minOpen = true, max = 10000, def = "2 Pa s", help = "When it reaches the vent.") double viscosity,
            @Field(label = "Pressure of the mix", kind = QuantityKind.PRESSURE_GAUGE, unit = "kPa gauge", min = 0, max = 1000, def = "50 kPa gauge", help = "On a bubble that found no vent, above the surrounding air.") double pressure,
            @Field(label = "Surrounding air", kind = QuantityKind.PRESSURE_ABSOLUTE, unit = "kPa", min = 0, minOpen = true, max = 200, def = "101.325 kPa", help = "Absolute pressure of the air before filling; low when the mould is under vacuum.") double air) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Pressure of the air", kind = QuantityKind.PRESSURE_GAUGE, unit = "Pa gauge", help = "That drives it out.") double airPressure,
            @Field(label = "Pressure for the mix to follow", kind = QuantityKind.PRESSURE_GAUGE, unit = "MPa gauge", help = "Far above what you press with: the vent seals itself.") double mixPressure,
            @Field(label = "Bubble that cannot leave keeps", kind = QuantityKind.FRACTION, unit = "%", help = "Of its volume at the pressure of the surrounding air.") double bubble) {
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
        Channel vent = new SlotChannel(in.width() / 1e3, in.height() / 1e3, in.length() / 1e3);
        double flow = in.flow() / 1e6;
        double mix = vent.pressureDrop(PowerLaw.newtonian(in.viscosity()), flow);
        List<Remark> remarks = new ArrayList<>();
        if (in.pressure() * 1e3 >= mix) {
            remarks.add(new Remark(Severity.CAUTION, Message.of(VentCalculation.class, "vent.leaks", Rounded.text(mix / 1e3, "kPa")), INFO.source()));
        }
        return Outcome.done(new Results(vent.pressureDrop(PowerLaw.newtonian(AIR_VISCOSITY), flow), mix / 1e6,
                100 * in.air() / (in.air() + in.pressure())), remarks);
    }
}
