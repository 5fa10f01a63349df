package org.flexwright.safety.energy;

import org.flexwright.core.Source;

/** Heat and gas of an isocyanate that reacts. */
public final class Exotherm {
    /** Where the heat figures come from. */
    public static final Source SOURCE = Source.fromMemory("about 95 kJ/mol for isocyanate and hydroxyl, 1.9 kJ/(kg K)");
    /** Heat of reaction of isocyanate with hydroxyl in kJ/mol. */
    public static final double URETHANE_HEAT = 95;
    /** Heat capacity of a casting polyurethane in kJ/(kg K). */
    public static final double HEAT_CAPACITY = 1.9;

    private static final double WATER = 18.015;

    private Exotherm() {
    }

    /** Rise in K when no heat leaves: mol of reacting groups in a kg of mix, kJ/mol, kJ/(kg K). */
    public static double adiabaticRise(double molesPerKilogram, double heat, double heatCapacity) {
        return molesPerKilogram * heat / heatCapacity;
    }

    /** Litres of carbon dioxide from {@code grams} of water that all reacts with isocyanate; molar volume in L/mol. */
    public static double carbonDioxide(double grams, double molarVolume) {
        return grams / WATER * molarVolume;
    }
}
