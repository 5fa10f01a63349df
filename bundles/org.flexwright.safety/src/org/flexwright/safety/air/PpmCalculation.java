package org.flexwright.safety.air;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** Parts per million and milligrams in a cubic metre. */
@Component(service = Calculation.class)
public final class PpmCalculation implements Calculation<PpmCalculation.Inputs, PpmCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.ppm";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "ppm and mg/m3", 1,
            "mg/m3 = ppm M / Vm with the molar volume Vm = 24.45 L/mol at 25 degC and 1 atm (the basis of most limits), scaled by "
                    + "the gas law for other conditions.",
            Vapour.SOURCE,
            "Vapours and gases, not dust or mist.");

    /** Which of the two is known. */
    public enum Direction {
        PPM, MILLIGRAMS
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "From", def = "ppm", help = "Which of the two is known.") Direction direction,
            @Field(label = "Value", min = 0, max = 1000000000.0, def = "400", help = "In ppm or mg/m3, as chosen.") double value,
            @Field(label = "Molar mass", kind = QuantityKind.MOLAR_MASS, unit = "g/mol", min = 1, max = 1000, def = "60.1 g/mol", help = "Of the vapour; isopropanol 60.1, acetone 58.1, ethanol 46.1 g/mol.") double molarMass,
            @Field(label = "Air temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = -20, max = 60, def = "25 degC", help = "Of the room.") double temperature,
            @Field(label = "Air pressure", kind = QuantityKind.PRESSURE_ABSOLUTE, unit = "kPa", min = 50, max = 120, def = "101.325 kPa", help = "Absolute; falls with height above the sea.") double pressure) {
    }

    /** Results. */
    public record Results(
            @Field(label = "By volume", kind = QuantityKind.CONCENTRATION, unit = "ppm", help = "Parts per million.") double ppm,
            @Field(label = "By mass", kind = QuantityKind.MASS_CONCENTRATION, unit = "mg/m3", help = "At that temperature and pressure.") double milligrams,
            @Field(label = "Molar volume, l/mol", help = "At that temperature and pressure.") double molarVolume,
            @Field(label = "Density of the vapour against air", help = "Above 1 it lies low near its source, then mixes.") double relativeDensity) {
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
        boolean known = in.direction() == Direction.PPM;
        double ppm = known ? in.value() : Vapour.ppm(in.value(), in.molarMass(), molarVolume);
        double milligrams = known ? Vapour.milligrams(in.value(), in.molarMass(), molarVolume) : in.value();
        return Outcome.done(new Results(ppm, milligrams, molarVolume, Vapour.relativeDensity(in.molarMass())));
    }
}
