package org.flexwright.mixing.formulation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.flexwright.core.Message;
import org.flexwright.core.process.Mixture;
import org.flexwright.core.process.Mixture.Ingredient;
import org.flexwright.core.process.Mixtures;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.Formulation.Substance;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Step;

/**
 * What grams of materials in one cup come to: as planned or as weighed, premixes counted as their ingredients.
 *
 * @param total      g
 * @param filler     g of filler
 * @param water      g of water that is known of
 * @param nco        mol of NCO groups
 * @param usesUp     mol of groups that use them up, water included
 * @param volume     ml, volumes adding up; NaN when a density is missing
 * @param missing    names of the materials that react and whose groups nobody noted
 * @param mayBeDamp  names of powders of which nobody says how much water they hold
 * @param figures    every figure that went in, with its source
 */
public record MixtureFigures(double total, double filler, double water, double nco, double usesUp, double volume, List<String> missing, List<String> mayBeDamp,
        List<Figure> figures) {

    public MixtureFigures {
        missing = List.copyOf(missing);
        mayBeDamp = List.copyOf(mayBeDamp);
        figures = List.copyOf(figures);
    }

    /** Of the planned grams of a step. */
    public static MixtureFigures planned(Step step) {
        return of(step, Ingredient::planned);
    }

    /** Of what is in the cup. */
    public static MixtureFigures weighed(Step step) {
        return of(step, Ingredient::actual);
    }

    private static MixtureFigures of(Step step, Function<Ingredient, Double> grams) {
        Mixture mixture = Mixtures.of(step);
        double[] sum = new double[6];
        List<String> missing = new ArrayList<>();
        List<String> damp = new ArrayList<>();
        List<Figure> figures = new ArrayList<>();
        for (Ingredient part : mixture.ingredients()) {
            Double g = grams.apply(part);
            if (g == null || !(g > 0)) {
                continue;
            }
            MaterialFigures known = of(step, part.of());
            Substance one = known.substance();
            sum[0] += g;
            sum[1] += part.role() == PartRole.FILLER ? g : 0;
            sum[2] += g * one.water();
            sum[3] += g * one.nco();
            sum[4] += g * one.usesUp();
            sum[5] += one.density() == null || !(one.density() > 0) ? Double.NaN : g / one.density();
            figures.addAll(known.figures());
            String name = MaterialFigures.name(part.of());
            if (MaterialFigures.reacts(part.of()) && !(one.nco() > 0) && !(one.active() > 0)) {
                missing.add(name);
            }
            if (MaterialFigures.mayBeDamp(part.of()) && known.waterUnknown() && !Boolean.TRUE.equals(part.of().getDried())) {
                damp.add(name);
            }
        }
        return new MixtureFigures(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], missing, damp, figures);
    }

    /** What is known of a material in a step: a density typed at the weighing is taken for A or B. */
    public static MaterialFigures of(Step step, MaterialUse material) {
        return MaterialFigures.of(material, density(step, material.getRole()));
    }

    private static Double density(Step step, PartRole role) {
        if (!(step.getDetails() instanceof WeighDetails details)) {
            return null;
        }
        return role == PartRole.COMPONENT_A ? details.getDensityA() : role == PartRole.COMPONENT_B ? details.getDensityB() : null;
    }

    /** True when an isocyanate is among it: only then an index means anything. */
    public boolean urethane() {
        return nco > 0;
    }

    /** Index, water included; NaN unless everything that reacts is known and both sides are there. */
    public double index() {
        return missing.isEmpty() && nco > 0 && usesUp > 0 ? 100 * nco / usesUp : Double.NaN;
    }

    /** Why there is no index. */
    public Message noIndex() {
        return missing.isEmpty() ? Say.INDEX_ONE_SIDE.with() : Say.INDEX_MISSING.with(String.join(", ", missing));
    }

    /** Density in g/cm3; NaN when that of a material is missing. */
    public double density() {
        return total / volume;
    }
}
