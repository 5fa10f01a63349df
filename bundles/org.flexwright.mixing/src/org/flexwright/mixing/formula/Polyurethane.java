package org.flexwright.mixing.formula;

/** Equivalent weights, index and prepolymers. Masses in g, NCO content in %, hydroxyl value in mg KOH/g. */
public final class Polyurethane {

    /** Grams of one mole of NCO groups, as the trade rounds it (some guides take 42.00). */
    public static final double NCO = 42.02;
    /** Milligrams of KOH to a mole, as the trade rounds it. */
    public static final double KOH = 56100;
    /** Molar mass of water, g/mol. */
    public static final double WATER = 18.015;

    private Polyurethane() {
    }

    /** Grams of isocyanate to one equivalent. */
    public static double isocyanateEquivalent(double ncoPercent) {
        return 100 * NCO / ncoPercent;
    }

    /** Grams of polyol to one equivalent; an amine or acid number counts the same way. */
    public static double hydroxylEquivalent(double hydroxylValue) {
        return KOH / hydroxylValue;
    }

    /** Grams of water to one equivalent: one molecule uses up two NCO groups. */
    public static double waterEquivalent() {
        return WATER / 2;
    }

    /** Molar mass of a polyol from its functionality. */
    public static double molarMass(double functionality, double equivalentWeight) {
        return functionality * equivalentWeight;
    }

    /** Grams of isocyanate for an index (100 = equal equivalents). */
    public static double isocyanateFor(double index, double ncoPercent, double otherEquivalents) {
        return index / 100 * isocyanateEquivalent(ncoPercent) * otherEquivalents;
    }

    /** Index of what is in the cup. */
    public static double index(double isocyanateGrams, double ncoPercent, double otherEquivalents) {
        return 100 * isocyanateGrams / isocyanateEquivalent(ncoPercent) / otherEquivalents;
    }

    /** NCO content in % of a prepolymer; negative means that the hydroxyl side is in excess. */
    public static double prepolymerNco(double ncoEquivalents, double hydroxylEquivalents, double totalGrams) {
        return 100 * NCO * (ncoEquivalents - hydroxylEquivalents) / totalGrams;
    }
}
