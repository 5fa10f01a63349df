package org.flexwright.filament;

/**
 * A round strand. Lengths in mm, modulus and pressure in MPa, forces in N.
 *
 * @param diameter mm, above 0
 */
record Strand(double diameter) {
    /** Length factor of a strand held fast at both ends. */
    static final double BOTH_ENDS_FIXED = 0.5;
    /** Length factor of a strand held fast at one end and free to turn at the other. */
    static final double ONE_END_PINNED = 0.7;
    /** Length factor of a strand free to turn at both ends. */
    static final double BOTH_ENDS_PINNED = 1;

    /** Cross-section in mm2. */
    double area() {
        return Math.PI / 4 * diameter * diameter;
    }

    /** Second moment of area in mm4. */
    double inertia() {
        return Math.PI / 64 * Math.pow(diameter, 4);
    }

    /** Euler's load of a straight free length. */
    double bucklingForce(double modulus, double freeLength, double lengthFactor) {
        return Math.PI * Math.PI * modulus * inertia() / Math.pow(lengthFactor * freeLength, 2);
    }

    /** Slenderness of a free length: effective length over radius of gyration. */
    double slenderness(double freeLength, double lengthFactor) {
        return lengthFactor * freeLength / (diameter / 4);
    }

    /** Push that gives this pressure over the cross-section. */
    double push(double pressure) {
        return pressure * area();
    }
}
