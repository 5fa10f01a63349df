package org.flexwright.numerics;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Uncertainty of a result from that of its parts (JCGM 100:2008, GUM).
 *
 * @param standard    the combined standard uncertainty
 * @param effectiveDf the effective degrees of freedom (Welch-Satterthwaite); infinite when all parts are known exactly
 */
public record Uncertainty(double standard, double effectiveDf) {

	/**
	 * One contribution.
	 *
	 * @param name        what it is
	 * @param sensitivity change of the result for one unit of the contribution
	 * @param standard    its standard uncertainty, from 0 up
	 * @param df          its degrees of freedom, infinite for a known limit
	 */
	public record Contribution(String name, double sensitivity, double standard, double df) {
		/** @throws IllegalArgumentException when a figure is impossible */
		public Contribution {
			Require.finite(sensitivity, "sensitivity");
			Require.notNegative(standard, "standard uncertainty");
			Require.degreesOfFreedom(df);
		}

		/** A contribution that adds to the result as it is. */
		public static Contribution of(String name, double standard, double df) {
			return new Contribution(name, 1, standard, df);
		}

		double effect() {
			return sensitivity * standard;
		}
	}

	/**
	 * Combines independent contributions by the root of the sum of squares.
	 *
	 * @throws IllegalArgumentException when there is none
	 */
	public static Uncertainty combine(List<Contribution> contributions) {
		if (contributions.isEmpty()) {
			throw new IllegalArgumentException("At least one contribution is needed.");
		}
		double variance = 0;
		double weighted = 0;
		for (Contribution c : contributions) {
			double square = c.effect() * c.effect();
			variance += square;
			weighted += square * square / c.df();
		}
		return new Uncertainty(Math.sqrt(variance), weighted == 0 ? Double.POSITIVE_INFINITY : variance * variance / weighted);
	}

	/** The half width at the level: t at the effective degrees of freedom times the standard uncertainty. */
	public double expanded(double level) {
		return StudentT.factor(level, effectiveDf) * standard;
	}

	/** Standard uncertainty of a mean of readings, s / sqrt(n); empty for fewer than two. */
	public static OptionalDouble ofMean(double... x) {
		OptionalDouble sd = Descriptive.standardDeviation(x);
		return sd.isEmpty() ? sd : OptionalDouble.of(sd.getAsDouble() / Math.sqrt(x.length));
	}

	/** Standard uncertainty of a value known to lie within plus and minus the half width: a / sqrt(3). */
	public static double rectangular(double halfWidth) {
		return Require.notNegative(halfWidth, "half width") / Math.sqrt(3);
	}

	/** Standard uncertainty of reading to a step of the display or scale: step / sqrt(12). */
	public static double resolution(double step) {
		return Require.notNegative(step, "step") / Math.sqrt(12);
	}
}
