package org.flexwright.numerics;

/** Whether a test looks for a difference in one direction or in both. */
public enum Sides {
	/** One direction, chosen before looking. */
	ONE,
	/** Both directions. */
	TWO
}
