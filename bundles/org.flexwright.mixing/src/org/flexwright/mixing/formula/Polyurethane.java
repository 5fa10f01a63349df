package org.flexwright.mixing.formula;

/** Equivalent weights, index and prepolymers. Masses in g, NCO content in %, hydroxyl value in mg KOH/g. */
public final class Polyurethane {

    /** Grams of one mole of NCO groups, as the trade rounds it (some guides take 42.00). */
    public static final double NCO = 42.02;
    /** Milligrams of KOH to a mole, as the trade rounds it. */
    public static final double KOH = 56100;
    /** The same from the atomic weights K 39.0983, O 15.9994 and H 1.00794 that were in use when most sheets were written; from memory. */
    public static final double KOH_EXACT = 1000 * (39.0983 + 15.9994 + 1.00794);
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
        return hydroxylEquivalent(hydroxylValue, KOH);
    }

    /** The same with the milligrams of KOH to a mole that one counts with. */
    public static double hydroxylEquivalent(double hydroxylValue, double koh) {
        return koh / hydroxylValue;
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
