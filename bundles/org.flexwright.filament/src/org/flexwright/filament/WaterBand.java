package org.flexwright.filament;

import java.util.function.ToDoubleFunction;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;

/**
 * The slowest and fastest way water may move in a strand, by what is known of it.
 *
 * @param slow   least diffusivity at room temperature and least gain by heat
 * @param fast   most of both
 * @param source where they come from
 */
record WaterBand(WaterDiffusion slow, WaterDiffusion fast, Source source) {
    /** Temperature of the published diffusivities, degC. */
    static final double ROOM = 23;
    /** Diffusivity at room temperature, m2/s. */
    static final double SLOWEST = 1.06e-12;
    /** Diffusivity at room temperature, m2/s. */
    static final double FASTEST = 3.40e-12;
    /** Activation energy of diffusion in a dry polyurethane, 11 kcal/mol in kJ/mol. */
    static final double DRY_ENERGY = 11 * 4.184;
    /** What it falls to at saturation. */
    static final double WET_ENERGY = DRY_ENERGY / 2;
    static final String DIFFUSIVITY_SOURCE = "preprint 202604.1293 (2026), printed soft polyurethane 60 to 98 A in saline, not filament";
    static final String ENERGY_SOURCE = "Schneider et al. 1968, J. Appl. Polym. Sci. 12(3), a polyester polyurethane at 27 to 40 degC, abstract";

    /** What follows from it, between the slow and the fast end; the middle of the rates is taken on a logarithmic scale. */
    Estimate of(ToDoubleFunction<WaterDiffusion> what) {
        WaterDiffusion middle = new WaterDiffusion(Math.sqrt(slow.diffusivity() * fast.diffusivity()), (slow.energy() + fast.energy()) / 2);
        double one = what.applyAsDouble(slow);
        double likely = what.applyAsDouble(middle);
        double other = what.applyAsDouble(fast);
        // below room temperature the ends of what heat gains change places
        return new Estimate(Math.min(likely, Math.min(one, other)), likely, Math.max(likely, Math.max(one, other)), source);
    }

    /** The published spread. */
    static WaterBand published() {
        return of(null, null);
    }

    /** Own values where there are any, in m2/s at room temperature and kJ/mol, else the published spread. */
    static WaterBand of(Double diffusivity, Double energy) {
        double slowest = diffusivity == null ? SLOWEST : diffusivity;
        double fastest = diffusivity == null ? FASTEST : diffusivity;
        double least = energy == null ? WET_ENERGY : energy;
        double most = energy == null ? DRY_ENERGY : energy;
        return new WaterBand(new WaterDiffusion(slowest, least), new WaterDiffusion(fastest, most), source(diffusivity == null, energy == null));
    }

    private static Source source(boolean diffusivityPublished, boolean energyPublished) {
        if (!diffusivityPublished && !energyPublished) {
            return Source.derived("Crank 1975, diffusion out of a cylinder, with the values entered");
        }
        return Source.published("Crank 1975, diffusion out of a cylinder"
                + (diffusivityPublished ? "; diffusivity: " + DIFFUSIVITY_SOURCE : "; diffusivity as entered")
                + (energyPublished ? "; activation energy: " + ENERGY_SOURCE : "; activation energy as entered"));
    }
}
