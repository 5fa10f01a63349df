package org.flexwright.vatprint;

import java.util.Optional;

import org.flexwright.vatprint.data.Printing;

/**
 * Light of a layer against what it needs.
 *
 * @param exposure      the exposure that counts, s
 * @param dose          mJ/cm2
 * @param depth         um that it cures; 0 when it cures nothing
 * @param overCure      um wanted beyond the layer; 0 when none is entered
 * @param neededSeconds exposure for layer and over-cure
 */
record LayerDose(Entered exposure, double dose, double depth, double overCure, double neededSeconds) {

    /** Empty while exposure, irradiance, working curve or layer height is missing. */
    static Optional<LayerDose> of(Printing d) {
        Entered exposure = Entered.of("Exposure", d.getPlannedExposure(), d.getActualExposure());
        if (exposure == null || !positive(d.getIrradiance()) || !positive(d.getPenetrationDepth()) || !positive(d.getCriticalDose())
                || !positive(d.getLayerHeight())) {
            return Optional.empty();
        }
        WorkingCurve curve = new WorkingCurve(d.getPenetrationDepth(), d.getCriticalDose());
        double dose = d.getIrradiance() * exposure.value();
        double overCure = d.getOverCure() == null ? 0 : d.getOverCure();
        double depth = dose > d.getCriticalDose() ? curve.depth(dose) : 0;
        return Optional.of(new LayerDose(exposure, dose, depth, overCure, curve.dose(d.getLayerHeight() + overCure) / d.getIrradiance()));
    }

    private static boolean positive(Double value) {
        return value != null && value > 0;
    }
}
