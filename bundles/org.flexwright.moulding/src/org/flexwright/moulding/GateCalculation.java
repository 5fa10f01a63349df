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
import org.flexwright.core.flow.RoundChannel;
import org.flexwright.core.flow.SlotChannel;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Pressure that a mix needs to flow through a gate, and the push on a plunger. */
@Component(service = Calculation.class)
public final class GateCalculation implements Calculation<GateCalculation.Inputs, GateCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "moulding.gate";

    private static final double COMFORTABLE_PUSH = 60;
    private static final double HARDEST_PUSH = 100;
    /** Beyond this height for a width the side walls are felt. */
    private static final double FLAT_SLOT = 0.2;
    private static final Source HAND = Source.commonPractice("30 to 60 N is comfortable for a hand, about 100 N its limit");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Pressure at a gate", 1,
            "How much pressure drives the mix through a straight gate. Round: p = 8 eta L Q / (pi R^4), wall shear rate 4Q / (pi R^3); "
                    + "slot: p = 12 eta L Q / (w h^3); for a power law K, n the corresponding forms. Push on a plunger = pressure times its area.",
            Source.derived("Hagen-Poiseuille flow and its power-law form, derived from the equation of motion"),
            "Laminar, fully developed flow of a mix that does not thicken meanwhile. Losses at the ends and friction of the plunger come on top.");

    /** Shape of a gate. */
    public enum Shape {
        /** A bore. */
        ROUND,
        /** A flat slot. */
        SLOT
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Gate", def = "round", help = "Round bore, or flat slot much wider than high.") Shape shape,
            @Field(label = "Viscosity, or K of a power law", kind = QuantityKind.VISCOSITY, unit = "Pa s", min = 0, minOpen = true, def = "2 Pa s", help = "Of the mix as it flows; for a power law its K in Pa s^n.") double consistency,
            @Field(label = "Power law n", min = 0.1, max = 1.5, def = "1", help = "1 when viscosity does not depend on speed; below 1 when it thins.") double index,
            @Field(label = "Length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 2000, def = "10 mm", help = "Length of the gate in the direction of flow.") double length,
            @Field(label = "Radius", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100, def = "1 mm", optional = true, help = "Half the bore of a round gate.") Double radius,
            @Field(label = "Slot width", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 1000, optional = true, help = "Long side of a slot.") Double width,
            @Field(label = "Slot height", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100, optional = true, help = "Short side of a slot.") Double height,
            @Field(label = "Flow", kind = QuantityKind.FLOW, unit = "cm3/s", min = 0, minOpen = true, max = 1000, def = "1 cm3/s", help = "Volume to fill divided by the time it may take.") double flow,
            @Field(label = "Plunger diameter", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 500, def = "15 mm", optional = true, help = "Of the syringe or cartridge.") Double plunger) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Pressure", kind = QuantityKind.PRESSURE_GAUGE, unit = "kPa gauge", help = "Lost over the gate.") double pressure,
            @Field(label = "Shear rate at the wall", kind = QuantityKind.RATE, unit = "1/s", help = "As in a liquid of constant viscosity.") double wallRate,
            @Field(label = "Push on the plunger", kind = QuantityKind.FORCE, unit = "N", optional = true, help = "Without friction.") Double push) {
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
        if (in.shape() == Shape.ROUND && in.radius() == null) {
            return Outcome.refused("radius", Message.of(GateCalculation.class, "gate.round-radius"), Message.of(GateCalculation.class, "gate.give-size"));
        }
        if (in.shape() == Shape.SLOT && (in.width() == null || in.height() == null)) {
            return Outcome.refused(in.width() == null ? "width" : "height", Message.of(GateCalculation.class, "gate.slot-size"),
                    Message.of(GateCalculation.class, "gate.give-size"));
        }
        Channel gate = in.shape() == Shape.ROUND ? new RoundChannel(in.radius() / 1e3, in.length() / 1e3)
                : new SlotChannel(in.width() / 1e3, in.height() / 1e3, in.length() / 1e3);
        double flow = in.flow() / 1e6;
        double pressure = gate.pressureDrop(new PowerLaw(in.consistency(), in.index()), flow);
        Double push = in.plunger() == null ? null : pressure * Math.PI / 4 * Math.pow(in.plunger() / 1e3, 2);
        return Outcome.done(new Results(pressure / 1e3, gate.apparentWallRate(flow), push), remarks(in, push));
    }

    private static List<Remark> remarks(Inputs in, Double push) {
        List<Remark> remarks = new ArrayList<>();
        if (push != null && push > COMFORTABLE_PUSH) {
            boolean tooMuch = push > HARDEST_PUSH;
            remarks.add(new Remark(Severity.CAUTION, Message.of(GateCalculation.class, tooMuch ? "gate.too-much" : "gate.hand",
                    Rounded.text(push, "N"), Rounded.text(tooMuch ? HARDEST_PUSH : COMFORTABLE_PUSH, "N")), HAND));
        }
        if (in.shape() == Shape.SLOT && in.height() > FLAT_SLOT * in.width()) {
            remarks.add(new Remark(Severity.CAUTION, Message.of(GateCalculation.class, "gate.slot-shape", Rounded.text(in.height(), "mm"),
                    Rounded.text(in.width(), "mm")), INFO.source()));
        }
        return remarks;
    }
}
