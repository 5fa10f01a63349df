package org.flexwright.testing.hardness;

import org.flexwright.testing.GaugeScale;

/**
 * What temperature does to a rubber whose stiffness is purely entropic (E proportional to absolute temperature). Polyurethanes and
 * photopolymers soften on warming instead, often by several points over 10 K: this is the ideal to compare them with, no correction.
 */
public final class EntropicDrift {
    private static final double ZERO_CELSIUS = 273.15;

    private EntropicDrift() {
    }

    /** Relative change of E for one kelvin at a temperature in degrees Celsius above absolute zero. */
    public static double modulusPerKelvin(double celsius) {
        return 1 / (celsius + ZERO_CELSIUS);
    }

    /** Points gained for one kelvin at that reading and temperature. */
    public static double pointsPerKelvin(GaugeScale scale, double reading, double celsius) {
        return modulusPerKelvin(celsius) / scale.relativeStiffnessPerPoint(reading);
    }
}
