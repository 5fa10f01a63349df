package org.flexwright.numerics;

import java.util.Arrays;
import java.util.Optional;

/**
 * Analysis of variance of groups.
 *
 * @param ssBetween sum of squares between the groups
 * @param ssWithin  sum of squares within the groups
 * @param dfBetween groups - 1
 * @param dfWithin  values - groups
 * @param f         ratio of the mean squares
 * @param p         chance of a ratio at least as large when all groups have one mean
 */
public record OneWayAnova(double ssBetween, double ssWithin, int dfBetween, int dfWithin, double f, double p) {

	/**
	 * Compares the groups; they need not be of one size.
	 *
	 * @return empty for fewer than two groups, no group with two values, or no spread within any group
	 * @throws IllegalArgumentException when a group is empty or a value not finite
	 */
	public static Optional<OneWayAnova> of(double[][] groups) {
		double[] all = Arrays.stream(groups).flatMapToDouble(Arrays::stream).toArray();
		int dfWithin = all.length - groups.length;
		if (groups.length < 2 || dfWithin < 1) {
			return Optional.empty();
		}
		double grand = Descriptive.mean(all);
		double between = 0;
		double within = 0;
		for (double[] group : groups) {
			double distance = Descriptive.mean(group) - grand;
			between += group.length * distance * distance;
			within += Descriptive.sumOfSquares(group);
		}
		if (within == 0) {
			return Optional.empty();
		}
		int dfBetween = groups.length - 1;
		double f = between / dfBetween / (within / dfWithin);
		return Optional.of(new OneWayAnova(between, within, dfBetween, dfWithin, f, FisherF.upper(f, dfBetween, dfWithin)));
	}

	/** Mean square between the groups. */
	public double msBetween() {
		return ssBetween / dfBetween;
	}

	/** Mean square within the groups. */
	public double msWithin() {
		return ssWithin / dfWithin;
	}
}
