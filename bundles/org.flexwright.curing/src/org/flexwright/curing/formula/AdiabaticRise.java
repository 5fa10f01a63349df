package org.flexwright.curing.formula;

/** How much a batch would warm itself if no heat got away. */
public final class AdiabaticRise {

    private AdiabaticRise() {
    }

    /** Rise in K from equivalents of NCO to a kg, kJ to an equivalent, and J/kg/K. */
    public static double kelvin(double equivalentsPerKg, double heatPerEquivalent, double specificHeat) {
        return equivalentsPerKg * 1000 * heatPerEquivalent / specificHeat;
    }
}
