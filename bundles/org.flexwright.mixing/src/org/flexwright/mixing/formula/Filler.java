package org.flexwright.mixing.formula;

import java.util.Objects;

/**
 * An amount of filler, kept as grams to 100 g of polymer (phr) so that counting it otherwise never changes it.
 *
 * @param phr grams to 100 g of polymer, not negative
 */
public record Filler(double phr) {

    /** What an amount of filler is counted on. */
    public enum On {
        /** Grams to 100 g of polymer. */
        PHR,
        /** Per cent of the whole mixture, filler included. */
        TOTAL,
        /** Per cent of the mass of part A. */
        PART_A,
        /** Per cent of the mass of part B. */
        PART_B
    }

    public Filler {
        if (!(phr >= 0) || Double.isInfinite(phr)) {
            throw new IllegalArgumentException("A filler amount is zero or more, got " + phr + " phr.");
        }
    }

    /** From an amount as a recipe gives it; {@code amount} below 100 when counted on the total. */
    public static Filler of(double amount, On on, WeightRatio ratio) {
        Objects.requireNonNull(on, "on");
        return new Filler(switch (on) {
            case PHR -> amount;
            case TOTAL -> 100 * amount / (100 - amount);
            case PART_A -> amount * ratio.shareA();
            case PART_B -> amount * ratio.shareB();
        });
    }

    /** Per cent of the whole mixture. */
    public double percentOfTotal() {
        return 100 * phr / (100 + phr);
    }

    /** Per cent of the mass of part A. */
    public double percentOfA(WeightRatio ratio) {
        return phr / ratio.shareA();
    }

    /** Per cent of the mass of part B. */
    public double percentOfB(WeightRatio ratio) {
        return phr / ratio.shareB();
    }

    /** Volume fraction 0..1; densities in one unit, positive. */
    public double volumeFraction(double densityFiller, double densityPolymer) {
        double filler = phr / densityFiller;
        return filler / (100 / densityPolymer + filler);
    }
}
