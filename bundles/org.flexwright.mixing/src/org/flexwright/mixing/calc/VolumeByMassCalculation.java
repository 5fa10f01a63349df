package org.flexwright.mixing.calc;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.mixing.formula.PartVolume;
import org.flexwright.quantity.QuantityKind;
import org.osgi.service.component.annotations.Component;

/** The volume of a part from its mass. */
@Component(service = Calculation.class)
public final class VolumeByMassCalculation implements Calculation<VolumeByMassCalculation.Inputs, VolumeByMassCalculation.Results> {

    private static final Source LIMIT = Source.commonPractice("5 % apart is more than a workshop measures wrong");

    /** One part on a balance. */
    public record Inputs(
            @Field(label = "Mass of the part", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true, max = 1e6, def = "12.9 g", help = "Clean and dry.") double mass,
            @Field(label = "Density of its material", kind = QuantityKind.DENSITY, unit = "g/cm3", min = 0.02, max = 20, def = "1.07 g/cm3",
                    help = "Cured; cure raises that of the liquid by the shrinkage.")
            double density,
            @Field(label = "Density open by", kind = QuantityKind.FRACTION, unit = "%", min = 0, max = 50, def = "2 %", help = "How well that density is known, to either side.")
            double open,
            @Field(label = "Volume of the drawing", kind = QuantityKind.VOLUME, unit = "ml", min = 0, minOpen = true, max = 1e6, optional = true,
                    help = "To hold it against; may be empty.")
            Double drawn) {
    }

    /** Its volume. */
    public record Results(
            @Field(label = "Volume of the part", kind = QuantityKind.VOLUME, unit = "ml", help = "Mass over density, with what the density leaves open.") Estimate volume,
            @Field(label = "Against the drawing", kind = QuantityKind.FRACTION, unit = "%", optional = true, help = "How much more was measured; empty when no drawing is given.")
            Double apart) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.volume-mass", "Part volume by its mass", 1, "Volume = mass over density of the cured material; what the density leaves open, the volume does.",
                BatchCalculation.ALGEBRA, "A part of one material without voids; bubbles in it make it seem smaller than its mould.");
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
        double volume = PartVolume.byMass(in.mass(), in.density());
        double open = in.open() / 100;
        List<Remark> remarks = new ArrayList<>();
        compare(in.drawn(), volume, remarks);
        return Outcome.done(new Results(new Estimate(volume / (1 + open), volume, volume / (1 - open), BatchCalculation.ALGEBRA), apart(in.drawn(), volume)), remarks);
    }

    /** Asks when drawing and measurement lie more than 5 % apart. */
    static void compare(Double drawn, double measured, List<Remark> remarks) {
        if (drawn != null && PartVolume.apart(drawn, measured)) {
            remarks.add(Say.VOLUME_APART.caution(LIMIT, Figures.of(drawn, "ml"), Figures.of(measured, "ml"), Figures.percent(measured / drawn - 1)));
        }
    }

    static Double apart(Double drawn, double measured) {
        return drawn == null ? null : Double.valueOf(100 * (measured / drawn - 1));
    }
}
