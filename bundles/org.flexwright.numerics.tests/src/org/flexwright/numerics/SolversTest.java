package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SolversTest {
	private static final Ode.System DECAY = (t, y) -> new double[] { -y[0] };
	private static final Ode.System SWING = (t, y) -> new double[] { y[1], -y[0] };

	@Test
	void findsARoot() {
		assertEquals(Math.sqrt(2), Roots.brent(x -> x * x - 2, 0, 2, 1e-12).orElseThrow(), 1e-11);
		assertEquals(0, Roots.brent(x -> x, 0, 1, 1e-9).orElseThrow(), "at the lower end");
		assertEquals(1, Roots.brent(x -> x - 1, 0, 1, 1e-9).orElseThrow(), "at the upper end");
		assertTrue(Roots.brent(x -> x * x + 1, -1, 1, 1e-9).isEmpty(), "no change of sign");
		assertTrue(Roots.brent(Math::log, 0, 1e-3, 1e-9).isEmpty(), "not finite at an end");
		assertThrows(IllegalArgumentException.class, () -> Roots.brent(x -> x, 1, 0, 1e-9));
		assertThrows(IllegalArgumentException.class, () -> Roots.brent(x -> x, 0, 1, 0));
		assertThrows(IllegalArgumentException.class, () -> Roots.brent(x -> x, 0, Double.POSITIVE_INFINITY, 1e-9));
	}

	@Test
	void integrates() {
		assertEquals(2, Quadrature.integrate(Math::sin, 0, Math.PI, 1e-10), 1e-9);
		assertEquals(-2, Quadrature.integrate(Math::sin, Math.PI, 0, 1e-10), 1e-9);
		assertEquals(0, Quadrature.integrate(Math::sin, 1, 1, 1e-10));
		assertEquals(2.0 / 3, Quadrature.integrate(Math::sqrt, 0, 1, 1e-8), 1e-5, "a corner at the end costs digits");
		assertThrows(ConvergenceException.class, () -> Quadrature.integrate(x -> 1 / (x - 0.3), 0, 1, 1e-12));
		assertThrows(IllegalArgumentException.class, () -> Quadrature.integrate(x -> x, 0, Double.NaN, 1e-9));
	}

	@Test
	void areaUnderAMeasuredCurve() {
		double[] x = { 0, 1, 3 };
		assertEquals(1 + 8, Quadrature.trapezoid(x, new double[] { 0, 2, 6 }));
		assertEquals(-9, Quadrature.trapezoid(new double[] { 3, 1, 0 }, new double[] { 6, 2, 0 }));
		assertThrows(IllegalArgumentException.class, () -> Quadrature.trapezoid(x, new double[] { 0, 2 }));
		assertThrows(IllegalArgumentException.class, () -> Quadrature.trapezoid(new double[] { 1 }, new double[] { 1 }));
		assertThrows(IllegalArgumentException.class, () -> Quadrature.trapezoid(x, new double[] { 0, Double.NaN, 1 }));
	}

	@Test
	void solvesDifferentialEquations() {
		assertEquals(Math.exp(-3), Ode.integrate(DECAY, 0, new double[] { 1 }, 3, 1e-10)[0], 1e-9);
		assertEquals(Math.exp(1), Ode.integrate(DECAY, 0, new double[] { 1 }, -1, 1e-10)[0], 1e-8, "backwards");
		assertArrayEquals(new double[] { Math.cos(5), -Math.sin(5) }, Ode.integrate(SWING, 0, new double[] { 1, 0 }, 5, 1e-10), 1e-8);
		double[] start = { 1 };
		double[][] rows = Ode.integrate(DECAY, 0, start, new double[] { 0, 1, 2 }, 1e-10);
		assertEquals(1, rows[0][0]);
		assertEquals(Math.exp(-1), rows[1][0], 1e-9);
		assertEquals(Math.exp(-2), rows[2][0], 1e-9);
		assertEquals(1, start[0], "the caller's start stays");
	}

	@Test
	void stopsWhereSomethingHappens() {
		Ode.State half = Ode.integrateUntil(DECAY, 0, new double[] { 1 }, 10, (t, y) -> y[0] - 0.5, 1e-10).orElseThrow();
		assertEquals(Math.log(2), half.t(), 1e-8);
		assertEquals(0.5, half.y()[0], 1e-8);
		assertTrue(Ode.integrateUntil(DECAY, 0, new double[] { 1 }, 0.1, (t, y) -> y[0] - 0.5, 1e-10).isEmpty());
		assertEquals(0, Ode.integrateUntil(DECAY, 0, new double[] { 1 }, 1, (t, y) -> y[0] - 1, 1e-10).orElseThrow().t());
	}

	@Test
	void saysWhenItCannot() {
		Ode.System runaway = (t, y) -> new double[] { y[0] * y[0] }; // infinite at t = 1
		assertThrows(ConvergenceException.class, () -> Ode.integrate(runaway, 0, new double[] { 1 }, 2, 1e-9));
		assertThrows(IllegalArgumentException.class, () -> Ode.integrate(DECAY, 0, new double[] { Double.NaN }, 1, 1e-9));
		assertThrows(IllegalArgumentException.class, () -> Ode.integrate(DECAY, 0, new double[] { 1 }, 1, 0));
		assertThrows(IllegalArgumentException.class, () -> Ode.integrate(DECAY, 0, new double[] { 1 }, new double[] { 1, 0.5 }, 1e-9));
		assertThrows(IllegalArgumentException.class, () -> Ode.integrateUntil(DECAY, 1, new double[] { 1 }, 0, (t, y) -> y[0], 1e-9));
	}
}
