package org.flexwright.numerics;

/**
 * Two one-sided tests for equivalence within a margin fixed beforehand (Schuirmann 1987). No significant difference is not
 * equivalence; this is.
 *
 * @param difference the difference tested
 * @param margin     the largest difference that does not matter, above 0
 * @param pLower     p against a difference at or below minus the margin
 * @param pUpper     p against a difference at or above the margin
 */
public record Tost(MeanDifference difference, double margin, double pLower, double pUpper) {

	/** Tests against plus and minus the margin. */
	public static Tost test(MeanDifference difference, double margin) {
		Require.positive(margin, "margin");
		double lower = (difference.difference() + margin) / difference.standardError();
		double upper = (difference.difference() - margin) / difference.standardError();
		return new Tost(difference, margin, StudentT.cumulative(-lower, difference.df()), StudentT.cumulative(upper, difference.df()));
	}

	/** Whether both tests reject: the interval at level 1 - 2 alpha lies inside the margin. */
	public boolean equivalent(double alpha) {
		return Math.max(pLower, pUpper) < Require.between0and1(alpha, "significance");
	}
}
