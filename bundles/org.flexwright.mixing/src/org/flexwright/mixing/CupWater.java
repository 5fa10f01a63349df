package org.flexwright.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.cause.FillerLoad;
import org.flexwright.mixing.formula.Polyurethane;
import org.flexwright.mixing.formulation.MaterialFigures;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Trial;

/**
 * What reacts in the cup of a trial, and the water that its materials bring along. A premix counts as its ingredients.
 *
 * @param nco      equivalents of isocyanate; NaN when no NCO content is known
 * @param active   equivalents that react with it, without water; NaN when no hydroxyl value is known
 * @param grams    g of polymer
 * @param carriers materials that bring water, or may
 */
record CupWater(double nco, double active, double grams, List<Carrier> carriers) {

    private static final Source USUAL_WATER = Source.commonPractice("A fine powder left open holds 0.1 to 2 % of water, 0.5 % likely");
    private static final Source DRY = Source.commonPractice("A dried powder holds next to nothing");
    private static final double REACTS_AT_LEAST = 0.5;
    /** Equivalents of isocyanate in 100 g of a soft casting urethane, where nobody says. */
    private static final double[] USUAL_NCO = { 0.05, 0.1, 0.15 };

    /**
     * A material that brings water.
     *
     * @param use   the use or the premix's ingredient
     * @param grams g of it
     * @param water per cent of its mass
     * @param dried as the record says; null when it is silent
     * @param known true when the water was measured or stands on a sheet
     */
    record Carrier(MaterialUse use, double grams, Estimate water, Boolean dried, boolean known) {
        Estimate waterGrams() {
            return water.times(grams / 100);
        }
    }

    static CupWater of(Trial trial) {
        List<FillerLoad.Part> parts = FillerLoad.parts(trial);
        double nco = parts.stream().mapToDouble(p -> p.grams() * MaterialFigures.of(p.use()).substance().nco()).sum();
        double active = parts.stream().mapToDouble(p -> p.grams() * MaterialFigures.of(p.use()).substance().active()).sum();
        double grams = FillerLoad.of(trial).map(FillerLoad::polymer).orElse(0.0);
        return new CupWater(nco > 0 ? nco : Double.NaN, active > 0 ? active : Double.NaN, grams, parts.stream().flatMap(p -> carrier(p).stream()).toList());
    }

    /** Fillers and pigments always, other materials where their water is known. */
    private static Optional<Carrier> carrier(FillerLoad.Part part) {
        MaterialUse use = part.use();
        Boolean dried = dried(use);
        MaterialFigures figures = MaterialFigures.of(use);
        boolean sheetOnly = use.getMoisture() == null;
        if (Boolean.TRUE.equals(dried) && sheetOnly) {
            return MaterialFigures.mayBeDamp(use) ? Optional.of(new Carrier(use, part.grams(), Estimate.exact(0, DRY), true, false)) : Optional.empty();
        }
        if (!figures.waterUnknown()) {
            Source source = figures.figures().isEmpty() ? DRY : figures.figures().getLast().source();
            return Optional.of(new Carrier(use, part.grams(), Estimate.exact(100 * figures.substance().water(), source), dried, true));
        }
        return use.getRole() == PartRole.FILLER ? Optional.of(new Carrier(use, part.grams(), new Estimate(0.1, 0.5, 2, USUAL_WATER), dried, false)) : Optional.empty();
    }

    /** An ingredient of a premix was dried when the premix was. */
    private static Boolean dried(MaterialUse use) {
        if (use.getDried() != null || !(use.eContainer() instanceof Premix premix)) {
            return use.getDried();
        }
        return premix.getDriedHours() == null ? null : premix.getDriedHours() > 0;
    }

    /** True when part B is the isocyanate side; unless a sheet says so, A is. */
    static boolean isocyanateIsB(Trial trial) {
        return FillerLoad.parts(trial).stream().anyMatch(p -> p.use().getRole() == PartRole.COMPONENT_B && MaterialFigures.of(p.use()).substance().nco() > 0);
    }

    boolean isKnown() {
        return !Double.isNaN(nco) && !Double.isNaN(active);
    }

    /** Index without any water; 100 where nobody says. */
    double dryIndex() {
        return isKnown() ? 100 * nco / active : 100;
    }

    /** Grams of water in all. */
    Estimate water() {
        double low = 0;
        double likely = 0;
        double high = 0;
        List<String> sources = new ArrayList<>();
        for (Carrier carrier : carriers) {
            low += carrier.waterGrams().low();
            likely += carrier.waterGrams().likely();
            high += carrier.waterGrams().high();
            sources.add(carrier.water().source().display());
        }
        return new Estimate(low, likely, high, Source.derived(String.join("; ", sources.stream().distinct().toList()) + " "));
    }

    /**
     * Index with the water counted, from all of it reacting, which is likely, to half of it, as the vacuum takes some away; where no NCO content is
     * known, over the usual ones.
     */
    Estimate wetIndex() {
        Estimate water = water();
        double[] equivalents = isKnown() ? new double[] { nco, nco, nco }
                : new double[] { USUAL_NCO[0] * grams / 100, USUAL_NCO[1] * grams / 100, USUAL_NCO[2] * grams / 100 };
        return new Estimate(index(equivalents[0], water.high()), index(equivalents[1], water.likely()), index(equivalents[2], REACTS_AT_LEAST * water.low()), water.source());
    }

    private double index(double isocyanate, double water) {
        double others = isKnown() ? active : isocyanate;
        return 100 * isocyanate / (others + water / Polyurethane.waterEquivalent());
    }
}
