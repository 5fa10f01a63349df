package org.flexwright.testing.piece;

import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.testing.Say;
import org.flexwright.testing.TestingProperties;
import org.osgi.service.component.annotations.Component;

/** Density of a piece of known volume. */
@Component(service = Calculation.class)
public final class VolumeDensityCalculation implements Calculation<VolumeDensityCalculation.Inputs, VolumeDensityCalculation.Results> {
    /** Id of this calculation. */
    public static final String ID = "testing.density-by-volume";

    /** Above this share either way a density says little about a mix; common practice, no source. */
    private static final double ROUGH = 0.05;
    private static final CalculationInfo INFO = new CalculationInfo(ID, "Density by volume", 1, "rho = m / V, with the band of mass and volume as well as they are said to be known (GUM).",
            Source.derived("mass over volume"), "A full syringe, a measured block, or water that rises in a cylinder; bubbles inside count as volume.");

    /** Inputs. */
    public record Inputs(
            @Field(label = "Mass", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 100000, def = "10.52 g", help = "Clean and dry.") double mass,
            @Field(label = "Volume", kind = QuantityKind.VOLUME, unit = "cm3", min = 0, minOpen = true, max = 100000, def = "10 cm3", help = "Of the same piece or filling.") double volume,
            @Field(label = "Mass good to", kind = QuantityKind.MASS, unit = "g", min = 0, max = 1000, def = "0.02 g", help = "Either way.") double massGood,
            @Field(label = "Volume good to", kind = QuantityKind.VOLUME, unit = "cm3", min = 0, max = 1000, def = "0.1 cm3", help = "Either way: half a mark of the scale and what the eye makes of the rim.") double volumeGood) {
    }

    /** Results. */
    public record Results(@Field(label = "Density", kind = QuantityKind.DENSITY, unit = "kg/m3", help = "Mass over volume.") Estimate density) {
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
        if (in.volumeGood() >= in.volume()) {
            return Outcome.refused("volumeGood", Say.message("density.volume"), Say.message("density.volume.remedy"));
        }
        double density = 1000 * in.mass() / in.volume();
        Estimate band = Bands.band(density, INFO.source(), Bands.within(in.massGood(), 1000 / in.volume()), Bands.within(in.volumeGood(), -density / in.volume()));
        Results results = new Results(band);
        double share = (band.high() - band.low()) / 2 / density;
        return share > ROUGH ? Outcome.done(results, List.of(Say.note(INFO.source(), "density.rough", Math.round(100 * share)))) : Outcome.done(results);
    }

    @Override
    public Map<String, String> readings() {
        return Map.of("density", TestingProperties.DENSITY);
    }
}
