package org.flexwright.moulding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.flexwright.core.Message;
import org.flexwright.core.Rounded;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.flow.RoundChannel;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** How long a mould takes to fill while the mix thickens, and whether it fills at all. */
@Component(service = Calculation.class)
public final class FillTimeCalculation implements Calculation<FillTimeCalculation.Inputs, FillTimeCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "moulding.fill-time";

    private static final Source THIRD = Source.commonPractice("fill within a third of the working time");
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Fill time of a thickening mix", 1,
            "How long a mould takes to fill through a round gate under constant pressure while the viscosity grows as eta0 exp(t / tau). "
                    + "V(t) = Q0 tau (1 - exp(-t / tau)) with Q0 = pi R^4 p / (8 eta0 L); no more than Q0 tau ever comes through.",
            ThickeningFlow.SOURCE,
            "Pressure constant and all of it lost over the gate, liquid of index 1, growth exponential from the moment filling starts. "
                    + "Real mixes warm up and thicken faster at the end.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Volume to fill", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 100000, def = "100 ml", help = "All cavities with gate and sprue.") double volume,
            @Field(label = "Viscosity at the start", kind = QuantityKind.VISCOSITY, unit = "Pa s", min = 0, minOpen = true, max = 10000, def = "2 Pa s", help = "Of the mix when filling starts.") double viscosity,
            @Field(label = "Working time left", kind = QuantityKind.DURATION, unit = "s", min = 0, minOpen = true, max = 86400, def = "3.5 min", help = "From the start of filling to the end of the working time.") double workingTime,
            @Field(label = "Thickens by then", min = 1, minOpen = true, max = 1000, def = "2", help = "How many times thicker the mix is by then, as the sheet defines it; 2 for doubling.") double growth,
            @Field(label = "Pressure", kind = QuantityKind.PRESSURE_GAUGE, unit = "kPa gauge", min = 0, minOpen = true, max = 1000, def = "100 kPa gauge", help = "Above the surrounding air.") double pressure,
            @Field(label = "Gate radius", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 100, def = "1 mm", help = "Half the bore.") double radius,
            @Field(label = "Gate length", kind = QuantityKind.LENGTH, unit = "mm", min = 0, minOpen = true, max = 2000, def = "10 mm", help = "In the direction of flow.") double length,
            @Field(label = "Also show the volume after", kind = QuantityKind.DURATION, unit = "s", min = 0, max = 86400, def = "60 s", optional = true, help = "A time from the start of filling.") Double after) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Fill time", kind = QuantityKind.DURATION, unit = "s", help = "While the mix thickens.") double time,
            @Field(label = "Fill time if it did not thicken", kind = QuantityKind.DURATION, unit = "s", help = "Volume divided by the first flow.") double timeIfConstant,
            @Field(label = "First flow", kind = QuantityKind.FLOW, unit = "cm3/s", help = "At the start of filling.") double startFlow,
            @Field(label = "Most that ever comes through", kind = QuantityKind.VOLUME, unit = "ml", help = "However long the pressure stays on.") double limit,
            @Field(label = "Volume after that time", kind = QuantityKind.VOLUME, unit = "ml", optional = true, help = "If the mould is that large.") Double volumeAfter) {
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
        ThickeningFlow flow = ThickeningFlow.through(new RoundChannel(in.radius() / 1e3, in.length() / 1e3), in.viscosity(),
                ThickeningFlow.timeConstant(in.workingTime(), in.growth()), 1e3 * in.pressure());
        double limit = 1e6 * flow.limitVolume();
        OptionalDouble time = flow.time(in.volume() / 1e6);
        if (time.isEmpty()) {
            return Outcome.refused("volume",
                    Message.of(FillTimeCalculation.class, "fill.never", Rounded.text(limit, "ml"), Rounded.text(in.volume(), "ml")),
                    Message.of(FillTimeCalculation.class, "fill.never-remedy"));
        }
        List<Remark> remarks = new ArrayList<>();
        double share = time.getAsDouble() / in.workingTime();
        if (share > FillTimeRule.USUAL_SHARE) {
            remarks.add(new Remark(Severity.CAUTION, Message.of(FillTimeCalculation.class, "fill.third", Rounded.text(100 * share, "%"),
                    Rounded.text(in.growth(), "")), THIRD));
        }
        Double after = in.after() == null ? null : 1e6 * flow.volume(in.after());
        return Outcome.done(new Results(time.getAsDouble(), in.volume() / 1e6 / flow.startFlow(), 1e6 * flow.startFlow(), limit, after), remarks);
    }
}
