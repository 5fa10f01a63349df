package org.flexwright.testing.piece;

import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.osgi.service.component.annotations.Component;

/** Density by weighing in air and in water. */
@Component(service = Calculation.class)
public final class DensityCalculation implements Calculation<DensityCalculation.Inputs, DensityCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.density";

    /** What the formula of water is known for, degC. */
    private static final double COLDEST = 10;
    private static final double HOTTEST = 40;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Density by water displacement", 2,
            "rho = rho_w m_a / (m_a - m_w), with rho_w of water at its temperature (Tanaka 2001). With a sinker: rho = rho_w m_a "
                    + "/ (m_a + m_s - m_b). With the buoyancy of air: rho_w - rho_a in place of rho_w, and rho_a added. The band rests on the "
                    + "weighings and the temperature as well as they are said to be known, and on the buoyancy of air where it is left out (GUM).",
            Displacement.SOURCE,
            "Boiled water of 10 to 40 degC with a drop of wetting agent, no bubbles, no drift of the balance; deduct a wire above "
                    + "0.010 g.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Mass in air", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 10000, def = "10.000 g", help = "Clean and dry.") double inAir,
            @Field(label = "Balance in water", kind = QuantityKind.MASS, unit = "g", min = -10000, max = 10000, def = "1.200 g", help = "The piece hanging in water; with a sinker both together.") double inWater,
            @Field(label = "Sinker in water", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 10000, optional = true, help = "The sinker alone hanging in water; empty when the piece sinks by itself.") Double sinker,
            @Field(label = "Water temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = 10, max = 40, def = "23 degC", help = "Beside the piece.") double water,
            @Field(label = "Buoyancy of air", def = "no", help = "Yes to take it into account (1.2 kg/m3).") boolean buoyancy,
            @Field(label = "Wire in water", kind = QuantityKind.MASS, unit = "g", min = 0, max = 1000, optional = true, help = "What it hangs on, weighed in water to the same depth; deducted. Worth it above 0.010 g.") Double wire,
            @Field(label = "Weighing in air good to", kind = QuantityKind.MASS, unit = "g", min = 0, max = 100, def = "0.005 g", help = "Either way: half a step of the balance and what it drifts.") double airGood,
            @Field(label = "Weighing in water good to", kind = QuantityKind.MASS, unit = "g", min = 0, max = 100, def = "0.01 g", help = "Either way: drift, bubbles and the pull of the water on the wire. Weigh three times to see.") double waterGood,
            @Field(label = "Water temperature good to", kind = QuantityKind.TEMPERATURE_DIFFERENCE, unit = "K", min = 0, max = 10, def = "0.5 K", help = "Either way.") double temperatureGood) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Density", kind = QuantityKind.DENSITY, unit = "kg/m3", help = "Of the piece; the band holds weighings and temperature, not bubbles that nobody saw.") Estimate density,
            @Field(label = "Volume", kind = QuantityKind.VOLUME, unit = "cm3", help = "Of the water displaced; its band holds the same.") Estimate volume,
            @Field(label = "Density of the water", kind = QuantityKind.DENSITY, unit = "kg/m3", help = "At its temperature, free of air.") double waterDensity) {
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
        if (in.inWater() < 0 || in.sinker() == null && in.inWater() < (in.wire() == null ? 0 : in.wire())) {
            return Outcome.refused("inWater", Say.message("density.negative", Rounded.text(in.inWater(), "g")), Say.message("density.negative.remedy"));
        }
        double water = Water.density(in.water());
        double air = in.buoyancy() ? Displacement.AIR : 0;
        double displaced = in.inAir() + (in.sinker() == null ? 0 : in.sinker()) - (in.inWater() - (in.wire() == null ? 0 : in.wire()));
        if (!(displaced > 0)) {
            return Outcome.refused("inWater", Say.message("density.no-displacement", Rounded.text(in.inWater(), "g")), Say.message("density.no-displacement.remedy"));
        }
        double density = Displacement.density(in.inAir(), displaced, water, air);
        double perDisplaced = -in.inAir() / displaced * (water - air) / displaced;
        // each thing weighed in water beside the piece is as well known as the piece itself
        double weighings = Math.sqrt(1.0 + (in.sinker() == null ? 0 : 1) + (in.wire() == null ? 0 : 1));
        double warmer = Math.max(Math.abs(Water.density(Math.min(HOTTEST, in.water() + in.temperatureGood())) - water), Math.abs(Water.density(Math.max(COLDEST, in.water()
                - in.temperatureGood())) - water));
        double leftOut = in.buoyancy() ? 0 : Displacement.AIR;
        Estimate band = Bands.band(density, INFO.source(), Bands.within(in.airGood(), (water - air) / displaced + perDisplaced), Bands.within(weighings * in.waterGood(),
                perDisplaced), Bands.within(warmer, in.inAir() / displaced), Bands.within(leftOut, 1 - in.inAir() / displaced));
        double volume = 1000 * displaced / (water - air);
        double perGram = 1000 / (water - air);
        Estimate space = Bands.band(volume, INFO.source(), Bands.within(in.airGood(), perGram), Bands.within(weighings * in.waterGood(), perGram), Bands.within(Math.hypot(warmer,
                leftOut), volume / (water - air)));
        Results results = new Results(band, space, water);
        return in.sinker() == null && in.inWater() == 0 ? Outcome.done(results, List.of(Say.caution(INFO.source(), "density.floats"))) : Outcome.done(results);
    }

    @Override
    public Map<String, String> readings() {
        return Map.of("density", TestingProperties.DENSITY);
    }
}
