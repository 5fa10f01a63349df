package org.flexwright.numerics;

/**
 * The difference of two means with its standard error.
 *
 * @param difference    first mean minus second
 * @param standardError its standard error, above 0
 * @param df            its degrees of freedom
 */
public record MeanDifference(double difference, double standardError, double df) {

	/** @throws IllegalArgumentException when the standard error or the degrees of freedom are not above 0 */
	public MeanDifference {
		Require.finite(difference, "difference");
		Require.positive(standardError, "standard error");
		Require.degreesOfFreedom(df);
	}

	/** Difference over standard error. */
	public double t() {
		return difference / standardError;
	}

	/** The chance of a t at least this far from zero when the means are equal. */
	public double p() {
		return StudentT.twoSided(t(), df);
	}

	/** The confidence interval of the difference. */
	public Interval interval(double level) {
		return Interval.around(difference, StudentT.factor(level, df) * standardError);
	}
}
