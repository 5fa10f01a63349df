package org.flexwright.mixing.formula;

/** Gas from water and isocyanate: one molecule of water gives one of carbon dioxide. */
public final class MoistureFoam {

    private static final double CO2 = 44.0095;
    private static final double WATER = 18.01528;
    private static final double GAS_CONSTANT = 8.314462618;
    private static final double ROOM = 298.15;
    private static final double ATMOSPHERE = 101325;

    private MoistureFoam() {
    }

    /** Grams of carbon dioxide from grams of water. */
    public static double co2Grams(double waterGrams) {
        return waterGrams * CO2 / WATER;
    }

    /** Millilitres of carbon dioxide at 25 degC and 1 atm from grams of water, nothing dissolved. */
    public static double co2Volume(double waterGrams) {
        return waterGrams / WATER * GAS_CONSTANT * ROOM / ATMOSPHERE * 1e6;
    }
}
