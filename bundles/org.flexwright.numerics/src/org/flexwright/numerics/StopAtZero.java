package org.flexwright.numerics;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Ends an integration at the first zero of a watched value, and remembers that it did. */
final class StopAtZero implements ODEEventDetector {
	private static final int MOST_ITERATIONS = 200;

	private final Ode.Watched watched;
	private final double checkEvery;
	private final BracketingNthOrderBrentSolver solver;
	private boolean reached;

	StopAtZero(Ode.Watched watched, double checkEvery, double timeTolerance) {
		this.watched = watched;
		this.checkEvery = checkEvery;
		this.solver = new BracketingNthOrderBrentSolver(0, timeTolerance, 0, 5);
	}

	boolean reached() {
		return reached;
	}

	@Override
	public AdaptableInterval getMaxCheckInterval() {
		return (state, isForward) -> checkEvery;
	}

	@Override
	public int getMaxIterationCount() {
		return MOST_ITERATIONS;
	}

	@Override
	public BracketingNthOrderBrentSolver getSolver() {
		return solver;
	}

	@Override
	public ODEEventHandler getHandler() {
		return (state, detector, increasing) -> {
			reached = true;
			return Action.STOP;
		};
	}

	@Override
	public double g(ODEStateAndDerivative state) {
		return watched.value(state.getTime(), state.getPrimaryState());
	}
}
