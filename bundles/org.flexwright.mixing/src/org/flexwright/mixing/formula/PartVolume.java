package org.flexwright.mixing.formula;

/** The volume of a part by water or by its mass. Masses in g, densities in g/cm3, volumes in ml, temperatures in degC. */
public final class PartVolume {

    private static final double APART = 0.05;

    private PartVolume() {
    }

    /** From the mass of the water it pushes aside: what overflows, or what a balance gains while the part hangs in the cup of water on it. */
    public static double byWater(double waterGrams, double celsius) {
        return waterGrams / waterDensity(celsius);
    }

    /** From its own mass. */
    public static double byMass(double grams, double density) {
        return grams / density;
    }

    /** True when two volumes lie more than 5 % apart; the first is the one it is counted on. */
    public static boolean apart(double drawn, double measured) {
        return Math.abs(measured / drawn - 1) > APART + 1e-9;
    }

    /** Density of water, 0 to 40 degC, to 0.0001 g/cm3: Kell's form of 1975, whose constants are from memory. */
    public static double waterDensity(double celsius) {
        double t = celsius;
        return (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))) / (1 + 16.879850e-3 * t) / 1000;
    }
}
