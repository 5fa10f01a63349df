package org.flexwright.mixing.formula;

/**
 * What a batch has to fill.
 *
 * @param parts        number of parts, at least 1
 * @param partVolume   ml a part
 * @param runnerVolume ml of sprue, runner and riser a part
 * @param deadVolume   ml that stay in syringe or hose, once
 */
public record Batch(int parts, double partVolume, double runnerVolume, double deadVolume) {

    /** Net volume in ml. */
    public double netVolume() {
        return parts * (partVolume + runnerVolume) + deadVolume;
    }

    /** Net mass in g of a mixture with that density in g/cm3. */
    public double netMass(double density) {
        return density * netVolume();
    }

    /** Mass to mix in g. */
    public double mass(double density, Surplus surplus, double share) {
        return netMass(density) * surplus.factor(share);
    }
}
