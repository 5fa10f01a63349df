package org.flexwright.numerics;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much of the spread of readings comes from the gauge and who holds it, and how much from the parts: crossed analysis of
 * variance (AIAG MSA, 4th ed. 2010). Variances in the square of the unit read. With one operator it is a study of
 * repeatability alone, and the reproducibility is not known rather than zero.
 *
 * @param anova            the sums of squares
 * @param interactionF     ratio of interaction to repeats; empty when there is one operator or no spread between repeats
 * @param interactionP     its p
 * @param pooled           whether the interaction was taken into the error, its p being above 0.25
 * @param errorMeanSquare  mean square of the error, pooled or not
 * @param errorDf          its degrees of freedom
 * @param repeatability    variance of the repeats
 * @param operatorVariance variance between operators, 0 or more
 * @param interaction      variance of the interaction, 0 when pooled
 * @param part             variance between parts, 0 or more
 */
public record GaugeStudy(CrossedAnova anova, OptionalDouble interactionF, OptionalDouble interactionP, boolean pooled, double errorMeanSquare, int errorDf,
		double repeatability, double operatorVariance, double interaction, double part) {

	/** Above this p the interaction is pooled into the error. */
	public static final double POOLING_P = 0.25;
	private static final double CATEGORIES_FACTOR = 1.41;

	/** How the interaction is treated. */
	public enum Pooling {
		/** Pool it when its p is above 0.25. */
		BY_P,
		/** Keep it apart in any case. */
		NEVER
	}

	/**
	 * Analyses the readings with the pooling rule.
	 *
	 * @param readings by part, operator and repeat; one operator is allowed
	 * @return empty for fewer than two parts or fewer than two repeats
	 */
	public static Optional<GaugeStudy> of(double[][][] readings) {
		return of(readings, Pooling.BY_P);
	}

	/** The same with the treatment of the interaction given. */
	public static Optional<GaugeStudy> of(double[][][] readings, Pooling pooling) {
		return CrossedAnova.of(readings).map(a -> a.operators() == 1 ? repeatabilityOnly(a) : crossed(a, pooling));
	}

	/** A study by one operator: readings by part and repeat. */
	public static Optional<GaugeStudy> ofOneOperator(double[][] readings) {
		double[][][] crossed = new double[readings.length][][];
		for (int i = 0; i < readings.length; i++) {
			crossed[i] = new double[][] { readings[i] };
		}
		return of(crossed);
	}

	private static GaugeStudy repeatabilityOnly(CrossedAnova a) {
		double mse = a.ssError() / a.dfError();
		double part = Math.max(0, (a.ssPart() / a.dfPart() - mse) / a.repeats());
		return new GaugeStudy(a, OptionalDouble.empty(), OptionalDouble.empty(), false, mse, a.dfError(), mse, 0, 0, part);
	}

	private static GaugeStudy crossed(CrossedAnova a, Pooling pooling) {
		double mse = a.ssError() / a.dfError();
		double msInteraction = a.ssInteraction() / a.dfInteraction();
		OptionalDouble f = mse == 0 ? OptionalDouble.empty() : OptionalDouble.of(msInteraction / mse);
		OptionalDouble p = f.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(FisherF.upper(f.getAsDouble(), a.dfInteraction(), a.dfError()));
		boolean pool = pooling == Pooling.BY_P && p.orElse(0) > POOLING_P;
		int df = pool ? a.dfError() + a.dfInteraction() : a.dfError();
		double error = pool ? (a.ssError() + a.ssInteraction()) / df : mse;
		double below = pool ? error : msInteraction;
		double interaction = pool ? 0 : Math.max(0, (msInteraction - mse) / a.repeats());
		double operator = Math.max(0, (a.ssOperator() / a.dfOperator() - below) / (a.parts() * a.repeats()));
		double part = Math.max(0, (a.ssPart() / a.dfPart() - below) / (a.operators() * a.repeats()));
		return new GaugeStudy(a, f, p, pool, error, df, error, operator, interaction, part);
	}

	/** The interval of the variance of the repeats; exact for normal readings. */
	public Interval repeatabilityInterval(double level) {
		return VarianceIntervals.sum(level, new VarianceIntervals.Term(1, errorMeanSquare, errorDf));
	}

	/** The interval of the variance between operators; empty for one operator. With few operators it is very wide. */
	public Optional<Interval> operatorInterval(double level) {
		double factor = 1.0 / (anova.parts() * anova.repeats());
		return repeatabilityOnly() ? Optional.empty()
				: Optional.of(VarianceIntervals.difference(level, new VarianceIntervals.Term(factor, anova.ssOperator() / anova.dfOperator(), anova.dfOperator()), below(factor)));
	}

	/** The interval of the variance of the interaction; empty when there is none or it is pooled. */
	public Optional<Interval> interactionInterval(double level) {
		double factor = 1.0 / anova.repeats();
		return repeatabilityOnly() || pooled ? Optional.empty()
				: Optional.of(VarianceIntervals.difference(level, below(factor), new VarianceIntervals.Term(factor, errorMeanSquare, errorDf)));
	}

	/** The interval of the variance between parts. */
	public Interval partInterval(double level) {
		double factor = 1.0 / (anova.operators() * anova.repeats());
		return VarianceIntervals.difference(level, new VarianceIntervals.Term(factor, anova.ssPart() / anova.dfPart(), anova.dfPart()), below(factor));
	}

	/** The interval of the variance of the gauge in all. */
	public Interval gaugeInterval(double level) {
		if (repeatabilityOnly()) {
			return repeatabilityInterval(level);
		}
		double each = 1.0 / (anova.parts() * anova.repeats());
		VarianceIntervals.Term operators = new VarianceIntervals.Term(each, anova.ssOperator() / anova.dfOperator(), anova.dfOperator());
		return pooled ? VarianceIntervals.sum(level, operators, new VarianceIntervals.Term(1 - each, errorMeanSquare, errorDf))
				: VarianceIntervals.sum(level, operators, below((1 - 1.0 / anova.parts()) / anova.repeats()), new VarianceIntervals.Term(1 - 1.0 / anova.repeats(), errorMeanSquare,
						errorDf));
	}

	/** What parts and operators are compared with: the interaction, or the error where it is pooled or there is one operator. */
	private VarianceIntervals.Term below(double factor) {
		boolean error = pooled || repeatabilityOnly();
		return error ? new VarianceIntervals.Term(factor, errorMeanSquare, errorDf)
				: new VarianceIntervals.Term(factor, anova.ssInteraction() / anova.dfInteraction(), anova.dfInteraction());
	}

	/** Whether one operator made all readings: nothing is known of reproducibility then. */
	public boolean repeatabilityOnly() {
		return anova.operators() == 1;
	}

	/** Variance between operators with the interaction. */
	public double reproducibility() {
		return operatorVariance + interaction;
	}

	/** Variance of the gauge in all: repeatability and reproducibility. */
	public double gauge() {
		return repeatability + reproducibility();
	}

	/** Variance in all. */
	public double total() {
		return gauge() + part;
	}

	/** The gauge's share of the variance in per cent; empty when nothing varies. */
	public OptionalDouble contributionPercent() {
		return total() == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * gauge() / total());
	}

	/** The gauge's share of the standard deviation in per cent; empty when nothing varies. */
	public OptionalDouble studyPercent() {
		return total() == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * Math.sqrt(gauge() / total()));
	}

	/** How many kinds of part the gauge can tell apart: floor of 1.41 part over gauge; empty when the gauge shows no spread. */
	public OptionalDouble distinctCategories() {
		return gauge() == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.floor(CATEGORIES_FACTOR * Math.sqrt(part / gauge())));
	}
}
