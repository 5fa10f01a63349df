package org.flexwright.numerics;

import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** How many parts would settle whether a mean lies inside or outside a target. */
public final class MoreParts {
	private static final int FEWEST = 3;
	private static final int MOST = 1000;

	private MoreParts() {
	}

	/**
	 * The smallest number of parts, in all, with which the t interval of this mean at this spread would lie wholly inside
	 * the target, or wholly outside it. Three parts are the fewest that are judged.
	 *
	 * @param mean       the mean so far
	 * @param sd         the standard deviation of one part, from 0 up
	 * @param targetLow  lower end of the target, may be negative infinity
	 * @param targetHigh upper end of the target, may be infinity
	 * @param level      confidence level, 0.95
	 * @return empty when the mean sits on an edge, or when more than 1000 parts would be needed
	 */
	public static OptionalInt needed(double mean, double sd, double targetLow, double targetHigh, double level) {
		Require.finite(mean, "mean");
		Require.notNegative(sd, "standard deviation");
		Require.between0and1(level, "level");
		Interval target = new Interval(targetLow, targetHigh);
		if (mean == targetLow || mean == targetHigh) {
			return OptionalInt.empty();
		}
		// The half width t s / sqrt(n) only falls with n.
		return first(FEWEST, MOST, n -> {
			Interval interval = Intervals.meanKnownSpread(mean, n, sd, n - 1.0, level);
			return target.contains(interval) || interval.isBelow(target.low()) || interval.isAbove(target.high());
		});
	}

	/**
	 * The smallest number that settles something, found by halving.
	 *
	 * @param from    the smallest that may be tried
	 * @param to      the largest that may be tried, not below {@code from}
	 * @param settles whether a number settles it; once it does, every larger one must too
	 * @return empty when not even the largest does
	 */
	public static OptionalInt first(int from, int to, IntPredicate settles) {
		if (!settles.test(to)) {
			return OptionalInt.empty();
		}
		int no = from - 1;
		int yes = to;
		while (yes - no > 1) {
			int middle = (no + yes) >>> 1;
			if (settles.test(middle)) {
				yes = middle;
			} else {
				no = middle;
			}
		}
		return OptionalInt.of(yes);
	}
}
