package org.flexwright.mixing.formula;

/** How much stiffer or thicker a filled polymer is than the unfilled one, from the volume fraction alone. */
public final class FillerStiffness {

    private static final double EINSTEIN = 2.5;
    private static final double STRUCTURE_SLOPE = 0.02139;
    private static final double STRUCTURE_SPAN = 1.46;

    private FillerStiffness() {
    }

    /** Smallwood-Einstein, spheres far apart, phi below about 0.05. */
    public static double smallwood(double phi) {
        return 1 + EINSTEIN * phi;
    }

    /** Guth-Gold, spheres, phi below about 0.2. */
    public static double guthGold(double phi) {
        return 1 + EINSTEIN * phi + 14.1 * phi * phi;
    }

    /** Guth 1945 for rods of aspect ratio {@code f}, 4 to 10. */
    public static double guthRods(double phi, double f) {
        return 1 + 0.67 * f * phi + 1.62 * f * f * phi * phi;
    }

    /** Krieger-Dougherty relative viscosity; {@code phi} below the packing limit {@code phiMax}. */
    public static double kriegerDougherty(double phi, double phiMax) {
        return Math.pow(1 - phi / phiMax, -EINSTEIN * phiMax);
    }

    /** Volume fraction with the rubber caught in carbon black structure (Medalia 1972); DBP (OAN) in cm3/100 g, never below phi. */
    public static double occluded(double phi, double dbp) {
        return phi * Math.max(1, (1 + STRUCTURE_SLOPE * dbp) / STRUCTURE_SPAN);
    }

    /** Half of the caught rubber counted as filler. */
    public static double effective(double phi, double dbp) {
        return (phi + occluded(phi, dbp)) / 2;
    }

    /** DBP below which structure catches nothing. */
    public static double structureThreshold() {
        return (STRUCTURE_SPAN - 1) / STRUCTURE_SLOPE;
    }
}
