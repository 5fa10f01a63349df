package org.flexwright.mixing.formula;

/**
 * Parts split over pots so that each pot is empty well before its working time ends.
 *
 * @param parts    parts to fill, at least 1
 * @param perPot   parts a pot fills in time, at least 1
 */
public record Pots(int parts, int perPot) {

    /**
     * Parts one pot fills in time, zero when not even one.
     *
     * @param workingTime from first contact
     * @param before      from first contact to the start of filling
     * @param perPart     filling one part
     * @param reserve     how many times the filling time must be left, 1 or more
     */
    public static int fitting(double workingTime, double before, double perPart, double reserve) {
        double left = workingTime - before;
        // A tenth of a thousandth of a part forgives what the division lost.
        return left <= 0 ? 0 : (int) Math.min(Integer.MAX_VALUE, Math.floor(left / (reserve * perPart) + 1e-4));
    }

    /** How many pots. */
    public int pots() {
        return (parts + perPot - 1) / perPot;
    }

    /** Parts in the fullest pot when they are spread evenly. */
    public int fullest() {
        return (parts + pots() - 1) / pots();
    }
}
