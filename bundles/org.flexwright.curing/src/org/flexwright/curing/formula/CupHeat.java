package org.flexwright.curing.formula;

import java.util.Optional;

import org.flexwright.numerics.Ode;

/**
 * A batch in a cup that heats itself and loses heat to the room, one temperature all through:
 * rho cp dT/dt = rho H dX/dt - (h S/V)(T - Ta) with the surface of a sphere of that volume.
 *
 * @param resin   what is in it
 * @param kg      mass
 * @param roomK   K around it, also its own at the start
 * @param transfer heat transfer, W/m2/K
 */
public record CupHeat(Resin resin, double kg, double roomK, double transfer) {

    private static final double TIGHT = 1e-11;

    /**
     * The hottest moment.
     *
     * @param kelvin  K
     * @param seconds s from mixing
     */
    public record Peak(double kelvin, double seconds) {
    }

    /** The hottest moment within a time; empty when it is still warming then. */
    public Optional<Peak> peak(double seconds) {
        return Ode.integrateUntil(this::derivatives, 0, start(), seconds, (t, y) -> t == 0 ? 1 : derivatives(t, y)[1], TIGHT)
                .map(state -> new Peak(state.y()[1], state.t()));
    }

    /** Seconds to a conversion; empty when it is not reached within the time. */
    public Optional<Double> timeTo(double conversion, double seconds) {
        return Ode.integrateUntil(this::derivatives, 0, start(), seconds, (t, y) -> y[0] - conversion, TIGHT).map(Ode.State::t);
    }

    private double[] start() {
        return new double[] { 0, roomK };
    }

    private double[] derivatives(double t, double[] y) {
        double rate = resin.rate(y[0], y[1]);
        double loss = transfer * surfaceToVolume() * (y[1] - roomK) / (resin.density() * resin.specificHeat());
        return new double[] { rate, resin.adiabaticRise() * rate - loss };
    }

    private double surfaceToVolume() {
        double volume = kg / resin.density();
        return Math.cbrt(36 * Math.PI) * Math.pow(volume, 2.0 / 3) / volume;
    }
}
