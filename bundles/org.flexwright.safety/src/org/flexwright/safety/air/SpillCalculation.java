package org.flexwright.safety.air;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** Vapour of a spill, mixed into the air of a room. */
@Component(service = Calculation.class)
public final class SpillCalculation implements Calculation<SpillCalculation.Inputs, SpillCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.spill";

    private static final double MILLION = 1e6;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Vapour of a spill in a room", 1,
            "All of it evaporates at once and mixes evenly: ppm = 1e6 m Vm / (1000 M V) with Vm = 24.45 L/mol at 25 degC and 1 "
                    + "atm, scaled by the gas law. It leaves as exp(-Q t / (k V)).",
            Source.derived("well-mixed room; 24.45 L/mol as in 29 CFR 1910.1000, Table Z-1; mixing factor as in CDC 1994, MMWR 43 (RR-13), Table S3-1"),
            "Room mean only. Near the liquid and at face height over it the air is always worse, and a flammable layer exists "
                    + "near the liquid whatever the room mean says. Not for powder or mist.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Liquid spilled", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1000000, def = "78.5 g", help = "Mass that evaporates.") double mass,
            @Field(label = "Molar mass", kind = QuantityKind.MOLAR_MASS, unit = "g/mol", min = 1, max = 1000, def = "60.1 g/mol", help = "Of the vapour; isopropanol 60.1, acetone 58.1, ethanol 46.1 g/mol.") double molarMass,
            @Field(label = "Room", kind = QuantityKind.VOLUME, unit = "m3", min = 0, minOpen = true, max = 100000, def = "30 m3", help = "Volume of the room, furniture taken off.") double room,
            @Field(label = "Air temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 60, def = "25 degC", help = "Of the room.") double temperature,
            @Field(label = "Air pressure", kind = QuantityKind.PRESSURE_ABSOLUTE, unit = "kPa", min = 50, max = 120, def = "101.325 kPa", help = "Absolute; falls with height above the sea.") double pressure,
            @Field(label = "Air changes", kind = QuantityKind.RATE, unit = "1/h", min = 0, max = 1000, def = "1", help = "Clean air in an hour over room volume; a tight house 0.25, an average one 0.5, a leaky one 1; 0 when closed.") double changes,
            @Field(label = "Mixing factor k", min = 1, max = 10, def = "3", help = "1 ideal, 3 usual in a workshop, 10 very poor; what really cleans is Q / k.") double mixing,
            @Field(label = "Lower explosive limit", kind = QuantityKind.FRACTION, unit = "%", min = 0, minOpen = true, max = 100, optional = true, help = "Share of the air; isopropanol 2.0, acetone 2.5, ethanol 3.3 %; empty when it does not burn or you do not know.") Double lower,
            @Field(label = "Figure to compare with", kind = QuantityKind.CONCENTRATION, unit = "ppm", min = 0, minOpen = true, max = 1000000, optional = true, help = "From the data sheet or your authority; empty to compare with nothing.") Double limit,
            @Field(label = "Source and year of that figure", optional = true, help = "Who set it, which kind (8 h, 15 min, ceiling), which year.") String limitSource) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Room mean", kind = QuantityKind.CONCENTRATION, unit = "ppm", help = "By volume, right after it mixed.") double ppm,
            @Field(label = "Room mean by mass", kind = QuantityKind.MASS_CONCENTRATION, unit = "mg/m3", help = "At that temperature and pressure.") double milligrams,
            @Field(label = "Of the lower explosive limit", kind = QuantityKind.FRACTION, unit = "%", help = "Room mean over the limit; empty without one.") Double ofLower,
            @Field(label = "Falls to the figure after", kind = QuantityKind.DURATION, unit = "min", help = "Empty without a figure or in a closed room.") Double minutes,
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
        double ppm = Vapour.mixedAtOnce(in.mass(), in.molarMass(), molarVolume, in.room());
        if (ppm > MILLION) {
            return Outcome.refused("mass", Say.message("spill.more-than-air"), Say.message("spill.more-than-air.remedy"));
        }
        Room room = new Room(in.room(), in.changes() * in.room(), in.mixing());
        OptionalDouble hours = in.limit() == null ? OptionalDouble.empty() : room.hoursDownTo(in.limit(), ppm);
        Double ofLower = in.lower() == null ? null : Double.valueOf(100 * ppm / (in.lower() / 100 * MILLION));
        List<Remark> remarks = new ArrayList<>();
        remarks.add(AirRemarks.nearLiquid());
        AirRemarks.lowerLimit(remarks, ofLower);
        AirRemarks.figure(remarks, ppm, in.limit(), in.limitSource());
        return Outcome.done(new Results(ppm, Vapour.milligrams(ppm, in.molarMass(), molarVolume), ofLower, hours.isPresent() ? Double.valueOf(60 * hours.getAsDouble()) : null,
                AirRemarks.comparison(ppm, in.limit(), in.limitSource()), AirRemarks.convention(in.mixing())), remarks);
    }
}
