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
        return restitutionUncertainty(firstFlight, restitution, timing, timing, timing);
    }

    /** The same when each of the three impacts has an uncertainty of its own, in s. */
    public static double restitutionUncertainty(double firstFlight, double restitution, double first, double second, double third) {
        return length(restitution * first, (1 + restitution) * second, third) / firstFlight;
    }

    /** Coefficient of restitution at the first impact, dropped from {@code height} m with a first flight of {@code flight} s. */
    public static double firstRestitution(double height, double flight) {
        return flight * Math.sqrt(G / (8 * height));
    }

    /** Standard uncertainty in m of {@link #dropHeight} from two flights in s when the three impacts have these uncertainties, in s. */
    public static double dropHeightUncertainty(double firstFlight, double secondFlight, double first, double second, double third) {
        double height = dropHeight(firstFlight, restitution(firstFlight, secondFlight));
        return height * length(4 / firstFlight * first, (4 / firstFlight + 2 / secondFlight) * second, 2 / secondFlight * third);
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

    private static double length(double... parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }

    /** Time in s from the first impact to rest; restitution below 1. */
    public static double timeToRest(double firstFlight, double restitution) {
        return firstFlight / (1 - restitution);
    }
}
