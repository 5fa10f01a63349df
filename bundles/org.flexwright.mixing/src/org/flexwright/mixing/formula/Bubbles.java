package org.flexwright.mixing.formula;

/** Air bubbles under vacuum and in rising. SI units; pressures absolute. */
public final class Bubbles {

    /** Free fall, rounded as in the worked figures. */
    private static final double GRAVITY = 9.81;

    private Bubbles() {
    }

    /** How many times its volume a bubble grows at constant temperature. */
    public static double growth(double fromPressure, double toPressure) {
        return fromPressure / toPressure;
    }

    /** How many times its radius it grows. */
    public static double radiusGrowth(double fromPressure, double toPressure) {
        return Math.cbrt(growth(fromPressure, toPressure));
    }

    /** Stokes rise of a rigid small sphere, m/s; a clean bubble is 1.5 times as fast. */
    public static double rise(double radius, double density, double viscosity) {
        return 2 * radius * radius * density * GRAVITY / (9 * viscosity);
    }

    /** Pressure in kPa at which water boils at a temperature in degC, -20 to 100: Buck's equation. */
    public static double waterBoils(double celsius) {
        return 0.61121 * Math.exp((18.678 - celsius / 234.5) * (celsius / (257.14 + celsius)));
    }
}
