package org.flexwright.testing;

import org.flexwright.testing.hardness.DurometerStandard;

/** What a hand durometer reading on a given piece stands for. */
public final class HardnessReading {

    /** What a reading may be compared with. */
    public enum Kind {
        /** The piece is thick and flat enough: a hardness of the material. */
        MATERIAL,
        /** Thin or curved: an apparent hardness, comparable only at the same spot and support. */
        APPARENT,
        /** The thickness was not entered, so nobody can say. */
        UNKNOWN
    }

    private HardnessReading() {
    }

    /**
     * What a reading stands for.
     *
     * @param scale     the gauge's scale
     * @param thickness thickness of rubber under the spot in mm, plies together; null when not entered
     * @param curved    true when no flat disc of 6 mm radius lies around the spot
     */
    public static Kind kindOf(GaugeScale scale, Double thickness, boolean curved) {
        if (curved) {
            return Kind.APPARENT;
        }
        if (thickness == null) {
            return Kind.UNKNOWN;
        }
        return thickness < neededThickness(scale) ? Kind.APPARENT : Kind.MATERIAL;
    }

    /** Thickness in mm a flat piece needs for a hardness of the material, ISO 48-4:2018 and for 00 and 000 ASTM D2240. */
    public static double neededThickness(GaugeScale scale) {
        DurometerStandard standard = DurometerStandard.ISO_48_4.covers(scale) ? DurometerStandard.ISO_48_4 : DurometerStandard.ASTM_D2240;
        return standard.minThickness(scale).value();
    }
}
