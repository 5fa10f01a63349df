package org.flexwright.vatprint;

/** What a row of baths leaves on a part. */
final class CarryOver {
    private CarryOver() {
    }

    /**
     * Share of the first liquid left after so many clean baths.
     *
     * @param carried volume that clings to the part, 0 or more
     * @param bath    volume of a bath in the same unit, above 0
     */
    static double share(double carried, double bath, int baths) {
        return Math.pow(carried / (carried + bath), baths);
    }
}
