package org.flexwright.testing.piece;

/** Plain sums of tensile, tear and compression-set pieces. Lengths mm, forces N, stresses MPa. */
public final class Strength {

    private Strength() {
    }

    /** Stress in MPa of a force on the undeformed narrow section. */
    public static double stress(double force, double width, double thickness) {
        return force / (width * thickness);
    }

    /** Elongation in per cent of the test length. */
    public static double elongation(double length, double testLength) {
        return 100 * (length - testLength) / testLength;
    }

    /** Length the test length has at an elongation in per cent. */
    public static double lengthAt(double elongation, double testLength) {
        return testLength * (1 + elongation / 100);
    }

    /** Tear strength in N/mm, the same as kN/m. */
    public static double tear(double force, double thickness) {
        return force / thickness;
    }

    /** Compression set in per cent: height before, height after release, height of the spacer. */
    public static double compressionSet(double before, double after, double spacer) {
        return 100 * (before - after) / (before - spacer);
    }
}
