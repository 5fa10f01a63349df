package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntervalsTest {
	private static final double LEVEL = 0.95;
	private static final Interval TARGET = new Interval(39, 45);

	@Test
	void threePartsAgainstATarget() {
		assertTrue(TARGET.contains(interval(41, 42, 43)), "in");
		Interval edge = interval(45, 46, 47);
		assertFalse(TARGET.contains(edge) || edge.isAbove(45) || edge.isBelow(39), "cannot tell");
		assertTrue(interval(50, 51, 52).isAbove(45), "above");
		assertTrue(Intervals.meanT(new double[] { 42 }, LEVEL).isEmpty(), "one part has no spread");
	}

	@Test
	void theIntervalOfAMean() {
		Interval interval = interval(41, 42, 43);
		assertEquals(42 - 4.3026527 / Math.sqrt(3), interval.low(), 1e-6);
		assertEquals(42 + 4.3026527 / Math.sqrt(3), interval.high(), 1e-6);
		assertEquals(4.3026527 / Math.sqrt(3), interval.halfWidth(), 1e-6);
		assertEquals(1.959964, Intervals.meanKnownSpread(0, 1, 1, Double.POSITIVE_INFINITY, LEVEL).high(), 1e-6);
		assertEquals(1.959964 / 2, Intervals.meanKnownSpread(0, 4, 1, 1e9, LEVEL).high(), 1e-6);
	}

	@Test
	void theIntervalCoversAsOftenAsItSays() {
		long seed = 11;
		Random random = new Random(seed);
		int runs = 4000;
		int covered = 0;
		for (int i = 0; i < runs; i++) {
			double[] x = { random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), random.nextGaussian() };
			covered += interval(x).contains(0) ? 1 : 0;
		}
		// four standard deviations of a count at 95 %: 4 sqrt(4000 * 0.95 * 0.05) = 55
		assertEquals(0.95 * runs, covered, 55, "seed " + seed);
	}

	@ParameterizedTest
	@CsvSource({ "4, 5, 0.2836, 0.9949", "0, 5, 0, 0.5218", "5, 5, 0.4782, 1", "1, 5, 0.0051, 0.7164", "0, 1, 0, 0.975", "10, 20, 0.2720, 0.7280" })
	void clopperPearson(int k, int n, double low, double high) {
		Interval interval = Intervals.clopperPearson(k, n, LEVEL);
		assertEquals(low, interval.low(), 5e-5);
		assertEquals(high, interval.high(), 5e-5);
	}

	@Test
	void clopperPearsonEndsAreBinomialTails() {
		Interval interval = Intervals.clopperPearson(3, 7, LEVEL);
		assertEquals(0.025, 1 - binomialUpTo(2, 7, interval.low()), 1e-9);
		assertEquals(0.025, binomialUpTo(3, 7, interval.high()), 1e-9);
	}

	@Test
	void morePartsSettleIt() {
		// mean 44, spread 1, target up to 45: t(0.975, n-1) / sqrt(n) must be at most 1
		assertEquals(OptionalInt.of(7), MoreParts.needed(44, 1, 39, 45, LEVEL)); // n 6: 2.5706/2.4495 = 1.049, n 7: 2.4469/2.6458 = 0.925
		assertEquals(OptionalInt.of(7), MoreParts.needed(46, 1, 39, 45, LEVEL), "as far outside");
		assertEquals(OptionalInt.of(7), MoreParts.needed(38, 1, 39, 45, LEVEL), "below");
		assertEquals(OptionalInt.of(3), MoreParts.needed(42, 0, 39, 45, LEVEL), "three are judged at least");
		assertEquals(OptionalInt.of(7), MoreParts.needed(44, 1, Double.NEGATIVE_INFINITY, 45, LEVEL), "one-sided target");
		assertTrue(MoreParts.needed(45, 1, 39, 45, LEVEL).isEmpty(), "on the edge");
		assertTrue(MoreParts.needed(45, 0, 39, 45, LEVEL).isEmpty(), "on the edge without spread");
		assertTrue(MoreParts.needed(44.99, 1, 39, 45, LEVEL).isEmpty(), "more than a thousand");
	}

	@Test
	void oneLessWouldNotSettleIt() {
		long seed = 3;
		Random random = new Random(seed);
		for (int i = 0; i < 300; i++) {
			double mean = 37 + 10 * random.nextDouble();
			double sd = 0.2 + random.nextDouble();
			OptionalInt needed = MoreParts.needed(mean, sd, 39, 45, LEVEL);
			if (needed.isPresent()) {
				assertTrue(settled(mean, sd, needed.getAsInt()), "seed " + seed);
				assertFalse(needed.getAsInt() > 3 && settled(mean, sd, needed.getAsInt() - 1), "seed " + seed);
			}
		}
	}

	@Test
	void refusesWhatCannotBe() {
		assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1));
		assertThrows(IllegalArgumentException.class, () -> new Interval(Double.NaN, 1));
		assertThrows(IllegalArgumentException.class, () -> Intervals.meanT(new double[] { 1, 2 }, 95));
		assertThrows(IllegalArgumentException.class, () -> Intervals.meanT(new double[] { 1, Double.NaN }, LEVEL));
		assertThrows(IllegalArgumentException.class, () -> Intervals.meanKnownSpread(1, 0, 1, 5, LEVEL));
		assertThrows(IllegalArgumentException.class, () -> Intervals.meanKnownSpread(1, 3, -1, 5, LEVEL));
		assertThrows(IllegalArgumentException.class, () -> Intervals.meanKnownSpread(1, 3, 1, 0, LEVEL));
		assertThrows(IllegalArgumentException.class, () -> Intervals.clopperPearson(6, 5, LEVEL));
		assertThrows(IllegalArgumentException.class, () -> Intervals.clopperPearson(0, 0, LEVEL));
		assertThrows(IllegalArgumentException.class, () -> Intervals.medianMinMaxCoverage(0));
		assertThrows(IllegalArgumentException.class, () -> MoreParts.needed(1, 1, 5, 4, LEVEL));
		assertThrows(IllegalArgumentException.class, () -> StudentT.quantile(1, 5));
		assertEquals("The level must lie between 0 and 1, not 95.0.",
				assertThrows(IllegalArgumentException.class, () -> Intervals.clopperPearson(1, 2, 95)).getMessage());
	}

	private static Interval interval(double... x) {
		return Intervals.meanT(x, LEVEL).orElseThrow();
	}

	private static boolean settled(double mean, double sd, int n) {
		Interval interval = Intervals.meanKnownSpread(mean, n, sd, n - 1.0, LEVEL);
		return TARGET.contains(interval) || interval.isAbove(45) || interval.isBelow(39);
	}

	private static double binomialUpTo(int k, int n, double p) {
		double sum = 0;
		double choose = 1;
		for (int i = 0; i <= k; i++) {
			sum += choose * Math.pow(p, i) * Math.pow(1 - p, n - i);
			choose = choose * (n - i) / (i + 1);
		}
		return sum;
	}
}
