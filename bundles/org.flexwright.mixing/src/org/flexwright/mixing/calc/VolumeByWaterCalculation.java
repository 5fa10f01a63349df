package org.flexwright.mixing.calc;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.mixing.formula.PartVolume;
import org.flexwright.mixing.formula.ScaleReading;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** The volume of a part from the water it pushes aside. */
@Component(service = Calculation.class)
public final class VolumeByWaterCalculation implements Calculation<VolumeByWaterCalculation.Inputs, VolumeByWaterCalculation.Results> {

    private static final Source WATER = Source.fromMemory("Density of water after Kell 1975");

    /** One part in water. */
    public record Inputs(
            @Field(label = "Water pushed aside", kind = QuantityKind.MASS, unit = "g", min = 0, max = 1e6, def = "12.1 g",
                    help = "What overflows, or what the balance gains while the part hangs by a thread in the cup of water on it.")
            double water,
            @Field(label = "Water is at", kind = QuantityKind.TEMPERATURE, unit = "degC", min = 0, max = 40, def = "20 degC", help = "Temperature of the water.") double celsius,
            @Field(label = "Step of the balance", kind = QuantityKind.MASS, unit = "g", min = 0, max = 100, def = "0.1 g", help = "Smallest change the display shows.") double step,
            @Field(label = "Volume of the drawing", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 1e6, optional = true,
                    help = "To hold it against; may be empty.")
            Double drawn) {
    }

    /** Its volume. */
    public record Results(
            @Field(label = "Volume of the part", kind = QuantityKind.VOLUME, unit = "ml", help = "Mass of the water over its density, with what the balance leaves open.")
            Estimate volume,
            @Field(label = "Against the drawing", kind = QuantityKind.FRACTION, unit = "%", optional = true, help = "How much more was measured; empty when no drawing is given.")
            Double apart) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.volume-water", "Part volume by water", 1,
                "A part under water pushes its own volume aside: volume = mass of that water over its density at its temperature.", WATER,
                "The whole part is under water, without bubbles on it; thread and hook push aside little. Soft parts that drink water are weighed at once.");
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
        if (!(in.water() > 0)) {
            return Outcome.refused("water", Say.VOLUME_NONE.with(), Say.VOLUME_NONE_REMEDY.with());
        }
        double volume = PartVolume.byWater(in.water(), in.celsius());
        double half = 2 * ScaleReading.ofNet(in.step()) / PartVolume.waterDensity(in.celsius());
        List<Remark> remarks = new ArrayList<>(List.of(Say.VOLUME_POROUS.note(Source.commonPractice())));
        VolumeByMassCalculation.compare(in.drawn(), volume, remarks);
        return Outcome.done(new Results(Estimate.plusMinus(volume, Math.min(half, volume), WATER), VolumeByMassCalculation.apart(in.drawn(), volume)), remarks);
    }
}
