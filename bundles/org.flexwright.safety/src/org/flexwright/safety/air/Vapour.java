package org.flexwright.safety.air;

import org.flexwright.core.Source;

/** Vapour in air: ppm (by volume), mg/m3, density against air, saturation. */
public final class Vapour {
    /** Molar volume at 25 degrees Celsius and one atmosphere in L/mol, the basis of the ppm figures of OSHA. */
    public static final double MOLAR_VOLUME = 24.45;
    /** One atmosphere in kPa. */
    public static final double ATMOSPHERE = 101.325;
    /** Molar mass of air in g/mol. */
    public static final double AIR = 28.97;
    /** Where the conversion comes from. */
    public static final Source SOURCE = Source.published("29 CFR 1910.1000, basis of Table Z-1 (24.45 L/mol at 25 degC, 1 atm); other conditions by the gas law");

    private static final double REFERENCE_KELVIN = 298.15;
    private static final double ZERO_CELSIUS = 273.15;
    private static final double MILLION = 1e6;

    private Vapour() {
    }

    /** Molar volume in L/mol; temperature in degrees Celsius, absolute pressure in kPa. */
    public static double molarVolume(double celsius, double kilopascal) {
        return MOLAR_VOLUME * (celsius + ZERO_CELSIUS) / REFERENCE_KELVIN * ATMOSPHERE / kilopascal;
    }

    /** mg/m3 of a vapour of {@code ppm}; molar mass in g/mol, molar volume in L/mol. */
    public static double milligrams(double ppm, double molarMass, double molarVolume) {
        return ppm * molarMass / molarVolume;
    }

    /** ppm of a vapour of {@code milligrams} mg/m3. */
    public static double ppm(double milligrams, double molarMass, double molarVolume) {
        return milligrams * molarVolume / molarMass;
    }

    /** Vapour volume in m3 of {@code grams} of liquid gone into air; as a rate when given g/h. */
    public static double volume(double grams, double molarMass, double molarVolume) {
        return grams * molarVolume / (1000 * molarMass);
    }

    /** ppm at once when {@code grams} are mixed into {@code room} m3. */
    public static double mixedAtOnce(double grams, double molarMass, double molarVolume, double room) {
        return volume(grams, molarMass, molarVolume) / room * MILLION;
    }

    /** Density of the pure vapour against air. */
    public static double relativeDensity(double molarMass) {
        return molarMass / AIR;
    }

    /** Density of a mixture with a volume share of vapour against air. */
    public static double relativeDensity(double molarMass, double share) {
        return 1 + share * (relativeDensity(molarMass) - 1);
    }

    /** Volume share of vapour above a liquid at rest; both pressures in the same unit. */
    public static double saturatedShare(double vapourPressure, double pressure) {
        return vapourPressure / pressure;
    }
}
