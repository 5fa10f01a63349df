package org.flexwright.core.rubber;

/**
 * Stiffness of an incomplete ideal network of trifunctional polyol and difunctional isocyanate, relative to the complete one
 * (Miller and Macosko 1976). {@code alpha} is the product of both conversions, 0.5 (gel) to 1.
 */
public final class Network {

    private Network() {
    }

    /** Chance that a strand leads nowhere: the smaller root of P = alpha P^2 + 1 - alpha. */
    public static double deadEnd(double alpha) {
        return (1 - alpha) / alpha;
    }

    /** G/G(full): all three arms of a junction must reach the network. */
    public static double relativeStiffness(double alpha) {
        return alpha <= 0.5 ? 0 : Math.pow(1 - deadEnd(alpha), 3);
    }

    /** Conversion product of a mixture whose minority side is used up, times the conversion reached; index 100 = equal. */
    public static double alpha(double index, double minorityConversion) {
        double excess = index >= 100 ? index / 100 : 100 / index;
        return minorityConversion * minorityConversion / excess;
    }
}
