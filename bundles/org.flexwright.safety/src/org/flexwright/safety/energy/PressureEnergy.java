package org.flexwright.safety.energy;

import org.flexwright.core.Source;
import org.flexwright.safety.air.Vapour;

/** Energy kept in compressed air and forces of vacuum. Pressures absolute in kPa, volumes in m3, energies in kJ, areas in m2. */
public final class PressureEnergy {
    /** One atmosphere in kPa. */
    public static final double ATMOSPHERE = Vapour.ATMOSPHERE;
    /** Where the isentropic formula comes from. */
    public static final Source ISENTROPIC_SOURCE = Source.published("ASME PCC-2, article 501, appendix II (secondary copy)");
    /** Where the largest figure comes from. */
    public static final Source BRODE_SOURCE = Source.fromMemory("Brode's sum (P - P0) V / (g - 1)");

    private static final double GAMMA = 1.4;
    private static final double PCC_FACTOR = 2.5;
    private static final double PCC_EXPONENT = 0.286;
    private static final double NEWTON_PER_KILOGRAM_FORCE = 9.80665;

    private PressureEnergy() {
    }

    /** Work of an isentropic expansion to one atmosphere. */
    public static double isentropic(double pressure, double volume) {
        return pressure * volume / (GAMMA - 1) * (1 - Math.pow(ATMOSPHERE / pressure, (GAMMA - 1) / GAMMA));
    }

    /** The same as printed in ASME PCC-2, with its rounded constants. */
    public static double isentropicRounded(double pressure, double volume) {
        return PCC_FACTOR * pressure * volume * (1 - Math.pow(ATMOSPHERE / pressure, PCC_EXPONENT));
    }

    /** Work of an isothermal expansion to one atmosphere. */
    public static double isothermal(double pressure, double volume) {
        return pressure * volume * Math.log(pressure / ATMOSPHERE);
    }

    /** The largest of the usual figures, shown for caution. */
    public static double brode(double pressure, double volume) {
        return (pressure - ATMOSPHERE) * volume / (GAMMA - 1);
    }

    /** Force in kN of the atmosphere on a round lid over full vacuum; diameter in m. */
    public static double lidForce(double diameter) {
        return ATMOSPHERE * Math.PI * diameter * diameter / 4;
    }

    /** A force of kN in kilograms-force. */
    public static double kilogramForce(double kilonewton) {
        return kilonewton * 1000 / NEWTON_PER_KILOGRAM_FORCE;
    }

    /** Upper bound of the energy of a collapsing vacuum vessel. */
    public static double collapse(double volume) {
        return ATMOSPHERE * volume;
    }
}
