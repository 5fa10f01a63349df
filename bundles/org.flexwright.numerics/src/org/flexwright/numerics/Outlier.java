package org.flexwright.numerics;

/**
 * What an outlier test says. It only points: a value is never deleted for it.
 *
 * @param index     position of the value furthest out, from 0
 * @param value     that value
 * @param statistic the test statistic
 * @param critical  the critical value
 */
public record Outlier(int index, double value, double statistic, double critical) {

	/** Whether the value lies further out than the rest explains. */
	public boolean suspicious() {
		return statistic > critical;
	}
}
