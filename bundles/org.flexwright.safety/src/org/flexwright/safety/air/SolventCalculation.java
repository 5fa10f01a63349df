package org.flexwright.safety.air;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.safety.Say;
import org.osgi.service.component.annotations.Component;

/** What a washing liquid does above its surface. */
@Component(service = Calculation.class)
public final class SolventCalculation implements Calculation<SolventCalculation.Inputs, SolventCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "safety.solvent";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Vapour above a washing liquid", 1,
            "Saturated share = vapour pressure over air pressure; it burns as it is when it lies between the explosive limits. "
                    + "Mass of vapour per cubic metre and millilitres of liquid that bring the whole room to the lower limit.",
            Source.published("NIOSH Pocket Guide, DHHS (NIOSH) 2005-149, and the sheets named with each liquid"),
            "20 degC, one atmosphere. Health figures are passed long before a whole room can burn; the fire risk is near the "
                    + "liquid.");

    /** Listed liquids. */
    public enum Liquid {
        ISOPROPANOL(Solvent.ISOPROPANOL), ACETONE(Solvent.ACETONE), ETHANOL(Solvent.ETHANOL);

        private final Solvent solvent;

        Liquid(Solvent solvent) {
            this.solvent = solvent;
        }
    }

    /** Inputs. */
    public record Inputs(
            @Field(label = "Liquid", def = "isopropanol", help = "One of the listed ones.") Liquid liquid,
            @Field(label = "Room", kind = QuantityKind.VOLUME, unit = "m3", min = 0, minOpen = true, max = 100000, def = "30 m3", help = "Volume of the room, furniture taken off.") double room) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Vapour above the liquid at rest", kind = QuantityKind.FRACTION, unit = "%", help = "Share of the air, 20 degC.") double saturated,
            @Field(label = "Burns as it is", help = "Whether that share lies between the explosive limits; above them it burns once it thins.") boolean burns,
            @Field(label = "Lower explosive limit", kind = QuantityKind.FRACTION, unit = "%", help = "Share of the air.") double lower,
            @Field(label = "Flash point", kind = QuantityKind.TEMPERATURE, unit = "degC", help = "At or above it vapour can catch fire.") double flash,
            @Field(label = "Density of the vapour against air", help = "It lies low near its source.") double relativeDensity,
            @Field(label = "Vapour at the lower limit", kind = QuantityKind.MASS_CONCENTRATION, unit = "g/m3", help = "Evenly mixed, 25 degC.") double gramsAtLower,
            @Field(label = "Liquid for the whole room", kind = QuantityKind.VOLUME, unit = "l", help = "That would bring the evenly mixed room to the lower limit.") double volumeAtLower) {
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
        Solvent liquid = in.liquid().solvent;
        double grams = liquid.gramsPerCubicMetreAtLowerLimit();
        Results results = new Results(100 * liquid.saturated(), liquid.headspaceBurns(), 100 * liquid.lowerLimit(), liquid.flashPoint(),
                Vapour.relativeDensity(liquid.molarMass()), grams, grams * in.room() / liquid.density() / 1000);
        List<Remark> remarks = new ArrayList<>();
        remarks.add(Say.caution(liquid.source(), liquid.headspaceBurns() ? "solvent.burns" : "solvent.rich"));
        remarks.add(AirRemarks.nearLiquid());
        return Outcome.done(results, remarks);
    }
}
