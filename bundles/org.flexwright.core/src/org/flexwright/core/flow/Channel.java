package org.flexwright.core.flow;

/**
 * A straight channel filled by laminar, fully developed flow; losses at its ends are not counted. Lengths in m, flow in m3/s, pressure
 * in Pa. Source: the textbook relations of Hagen and Poiseuille and their power-law forms, derived from the equation of motion.
 */
public sealed interface Channel permits RoundChannel, SlotChannel {
    /** Pressure lost over the channel at a flow above 0. */
    double pressureDrop(PowerLaw liquid, double flow);

    /** Flow under a pressure difference above 0. */
    double flow(PowerLaw liquid, double pressureDrop);

    /** Shear rate at the wall in 1/s as it would be in a liquid of constant viscosity. */
    double apparentWallRate(double flow);

    /**
     * How far a front has come in an empty channel after a growing viscosity has let through {@code driven} = integral of dt/viscosity, in
     * 1/Pa; liquids of constant index 1 only.
     *
     * @param pressure constant pressure behind the front, Pa
     */
    double frontLength(double pressure, double driven);
}
