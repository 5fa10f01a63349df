package org.flexwright.materials.formula;

/** Shore 00: a ball of radius 1.20 mm on a spring. Hertz with Poisson's ratio 0.5; good to a factor of some 1.5, worse above 90. */
public final class BallGauge {

    private static final double RADIUS = 1.20;
    private static final double TRAVEL = 2.5;

    private BallGauge() {
    }

    /** Spring force in N at a reading of 0 to 100. */
    public static double force(double hardness) {
        return 0.203 + 0.00908 * hardness;
    }

    /** Modulus in MPa of a reading below 100: E = 9F/(16 sqrt(R) h^1.5). */
    public static double modulus(double hardness) {
        double depth = TRAVEL * (1 - hardness / 100);
        return 9 * force(hardness) / (16 * Math.sqrt(RADIUS) * Math.pow(depth, 1.5));
    }
}
