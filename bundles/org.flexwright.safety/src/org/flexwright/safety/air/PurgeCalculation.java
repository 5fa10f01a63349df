package org.flexwright.safety.air;

import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Time to air a room out. */
@Component(service = Calculation.class)
public final class PurgeCalculation implements Calculation<PurgeCalculation.Inputs, PurgeCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.purge";

    private static final double NINETY_NINE = 0.99;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Airing a room out", 1,
            "Nothing feeds the air any more: t = k V / Q ln(C0 / C), and air changes needed k ln(C0 / C). For a share removed, t "
                    + "= -60 k ln(1 - share) / (air changes an hour) minutes.",
            Room.SOURCE,
            "Evenly mixed room, the source gone. Liquid left in a cloth or cup keeps feeding the air.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Room mean now", kind = QuantityKind.CONCENTRATION, unit = "ppm", min = 0, minOpen = true, max = 1000000, def = "1065 ppm", help = "In any unit.") double start,
            @Field(label = "Wanted", kind = QuantityKind.CONCENTRATION, unit = "ppm", min = 0, minOpen = true, max = 1000000, def = "50 ppm", help = "Same unit.") double target,
            @Field(label = "Air changes", kind = QuantityKind.RATE, unit = "1/h", min = 0, minOpen = true, max = 1000, def = "6", help = "Clean air in an hour over room volume.") double changes,
            @Field(label = "Mixing factor k", min = 1, max = 10, def = "3", help = "1 ideal, 3 usual in a workshop, 10 very poor; what really cleans is Q / k.") double mixing) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Takes", kind = QuantityKind.DURATION, unit = "min", help = "At this mixing.") double minutes,
            @Field(label = "Air changes needed", help = "At this mixing.") double needed,
            @Field(label = "Minutes for 99 %", kind = QuantityKind.DURATION, unit = "min", help = "Whatever the start, at this mixing.") double ninetyNine,
            @Field(label = "How mixing was counted", help = "For airing out both conventions agree.") String convention) {
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
        if (in.target() >= in.start()) {
            return Outcome.refused("target", Say.message("purge.target"), Say.message("purge.target.remedy"));
        }
        double changes = Room.changesInExponent(in.start(), in.target(), 1 / in.mixing());
        return Outcome.done(new Results(60 * changes / in.changes(), changes, in.mixing() * Room.minutesToRemove(NINETY_NINE, in.changes()), AirRemarks.convention(in.mixing())),
                List.of(Say.caution(Source.commonPractice(), "purge.source")));
    }
}
