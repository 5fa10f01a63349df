package org.flexwright.moulding;

import java.util.OptionalDouble;

import org.flexwright.core.Source;
import org.flexwright.core.flow.Channel;
import org.flexwright.core.flow.PowerLaw;

/**
 * Flow under constant pressure of a liquid whose viscosity grows as {@code viscosity * exp(t / timeConstant)}. SI units.
 *
 * @param startFlow    flow at time 0 in m3/s, above 0
 * @param timeConstant time in which the viscosity grows e-fold, s, above 0
 */
record ThickeningFlow(double startFlow, double timeConstant) {
    /** Growth of viscosity at the end of the working time when nothing else is said. */
    static final double DOUBLING = 2;
    static final Source SOURCE = Source.derived(
            "Hagen-Poiseuille flow of a liquid whose viscosity grows exponentially, V(t) = Q0 tau (1 - exp(-t/tau)), integrated");

    /** Flow through one channel that takes all of the pressure (Pa) at a fresh viscosity (Pa s). */
    static ThickeningFlow through(Channel gate, double viscosity, double timeConstant, double pressure) {
        return new ThickeningFlow(gate.flow(PowerLaw.newtonian(viscosity), pressure), timeConstant);
    }

    /** The e-fold time of a mix that is {@code growth} times (above 1) as thick after that time. */
    static double timeConstant(double time, double growth) {
        return time / Math.log(growth);
    }

    /** Volume that has passed after a time. */
    double volume(double time) {
        return -startFlow * timeConstant * Math.expm1(-time / timeConstant);
    }

    /** Volume that will never be reached. */
    double limitVolume() {
        return startFlow * timeConstant;
    }

    /** Time until a volume has passed; empty when it never will. */
    OptionalDouble time(double volume) {
        return volume >= limitVolume() ? OptionalDouble.empty() : OptionalDouble.of(-timeConstant * Math.log1p(-volume / limitVolume()));
    }

    /** Integral of dt over viscosity up to a time, in 1/Pa. */
    static double driven(double viscosity, double timeConstant, double time) {
        return -timeConstant / viscosity * Math.expm1(-time / timeConstant);
    }
}
