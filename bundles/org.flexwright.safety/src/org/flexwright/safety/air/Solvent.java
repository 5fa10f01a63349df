package org.flexwright.safety.air;

import java.util.List;

import org.flexwright.core.Source;

/**
 * A washing or thinning liquid with the figures its vapour sums need.
 *
 * @param name          words
 * @param molarMass     g/mol
 * @param density       g/mL
 * @param flashPoint    degrees Celsius
 * @param lowerLimit    lower explosive limit, volume share
 * @param upperLimit    upper explosive limit, volume share
 * @param vapourPressure at 20 degrees Celsius, mmHg
 * @param source        where the figures come from
 */
public record Solvent(String name, double molarMass, double density, double flashPoint, double lowerLimit, double upperLimit,
        double vapourPressure, Source source) {
    /** Isopropanol. */
    public static final Solvent ISOPROPANOL = new Solvent("isopropanol", 60.1, 0.785, 12, 0.020, 0.127, 33, guide());
    /** Acetone. */
    public static final Solvent ACETONE = new Solvent("acetone", 58.1, 0.79, -18, 0.025, 0.128, 180,
            Source.published("OSHA chemical sampling information 2008-2012; NTP 1991 gives a lower limit of 2.6 %"));
    /** Ethanol. */
    public static final Solvent ETHANOL = new Solvent("ethanol", 46.1, 0.79, 13, 0.033, 0.19, 44, guide());

    private static final double ATMOSPHERE_MMHG = 760;

    private static Source guide() {
        return Source.published("NIOSH Pocket Guide, DHHS (NIOSH) 2005-149");
    }

    /** All listed ones. */
    public static List<Solvent> all() {
        return List.of(ISOPROPANOL, ACETONE, ETHANOL);
    }

    /** Volume share of vapour above the liquid at rest, 20 degrees Celsius, one atmosphere. */
    public double saturated() {
        return Vapour.saturatedShare(vapourPressure, ATMOSPHERE_MMHG);
    }

    /** Whether the air at rest above the liquid can burn as it is. */
    public boolean headspaceBurns() {
        return saturated() >= lowerLimit && saturated() <= upperLimit;
    }

    /** Grams a cubic metre of evenly mixed air holds at the lower explosive limit, 25 degrees Celsius. */
    public double gramsPerCubicMetreAtLowerLimit() {
        return Vapour.milligrams(lowerLimit * 1e6, molarMass, Vapour.MOLAR_VOLUME) / 1000;
    }
}
