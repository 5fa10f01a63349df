package org.flexwright.filament;

/**
 * A laid line. Lengths in mm.
 *
 * @param width  mm, above 0
 * @param height layer height in mm, above 0
 */
record Bead(double width, double height) {
    /** Cross-section of a rectangle, in mm2. */
    double rectangle() {
        return width * height;
    }

    /** Cross-section with rounded sides, in mm2; for widths of at least the height. */
    double rounded() {
        return height * (width - height) + Math.PI / 4 * height * height;
    }
}
