package org.flexwright.filament;

/**
 * The number that counts for a planned and actual pair: what happened, or the plan while nothing happened yet.
 *
 * @param feature name of the feature it stands in
 * @param value   in that feature's unit
 */
record Entered(String feature, double value) {
    /** The one that counts; null when neither is entered. {@code name}: feature name without its planned or actual. */
    static Entered of(String name, Double planned, Double actual) {
        if (actual != null) {
            return new Entered("actual" + name, actual);
        }
        return planned == null ? null : new Entered("planned" + name, planned);
    }
}
