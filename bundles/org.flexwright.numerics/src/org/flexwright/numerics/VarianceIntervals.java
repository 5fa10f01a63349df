package org.flexwright.numerics;

/**
 * Intervals of variances made from mean squares: chi-square for one, and for sums and differences the modified large-sample method (sums:
 * Graybill and Wang 1980; differences: Ting and others 1990; for gauge studies Burdick, Borror and Montgomery 2005; from memory,
 * checked by simulation). Lower ends below 0 are 0.
 */
public final class VarianceIntervals {
	private VarianceIntervals() {
	}

	/**
	 * A term of a sum.
	 *
	 * @param factor     what the mean square is multiplied by, from 0 up
	 * @param meanSquare from 0 up
	 * @param df         its degrees of freedom, above 0
	 */
	public record Term(double factor, double meanSquare, double df) {
		/** @throws IllegalArgumentException when a figure is impossible */
		public Term {
			Require.notNegative(factor, "factor");
			Require.notNegative(meanSquare, "mean square");
			Require.positive(df, "degrees of freedom");
		}

		double value() {
			return factor * meanSquare;
		}

		/** Share of itself by which its own interval reaches down. */
		double down(double tail) {
			return 1 - df / ChiSquare.quantile(1 - tail, df);
		}

		/** Share of itself by which its own interval reaches up. */
		double up(double tail) {
			return df / ChiSquare.quantile(tail, df) - 1;
		}
	}

	/** The interval of a sum of terms; of one term it is exact. */
	public static Interval sum(double level, Term... terms) {
		double tail = (1 - Require.between0and1(level, "level")) / 2;
		double sum = 0;
		double down = 0;
		double up = 0;
		for (Term term : terms) {
			sum += term.value();
			down += square(term.down(tail) * term.value());
			up += square(term.up(tail) * term.value());
		}
		return new Interval(Math.max(0, sum - Math.sqrt(down)), sum + Math.sqrt(up));
	}

	/** The interval of one term less another. */
	public static Interval difference(double level, Term plus, Term minus) {
		double tail = (1 - Require.between0and1(level, "level")) / 2;
		double difference = plus.value() - minus.value();
		double both = plus.value() * minus.value();
		double f = FisherF.quantile(1 - tail, plus.df(), minus.df());
		double crossDown = (square(f - 1) - square(plus.down(tail) * f) - square(minus.up(tail))) / f;
		double down = square(plus.down(tail) * plus.value()) + square(minus.up(tail) * minus.value()) + crossDown * both;
		double g = FisherF.quantile(tail, plus.df(), minus.df());
		double crossUp = (square(1 - g) - square(plus.up(tail) * g) - square(minus.down(tail))) / g;
		double up = square(plus.up(tail) * plus.value()) + square(minus.down(tail) * minus.value()) + crossUp * both;
		double high = Math.max(0, difference + Math.sqrt(Math.max(0, up)));
		return new Interval(Math.min(high, Math.max(0, difference - Math.sqrt(Math.max(0, down)))), high);
	}

	private static double square(double x) {
		return x * x;
	}
}
