package org.flexwright.vatprint;

/**
 * Layers of a print and how long they take.
 *
 * @param layers     all layers
 * @param baseLayers the first ones with their own exposure, no more than all
 */
record PrintTime(int layers, int baseLayers) {
    private static final double WHOLE_LAYERS = 1e-9;

    /** Layers for a height and layer height in the same unit, both above 0. */
    static PrintTime of(double height, double layerHeight, int baseLayers) {
        // 40 / 0.05 must give 800 layers whatever the binary fraction says
        int layers = Math.max(1, (int) Math.ceil(height / layerHeight - WHOLE_LAYERS));
        return new PrintTime(layers, Math.min(baseLayers, layers));
    }

    /** Time in s from exposures and the move between them, all in s. */
    double seconds(double baseExposure, double exposure, double move) {
        return baseLayers * (baseExposure + move) + (layers - baseLayers) * (exposure + move);
    }
}
