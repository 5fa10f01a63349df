package org.flexwright.testing.motion;

import org.flexwright.core.Source;

/**
 * A ball dropped on a firm floor and heard: impacts at t0, t1, t2, flight times T(n) = t(n+1) - t(n) = 2 v(n) / g. Air drag is left
 * out; the coefficient of restitution falls with speed.
 */
public final class BouncingBall {
    /** Standard gravity, m/s2. */
    public static final double G = 9.80665;
    /** Where the method comes from. */
    public static final Source SOURCE = Source.fromMemory("A. D. Bernstein 1977, American Journal of Physics 45, 41; the same model was seen elsewhere");

    private BouncingBall() {
    }

    /** Coefficient of restitution from two successive flight times in s, both positive. */
    public static double restitution(double firstFlight, double secondFlight) {
        return secondFlight / firstFlight;
    }

    /** Standard uncertainty of {@link #restitution} when every impact is known to {@code timing} s. */
    public static double restitutionUncertainty(double firstFlight, double restitution, double timing) {
        double onePlus = 1 + restitution;
        return timing / firstFlight * Math.sqrt(1 + onePlus * onePlus + restitution * restitution);
    }

    /** Height in m of the apex after an impact whose flight takes {@code flight} s. */
    public static double apex(double flight) {
        return G * flight * flight / 8;
    }

    /** Height in m the ball was dropped from, from its first flight time in s. */
    public static double dropHeight(double firstFlight, double restitution) {
        return apex(firstFlight) / (restitution * restitution);
    }

    /** Flight time in s after impact {@code number} (0 is the first) of a ball dropped from {@code height} m. */
    public static double flightTime(double height, double restitution, int number) {
        return 2 * Math.sqrt(2 * height / G) * Math.pow(restitution, number + 1.0);
    }

    /** Time in s from the first impact to rest; restitution below 1. */
    public static double timeToRest(double firstFlight, double restitution) {
        return firstFlight / (1 - restitution);
    }
}
