package org.flexwright.testing.piece;

import org.flexwright.core.Source;

/** Density of air-free water at one atmosphere, 0 to 40 degrees Celsius. */
public final class Water {
    /** Where the formula comes from. */
    public static final Source SOURCE = Source.published("M. Tanaka et al. 2001, Metrologia 38, 301");

    private static final double A1 = -3.983035;
    private static final double A2 = 301.797;
    private static final double A3 = 522528.9;
    private static final double A4 = 69.34881;
    private static final double A5 = 999.974950;

    private Water() {
    }

    /** Density in kg/m3 at a temperature in degrees Celsius between 0 and 40. */
    public static double density(double celsius) {
        double fromMaximum = celsius + A1;
        return A5 * (1 - fromMaximum * fromMaximum * (celsius + A2) / (A3 * (celsius + A4)));
    }
}
