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
import org.flexwright.mixing.formula.FillerStiffness;
import org.osgi.service.component.annotations.Component;

/** How much stiffer and thicker a filler makes a polymer. */
@Component(service = Calculation.class)
public final class FillerStiffnessCalculation implements Calculation<FillerStiffnessCalculation.Inputs, FillerStiffnessCalculation.Results> {

    private static final Source MODELS = Source.fromMemory("Guth and Gold 1938; Guth 1945; Krieger and Dougherty 1959; Medalia 1972");
    private static final double DILUTE = 0.05;
    private static final double SPHERES = 0.2;

    /** The filler. */
    public record Inputs(
            @Field(label = "Volume fraction", min = 0, minOpen = true, max = 0.6, def = "0.10",
                    help = "Share of the volume, 0 to 0.6; the filler calculation gives it.")
            double phi,
            @Field(label = "Aspect ratio", min = 4, max = 10, def = "4", help = "Length to width of the grains, for the rod formula.") double aspect,
            @Field(label = "Packing limit", min = 0.3, max = 0.74, def = "0.64",
                    help = "Volume fraction at which nothing flows; 0.64 is random packing of spheres (from memory, unconfirmed), lumps have less.")
            double packing,
            @Field(label = "Oil absorption", min = 0, max = 300, optional = true,
                    help = "DBP or OAN in cm3 to 100 g, for carbon black only; may be empty.")
            Double oilAbsorption) {
    }

    /** Filled against unfilled. */
    public record Results(
            @Field(label = "Stiffness", help = "Times the unfilled one: lowest, Guth-Gold and highest of the formulas.") Estimate stiffness,
            @Field(label = "Smallwood", help = "1 + 2.5 phi, for very little filler.") double smallwood,
            @Field(label = "Guth-Gold", help = "1 + 2.5 phi + 14.1 phi^2, spheres.") double guthGold,
            @Field(label = "Rods", help = "1 + 0.67 f phi + 1.62 f^2 phi2.") double rods,
            @Field(label = "Structured black", optional = true,
                    help = "Guth-Gold with half of the caught rubber counted as filler; only when the oil absorption is given.")
            Double structured,
            @Field(label = "Viscosity", help = "Krieger-Dougherty, times the unfilled one.") double viscosity) {
    }

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mixing.filler-stiffness", "Stiffness with filler", 1,
                "E/E0 from the volume fraction: Smallwood 1 + 2.5 phi; Guth-Gold 1 + 2.5 phi + 14.1 phi^2; rods 1 + 0.67 f phi + 1.62 f^2 phi^2; "
                        + "viscosity (1 - phi/phiMax)^(-2.5 phiMax); carbon black structure by oil absorption (Medalia).",
                MODELS, "Small strains, grains wetted and apart. It says nothing of a filler that softens: water, oil or poisoned cure.");
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
        if (in.phi() >= in.packing()) {
            return Outcome.refused("phi", Say.STIFFNESS_PACKED.with(Figures.of(in.phi(), ""), Figures.of(in.packing(), "")), Say.STIFFNESS_PACKED_REMEDY.with());
        }
        double smallwood = FillerStiffness.smallwood(in.phi());
        double spheres = FillerStiffness.guthGold(in.phi());
        double rods = FillerStiffness.guthRods(in.phi(), in.aspect());
        Double structured = in.oilAbsorption() == null ? null : FillerStiffness.guthGold(FillerStiffness.effective(in.phi(), in.oilAbsorption()));
        double high = Math.max(Math.max(spheres, rods), structured == null ? 0 : structured);
        Estimate band = new Estimate(Math.min(smallwood, rods), spheres, high, MODELS);
        return Outcome.done(new Results(band, smallwood, spheres, rods, structured, FillerStiffness.kriegerDougherty(in.phi(), in.packing())),
                remarks(in.phi(), in.oilAbsorption()));
    }

    private static List<Remark> remarks(double phi, Double oilAbsorption) {
        List<Remark> remarks = new ArrayList<>();
        if (oilAbsorption != null && oilAbsorption < FillerStiffness.structureThreshold()) {
            remarks.add(Say.STIFFNESS_STRUCTURE.note(MODELS, Figures.of(FillerStiffness.structureThreshold(), "", 3)));
        }
        if (phi > DILUTE) {
            remarks.add(Say.STIFFNESS_RANGE.note(MODELS, Figures.of(DILUTE, ""), "Smallwood"));
        }
        if (phi > SPHERES) {
            remarks.add(Say.STIFFNESS_RANGE.caution(MODELS, Figures.of(SPHERES, ""), "Guth and Gold"));
        }
        remarks.add(Say.STIFFNESS_DISAGREE.note(MODELS));
        return remarks;
    }
}
