package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.flexwright.numerics.Uncertainty.Contribution;
import org.junit.jupiter.api.Test;

class ComparisonTest {
	private static final double[] X = { 41, 42, 43, 44 };
	private static final double[] Y = { 45, 47, 46 };

	@Test
	void summaryAndValuesAgree() {
		MeanDifference fromValues = Welch.test(X, Y).orElseThrow();
		MeanDifference fromSummary = Welch.test(Sample.of(X).orElseThrow(), Sample.of(Y).orElseThrow()).orElseThrow();
		assertEquals(fromValues, fromSummary);
		assertEquals(-3.5, fromValues.difference(), 1e-12);
		assertTrue(fromValues.p() < 0.05);
		assertFalse(fromValues.interval(0.95).contains(0));
	}

	@Test
	void equivalenceIsTheNarrowerIntervalInsideTheMargin() {
		long seed = 5;
		Random random = new Random(seed);
		int equivalent = 0;
		for (int i = 0; i < 500; i++) {
			MeanDifference difference = new MeanDifference(random.nextGaussian(), 0.1 + random.nextDouble(), 2 + random.nextInt(20));
			boolean inside = new Interval(-2, 2).contains(difference.interval(0.90));
			assertEquals(inside, Tost.test(difference, 2).equivalent(0.05), "seed " + seed);
			equivalent += inside ? 1 : 0;
		}
		assertTrue(equivalent > 50 && equivalent < 450, "both outcomes were tried: " + equivalent);
	}

	@Test
	void twoGroupsByAnovaAreThePooledTest() {
		OneWayAnova anova = OneWayAnova.of(new double[][] { X, Y }).orElseThrow();
		MeanDifference pooled = PooledT.test(X, Y).orElseThrow();
		assertEquals(pooled.t() * pooled.t(), anova.f(), 1e-10);
		assertEquals(pooled.p(), anova.p(), 1e-10);
		assertEquals(anova.f(), anova.msBetween() / anova.msWithin(), 1e-12);
	}

	@Test
	void fDistribution() {
		assertEquals(0.05, FisherF.upper(FisherF.quantile(0.95, 3, 12), 3, 12), 1e-9);
		assertEquals(3.4903, FisherF.quantile(0.95, 3, 12), 5e-5); // F tables
		assertEquals(1, FisherF.upper(0, 3, 12));
		// two degrees of freedom above the line have the closed form (1 + 2 f / df2)^(-df2 / 2)
		double small = Math.pow(1 + 2 * 1e4 / 10, -5);
		assertEquals(small, FisherF.upper(1e4, 2, 10), 1e-10 * small);
	}

	@Test
	void uncertaintyOfAProduct() {
		// force over width and thickness: relative uncertainties add in squares
		Uncertainty u = Uncertainty.combine(List.of(new Contribution("force", 1 / 12.0, 0.3, 4), new Contribution("width", -3.75 / 6, 0.02, Double.POSITIVE_INFINITY)));
		assertEquals(Math.hypot(0.025, 0.0125), u.standard(), 1e-15);
		assertEquals(Math.pow(u.standard(), 4) / (Math.pow(0.025, 4) / 4), u.effectiveDf(), 1e-10);
		assertEquals(StudentT.quantile(0.975, u.effectiveDf()) * u.standard(), u.expanded(0.95), 1e-15);
		Uncertainty known = Uncertainty.combine(List.of(Contribution.of("display", Uncertainty.resolution(1), Double.POSITIVE_INFINITY)));
		assertEquals(Double.POSITIVE_INFINITY, known.effectiveDf());
		assertEquals(1.959964 / Math.sqrt(12), known.expanded(0.95), 1e-6);
	}

	@Test
	void tooLittleIsNoComparison() {
		double[] one = { 1 };
		double[] same = { 2, 2 };
		assertTrue(Welch.test(X, one).isEmpty());
		assertTrue(PooledT.test(one, X).isEmpty());
		assertTrue(Welch.test(same, same).isEmpty());
		assertTrue(PooledT.test(same, same).isEmpty());
		assertTrue(Sample.of().isEmpty());
		assertTrue(Uncertainty.ofMean(1).isEmpty());
		assertTrue(OneWayAnova.of(new double[][] { X }).isEmpty());
		assertTrue(OneWayAnova.of(new double[][] { one, { 2 } }).isEmpty());
		assertTrue(OneWayAnova.of(new double[][] { same, { 3, 3 } }).isEmpty());
	}

	@Test
	void refusesWhatCannotBe() {
		assertThrows(IllegalArgumentException.class, () -> new Sample(1, 0, 1));
		assertThrows(IllegalArgumentException.class, () -> new Sample(3, 0, -1));
		assertThrows(IllegalArgumentException.class, () -> new MeanDifference(1, 0, 3));
		assertThrows(IllegalArgumentException.class, () -> Tost.test(new MeanDifference(1, 1, 3), 0));
		assertThrows(IllegalArgumentException.class, () -> Uncertainty.combine(List.of()));
		assertThrows(IllegalArgumentException.class, () -> Uncertainty.rectangular(-1));
		assertThrows(IllegalArgumentException.class, () -> Contribution.of("x", Double.NaN, 1));
		assertThrows(IllegalArgumentException.class, () -> OneWayAnova.of(new double[][] { X, {} }));
		assertThrows(IllegalArgumentException.class, () -> FisherF.upper(-1, 2, 2));
	}
}
