package org.flexwright.testing.piece;

import org.flexwright.core.Source;

/** Density of a piece weighed in air and in water. Masses in g as the balance shows them, densities in kg/m3. */
public final class Displacement {
    /** Density of workshop air used for the buoyancy correction, kg/m3. */
    public static final double AIR = 1.2;
    /** Where the formulas come from. */
    public static final Source SOURCE = Source.published("ISO 2781, ISO 1183-1, ASTM D792 (parts seen); air 1.2 kg/m3 is common practice");

    private Displacement() {
    }

    /** Density of a piece that sinks; {@code inAir > inWater >= 0}. */
    public static double sinking(double inAir, double inWater, double water) {
        return density(inAir, inAir - inWater, water, 0);
    }

    /** The same with the buoyancy of air taken into account. */
    public static double sinkingCorrected(double inAir, double inWater, double water) {
        return density(inAir, inAir - inWater, water, AIR);
    }

    /** Density from the mass in air, the mass of water displaced as the balance shows it, and the densities of water and air; air 0 leaves it out. */
    public static double density(double inAir, double displaced, double water, double air) {
        return inAir / displaced * (water - air) + air;
    }

    /** Density of a piece that floats, held under by a sinker; the sinker and both together weighed in water. */
    public static double withSinker(double inAir, double sinkerInWater, double bothInWater, double water) {
        return density(inAir, inAir + sinkerInWater - bothInWater, water, 0);
    }
}
