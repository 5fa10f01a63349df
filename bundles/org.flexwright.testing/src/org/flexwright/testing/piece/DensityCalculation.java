package org.flexwright.testing.piece;

import java.util.List;

import org.flexwright.core.Rounded;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.osgi.service.component.annotations.Component;

/** Density by weighing in air and in water. */
@Component(service = Calculation.class)
public final class DensityCalculation implements Calculation<DensityCalculation.Inputs, DensityCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.density";

    private static final CalculationInfo INFO = new CalculationInfo(ID, "Density by water displacement", 1,
            "rho = rho_w m_a / (m_a - m_w), with rho_w of water at its temperature (Tanaka 2001). With a sinker: rho = rho_w m_a "
                    + "/ (m_a + m_s - m_b). With the buoyancy of air: rho = m_a / (m_a - m_w) (rho_w - rho_a) + rho_a.",
            Displacement.SOURCE,
            "Boiled water of 10 to 40 degC with a drop of wetting agent, no bubbles, no drift of the balance; deduct a wire above "
                    + "0.010 g.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Mass in air", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 10000, def = "10.000 g", help = "Clean and dry.") double inAir,
            @Field(label = "Balance in water", kind = QuantityKind.MASS, unit = "g", min = 0, max = 10000, def = "1.200 g", help = "The piece hanging in water; with a sinker both together.") double inWater,
            @Field(label = "Sinker in water", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 10000, optional = true, help = "The sinker alone hanging in water; empty when the piece sinks by itself.") Double sinker,
            @Field(label = "Water temperature", kind = QuantityKind.TEMPERATURE, unit = "degC", min = 10, max = 40, def = "23 degC", help = "Beside the piece.") double water,
            @Field(label = "Buoyancy of air", def = "no", help = "Yes to take it into account (1.2 kg/m3); without a sinker only.") boolean buoyancy) {
    }

    /** Results. */
    public record Results(
            @Field(label = "Density", kind = QuantityKind.DENSITY, unit = "kg/m3", help = "Of the piece.") double density,
            @Field(label = "Volume", kind = QuantityKind.VOLUME, unit = "cm3", help = "Mass over density.") double volume,
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
        double water = Water.density(in.water());
        double displaced = in.inAir() + (in.sinker() == null ? 0 : in.sinker()) - in.inWater();
        if (!(displaced > 0)) {
            return Outcome.refused("inWater", Say.message("density.no-displacement", Rounded.text(in.inWater(), "g")), Say.message("density.no-displacement.remedy"));
        }
        if (in.buoyancy() && in.sinker() != null) {
            return Outcome.refused("buoyancy", Say.message("density.both"), Say.message("density.both.remedy"));
        }
        double density;
        if (in.sinker() != null) {
            density = Displacement.withSinker(in.inAir(), in.sinker(), in.inWater(), water);
        } else if (in.buoyancy()) {
            density = Displacement.sinkingCorrected(in.inAir(), in.inWater(), water);
        } else {
            density = Displacement.sinking(in.inAir(), in.inWater(), water);
        }
        Results results = new Results(density, 1000 * in.inAir() / density, water);
        return in.sinker() == null && in.inWater() == 0 ? Outcome.done(results, List.of(Say.caution(INFO.source(), "density.floats"))) : Outcome.done(results);
    }
}
