package org.flexwright.numerics;

/**
 * A range of values, both ends included; an end may be infinite.
 *
 * @param low  lower end
 * @param high upper end, not below the lower
 */
public record Interval(double low, double high) {

	/** @throws IllegalArgumentException when an end is no number or the ends are the wrong way round */
	public Interval {
		if (!(low <= high)) {
			throw new IllegalArgumentException("An interval needs a low end not above its high end, not " + low + " and " + high + ".");
		}
	}

	/** The interval of the given half width around a value. */
	public static Interval around(double centre, double halfWidth) {
		return new Interval(centre - halfWidth, centre + halfWidth);
	}

	/** Whether the value lies in it, ends included. */
	public boolean contains(double value) {
		return value >= low && value <= high;
	}

	/** Whether all of the other interval lies in this one, ends included. */
	public boolean contains(Interval other) {
		return other.low >= low && other.high <= high;
	}

	/** Whether all of it lies above the value, the value itself excluded. */
	public boolean isAbove(double value) {
		return low > value;
	}

	/** Whether all of it lies below the value, the value itself excluded. */
	public boolean isBelow(double value) {
		return high < value;
	}

	/** Half the distance of its ends. */
	public double halfWidth() {
		return (high - low) / 2;
	}
}
