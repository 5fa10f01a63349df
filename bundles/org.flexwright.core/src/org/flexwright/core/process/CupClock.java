package org.flexwright.core.process;

import org.flexwright.numerics.Roots;

/**
 * How a working time moves with the temperature, with the amount in the cup, and with what is allowed to happen until its end. Temperatures in
 * degC, masses in g, activation energies in kJ/mol; times in min where a cup loses heat, else in any one unit.
 */
public final class CupClock {

    private static final double GAS_CONSTANT = 8.314462618;
    private static final double ZERO_CELSIUS = 273.15;
    /** Where cups are compared; between temperatures a time is carried by its activation energy alone. */
    static final double COMPARED_AT = 23;
    /** Of the test resin of the sheet that processes/A10 is checked with, no source: g/ml, J/kg/K; still air: W/m2/K. */
    private static final double DENSITY = 1.08;
    private static final double SPECIFIC_HEAT = 1800;
    private static final double TRANSFER = 8;
    private static final int SLICES = 40;
    private static final double NEAR = 1e-13;

    private CupClock() {
    }

    /** What a time is multiplied by going from one temperature to another: exp[(Ea/R)(1/T2 - 1/T1)]. */
    public static double temperatureFactor(double activationEnergy, double fromC, double toC) {
        return Math.exp(1000 * activationEnergy / GAS_CONSTANT * (1 / (toC + ZERO_CELSIUS) - 1 / (fromC + ZERO_CELSIUS)));
    }

    /** Growth time tau of eta = eta0 exp(t/tau) from the time in which the viscosity grew {@code fold} times, above 1. */
    public static double growthTime(double time, double fold) {
        return time / Math.log(fold);
    }

    /** Time until the viscosity has grown {@code fold} times, above 1. */
    public static double timeTo(double fold, double growthTime) {
        return growthTime * Math.log(fold);
    }

    /**
     * What a working time is multiplied by going from one amount to another in a cup at 23 degC: a bigger one has less surface to a gram and
     * runs hotter. One temperature all through, the surface of a sphere of that volume, and a reaction that until then runs steadily but for
     * its temperature.
     *
     * @param minutes with the first amount, above 0
     * @param fromGrams first amount, above 0
     * @param toGrams  other amount, above 0
     * @param warming  K the mixture would be warmer at the end of its working time if no heat got away, not negative
     */
    public static double massFactor(double minutes, double fromGrams, double toGrams, double activationEnergy, double warming) {
        if (fromGrams == toGrams || warming == 0) {
            return 1;
        }
        double longest = minutes * 1.000001 / temperatureFactor(activationEnergy, COMPARED_AT, COMPARED_AT + warming);
        double thin = Roots.brent(t -> minutes(t, fromGrams, activationEnergy, warming) - minutes, minutes * 0.999999, longest, minutes * NEAR).orElseThrow();
        return minutes(thin, toGrams, activationEnergy, warming) / minutes;
    }

    /**
     * Minutes in a cup from those in a layer so thin that it stays at room temperature. With s the time at room temperature that does as much:
     * dT/ds = warming/thin - (T - room)/(loss a(T)), dt = ds/a(T), a the Arrhenius factor; each slice solved with a held at its middle.
     */
    static double minutes(double thin, double grams, double activationEnergy, double warming) {
        double loss = lossMinutes(grams);
        double slice = thin / SLICES;
        double above = 0;
        double minutes = 0;
        for (int i = 0; i < SLICES; i++) {
            double middle = after(slice / 2, above, speed(above, activationEnergy), loss, warming / thin);
            double speed = speed(middle, activationEnergy);
            above = after(slice, above, speed, loss, warming / thin);
            minutes += slice / speed;
        }
        return minutes;
    }

    private static double speed(double above, double activationEnergy) {
        return 1 / temperatureFactor(activationEnergy, COMPARED_AT, COMPARED_AT + above);
    }

    private static double after(double slice, double above, double speed, double loss, double heating) {
        double steady = heating * loss * speed;
        return steady + (above - steady) * Math.exp(-slice / (loss * speed));
    }

    /** Minutes in which a cup that reacts no more loses all but 1/e of its warmth. */
    private static double lossMinutes(double grams) {
        double volume = grams / DENSITY * 1e-6;
        double surface = Math.cbrt(36 * Math.PI) * Math.pow(volume, 2.0 / 3);
        return 1000 * DENSITY * SPECIFIC_HEAT * volume / (TRANSFER * surface) / 60;
    }
}
