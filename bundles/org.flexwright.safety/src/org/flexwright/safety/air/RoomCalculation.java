package org.flexwright.safety.air;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Vapour of a source that goes on, in a ventilated room. */
@Component(service = Calculation.class)
public final class RoomCalculation implements Calculation<RoomCalculation.Inputs, RoomCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.room";

    private static final double MILLION = 1e6;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Vapour in a ventilated room", 1,
            "C(t) = S + (C0 - S) exp(-Q t / (k V)) with the steady value S = k G / Q and the vapour volume rate G of what "
                    + "evaporates; in a closed room C0 + G t / V. Air needed for a figure C: Q = k G / C.",
            Room.SOURCE,
            "Room mean, steady source, clean air coming in. Weigh the loss of the bath to get the rate; do not guess it. Near the "
                    + "source the air is worse.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Evaporates in an hour, g", min = 0, max = 100000, def = "60", help = "Grams an hour, from weighing the loss.") double rate,
            @Field(label = "Molar mass", kind = QuantityKind.MOLAR_MASS, unit = "g/mol", min = 1, max = 1000, def = "60.1 g/mol", help = "Of the vapour; isopropanol 60.1, acetone 58.1, ethanol 46.1 g/mol.") double molarMass,
            @Field(label = "Room", kind = QuantityKind.VOLUME, unit = "m3", min = 0, minOpen = true, max = 100000, def = "30 m3", help = "Volume of the room, furniture taken off.") double room,
            @Field(label = "Air temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 60, def = "25 degC", help = "Of the room.") double temperature,
            @Field(label = "Air pressure", kind = QuantityKind.PRESSURE_ABSOLUTE, unit = "kPa", min = 50, max = 120, def = "101.325 kPa", help = "Absolute; falls with height above the sea.") double pressure,
            @Field(label = "Air changes", kind = QuantityKind.RATE, unit = "1/h", min = 0, max = 1000, def = "1", help = "Clean air in an hour over room volume; a tight house 0.25, an average one 0.5, a leaky one 1; 0 when closed.") double changes,
            @Field(label = "Mixing factor k", min = 1, max = 10, def = "3", help = "1 ideal, 3 usual in a workshop, 10 very poor; what really cleans is Q / k.") double mixing,
            @Field(label = "After", kind = QuantityKind.DURATION, unit = "h", min = 0, max = 1000, def = "1 h", help = "Since it began.") double hours,
            @Field(label = "Room mean at the start", kind = QuantityKind.CONCENTRATION, unit = "ppm", min = 0, max = 1000000, def = "0 ppm", help = "0 in clean air.") double start,
            @Field(label = "Figure to compare with", kind = QuantityKind.CONCENTRATION, unit = "ppm", min = 0, minOpen = true, max = 1000000, optional = true, help = "From the data sheet or your authority; empty to compare with nothing.") Double limit,
            @Field(label = "Source and year of that figure", optional = true, help = "Who set it, which kind (8 h, 15 min, ceiling), which year.") String limitSource) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Room mean then", kind = QuantityKind.CONCENTRATION, unit = "ppm", help = "After that time.") double then,
            @Field(label = "Room mean in the end", kind = QuantityKind.CONCENTRATION, unit = "ppm", help = "Empty in a closed room, where it goes on rising.") Double steady,
            @Field(label = "In the end, other convention", kind = QuantityKind.CONCENTRATION, unit = "ppm", help = "With a factor inside the exponent only, which leaves the end value at G / Q; empty in a closed room.") Double steadyOther,
            @Field(label = "Time constant", kind = QuantityKind.DURATION, unit = "h", help = "k V / Q; empty in a closed room.") Double constant,
            @Field(label = "Reaches the figure after", kind = QuantityKind.DURATION, unit = "min", help = "Empty when it never does or there is no figure.") Double minutes,
            @Field(label = "Air needed for the figure", kind = QuantityKind.FLOW, unit = "m3/h", help = "Clean air at this mixing factor; empty without a figure.") Double needed,
            @Field(label = "Compared", help = "With the figure you entered and nothing else.") String comparison,
            @Field(label = "How mixing was counted", help = "The two usual conventions differ.") String convention) {
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
        double molarVolume = Vapour.molarVolume(in.temperature(), in.pressure());
        double rate = Vapour.volume(in.rate(), in.molarMass(), molarVolume);
        Room room = new Room(in.room(), in.changes() * in.room(), in.mixing());
        boolean closed = in.changes() == 0;
        double then = MILLION * room.after(in.hours(), rate, in.start() / MILLION);
        Double steady = closed ? null : Double.valueOf(MILLION * room.steady(rate));
        if (then > MILLION || steady != null && steady > MILLION) {
            return Outcome.refused("rate", Say.message("spill.more-than-air"), Say.message("room.more-than-air.remedy"));
        }
        OptionalDouble reached = in.limit() == null ? OptionalDouble.empty() : room.hoursUpTo(in.limit() / MILLION, rate, in.start() / MILLION);
        List<Remark> remarks = new ArrayList<>();
        remarks.add(AirRemarks.nearSource());
        double worst = steady == null ? then : Math.max(then, steady);
        AirRemarks.figure(remarks, worst, in.limit(), in.limitSource());
        if (closed && in.rate() > 0) {
            remarks.add(Say.caution(Room.SOURCE, "room.closed"));
        }
        return Outcome.done(new Results(then, steady, steady == null ? null : steady / in.mixing(), closed ? null : Double.valueOf(room.timeConstant()),
                reached.isPresent() ? Double.valueOf(60 * reached.getAsDouble()) : null,
                in.limit() == null ? null : Double.valueOf(Room.requiredAirflow(rate, in.limit() / MILLION, in.mixing())),
                AirRemarks.comparison(worst, in.limit(), in.limitSource()), AirRemarks.convention(in.mixing())), remarks);
    }
}
