package org.flexwright.numerics;

import java.util.Optional;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** Initial value problems of ordinary differential equations, by Dormand and Prince 8(5,3) with step control. */
public final class Ode {
	private static final double SMALLEST_STEP_SHARE = 1e-12;

	/** The right-hand side dy/dt = f(t, y). */
	@FunctionalInterface
	public interface System {
		/** Returns the derivatives, as many as y holds; must not change y. */
		double[] derivatives(double t, double[] y);
	}

	/** A scalar watched along the way. */
	@FunctionalInterface
	public interface Watched {
		/** Its value at that state. */
		double value(double t, double[] y);
	}

	/**
	 * A state on the way.
	 *
	 * @param t the time
	 * @param y the values
	 */
	public record State(double t, double[] y) {
	}

	private Ode() {
	}

	/**
	 * The values at time t1.
	 *
	 * @param system the right-hand side
	 * @param t0     start
	 * @param y0     values at the start
	 * @param t1     end; may lie before the start
	 * @param tol    absolute and relative tolerance of each value in a step, above 0
	 * @throws ConvergenceException when the steps become too small: the problem is too steep or runs away
	 */
	public static double[] integrate(System system, double t0, double[] y0, double t1, double tol) {
		Require.finite(y0, "start values");
		if (Require.finite(t0, "start") == Require.finite(t1, "end")) {
			return y0.clone();
		}
		return run(system, t0, y0, t1, integrator(t0, t1, tol)).getPrimaryState();
	}

	/** The values at each of the times, which must rise from the start on. One row a time. */
	public static double[][] integrate(System system, double t0, double[] y0, double[] times, double tol) {
		double[][] rows = new double[times.length][];
		double t = t0;
		double[] y = y0;
		for (int i = 0; i < times.length; i++) {
			if (!(times[i] >= t)) {
				throw new IllegalArgumentException("The times must rise from the start: " + times[i] + " follows " + t + ".");
			}
			y = integrate(system, t, y, times[i], tol);
			t = times[i];
			rows[i] = y;
		}
		return rows;
	}

	/**
	 * The first state at which the watched value passes through zero.
	 *
	 * @return empty when it does not until tMax
	 */
	public static Optional<State> integrateUntil(System system, double t0, double[] y0, double tMax, Watched watched, double tol) {
		Require.finite(y0, "start values");
		if (!(Require.finite(tMax, "end") > Require.finite(t0, "start"))) {
			throw new IllegalArgumentException("The end must lie after the start, not " + tMax + " after " + t0 + ".");
		}
		if (watched.value(t0, y0) == 0) {
			return Optional.of(new State(t0, y0.clone()));
		}
		DormandPrince853Integrator integrator = integrator(t0, tMax, tol);
		StopAtZero stop = new StopAtZero(watched, (tMax - t0) / 200, (tMax - t0) * 1e-12);
		integrator.addEventDetector(stop);
		ODEStateAndDerivative end = run(system, t0, y0, tMax, integrator);
		return stop.reached() ? Optional.of(new State(end.getTime(), end.getPrimaryState())) : Optional.empty();
	}

	private static DormandPrince853Integrator integrator(double t0, double t1, double tol) {
		Require.positive(tol, "tolerance");
		double span = Math.abs(t1 - t0);
		return new DormandPrince853Integrator(span * SMALLEST_STEP_SHARE, span, tol, tol);
	}

	private static ODEStateAndDerivative run(System system, double t0, double[] y0, double t1, DormandPrince853Integrator integrator) {
		try {
			ODEStateAndDerivative end = integrator.integrate(new Equation(system, y0.length), new ODEState(t0, y0), t1);
			for (double v : end.getPrimaryState()) {
				if (!Double.isFinite(v)) {
					throw new ConvergenceException("The solution from " + t0 + " to " + t1 + " is not finite.", null);
				}
			}
			return end;
		} catch (MathRuntimeException e) {
			throw new ConvergenceException("The solution from " + t0 + " to " + t1 + " needs smaller steps than can be taken.", e);
		}
	}

	private record Equation(System system, int getDimension) implements OrdinaryDifferentialEquation {
		@Override
		public double[] computeDerivatives(double t, double[] y) {
			return system.derivatives(t, y);
		}
	}
}
