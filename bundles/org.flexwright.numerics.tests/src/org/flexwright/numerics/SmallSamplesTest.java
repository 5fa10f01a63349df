package org.flexwright.numerics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmallSamplesTest {
	private static final double LEVEL = 0.95;

	/** Factors from an integration by other hands (SciPy quad and brentq of the same definition). */
	@ParameterizedTest
	@CsvSource({ "2, 0.95, 0.95, 36.51921", "3, 0.95, 0.95, 9.788752", "5, 0.95, 0.95, 5.076875", "10, 0.95, 0.95, 3.393429", "20, 0.95, 0.95, 2.760346", "43, 0.9, 0.99, 2.222825" })
	void toleranceFactors(int n, double share, double confidence, double k) {
		assertEquals(k, ToleranceInterval.factor(n, share, confidence), 2e-5 * k);
	}

	/** NIST/SEMATECH e-Handbook 7.2.6.3 (from memory): 43 values, 90 % with 99 % confidence, k = 2.217 by Howe's approximation. */
	@Test
	void theToleranceFactorIsNearHowes() {
		assertEquals(2.217, ToleranceInterval.factor(43, 0.9, 0.99), 0.006);
	}

	@Test
	void aToleranceIntervalHoldsTheShareAsOftenAsItSays() {
		Random random = new Random(5);
		double k = ToleranceInterval.factor(4, 0.9, 0.9);
		int runs = 4000;
		int held = 0;
		for (int i = 0; i < runs; i++) {
			double[] x = random.doubles(4).map(u -> random.nextGaussian()).toArray();
			double half = k * Descriptive.standardDeviation(x).orElseThrow();
			double mean = Descriptive.mean(x);
			held += Normal.cumulative(mean + half) - Normal.cumulative(mean - half) >= 0.9 ? 1 : 0;
		}
		assertEquals(0.9 * runs, held, 76); // four standard deviations of the count
		assertTrue(ToleranceInterval.of(new double[] { 1 }, 0.9, 0.9).isEmpty(), "one value has no spread");
	}

	/** Variances of the median of 3, 5 and 7 normal values: 0.4487, 0.2868, 0.2104 (tables of order statistics, from memory). */
	@Test
	void theMedianScattersMoreThanTheMean() {
		assertEquals(1, MedianSpread.factor(1));
		assertEquals(1, MedianSpread.factor(2));
		assertEquals(Math.sqrt(3 * 0.4487), MedianSpread.factor(3), 1e-4);
		assertEquals(Math.sqrt(5 * 0.2868), MedianSpread.factor(5), 1.5e-4);
		assertEquals(Math.sqrt(7 * 0.2104), MedianSpread.factor(7), 2e-4);
		assertEquals(1.0922, MedianSpread.factor(4), 1.5e-3); // simulation of two million by other hands: 1.0915
		assertEquals(1.1757, MedianSpread.factor(10), 1.5e-3); // the same: 1.1757
		assertTrue(MedianSpread.factor(59) < MedianSpread.factor(61));
		assertThrows(IllegalArgumentException.class, () -> MedianSpread.factor(0));
	}

	/** Three people, six applicants: W = 0.16 (Siegel 1956, from memory; sums of places 8, 14, 11, 11, 11, 8). */
	@Test
	void ordersOfSeveralPeople() {
		Concordance three = Concordance.of(new double[][] { { 1, 6, 3, 2, 5, 4 }, { 1, 5, 6, 4, 2, 3 }, { 6, 3, 2, 5, 4, 1 } }).orElseThrow();
		assertArrayEquals(new double[] { 8, 14, 11, 11, 11, 8 }, three.sums());
		assertEquals(0.1619, three.w(), 5e-5);
		assertTrue(three.exact());
		assertTrue(three.p() > 0.5);
		Concordance tied = Concordance.of(new double[][] { { 1, 2, 2, 4 }, { 1, 2, 3, 4 }, { 2, 1, 3, 3 }, { 1, 3, 2, 4 } }).orElseThrow();
		assertEquals(0.7697368421, tied.w(), 1e-9); // SciPy friedmanchisquare / (m (n - 1))
		assertEquals(70 / 6912.0, tied.p(), 1e-12); // all orders counted by other hands
		Concordance all = Concordance.of(new double[][] { { 1, 2, 3 }, { 1, 2, 3 }, { 1, 2, 3 } }).orElseThrow();
		assertEquals(1, all.w(), 1e-12);
		assertEquals(1 / 36.0, all.p(), 1e-12); // two of three people happen to agree with the third: (1/6)^2
	}

	@Test
	void agreementThatIsNone() {
		assertTrue(Concordance.of(new double[][] { { 1, 2, 3 } }).isEmpty(), "one person");
		assertTrue(Concordance.of(new double[][] { { 1 }, { 1 } }).isEmpty(), "one thing");
		assertTrue(Concordance.of(new double[][] { { 1, 1 }, { 1, 1 } }).isEmpty(), "all alike");
		Concordance opposite = Concordance.of(new double[][] { { 1, 2, 3, 4 }, { 4, 3, 2, 1 } }).orElseThrow();
		assertEquals(0, opposite.w(), 1e-12);
		assertEquals(1, opposite.p(), 1e-12);
		Random random = new Random(3);
		double[][] many = new double[9][];
		for (int i = 0; i < many.length; i++) {
			many[i] = random.doubles(8).toArray();
		}
		Concordance chance = Concordance.of(many).orElseThrow();
		assertFalse(chance.exact(), "eight things are too many to count out");
		assertTrue(chance.p() > 0.01 && chance.w() < 0.4);
	}

	@Test
	void intervalsOfAGaugeStudyCoverAsOftenAsTheySay() {
		Random random = new Random(8);
		int runs = 1200;
		int[] held = new int[5];
		for (int i = 0; i < runs; i++) {
			GaugeStudy study = GaugeStudy.of(drawn(random, 6, 4, 2, 3, 1, 0.7, 0.5), GaugeStudy.Pooling.NEVER).orElseThrow();
			held[0] += study.repeatabilityInterval(LEVEL).contains(0.25) ? 1 : 0;
			held[1] += study.operatorInterval(LEVEL).orElseThrow().contains(1) ? 1 : 0;
			held[2] += study.interactionInterval(LEVEL).orElseThrow().contains(0.49) ? 1 : 0;
			held[3] += study.partInterval(LEVEL).contains(9) ? 1 : 0;
			held[4] += study.gaugeInterval(LEVEL).contains(1.74) ? 1 : 0;
		}
		// four standard deviations of a count at 95 % are 2.5 %; the approximate ones may be a little wider
		for (int component = 0; component < held.length; component++) {
			double share = held[component] / (double) runs;
			assertTrue(share > 0.925 && share < 0.985, "component " + component + " of " + Arrays.toString(held));
		}
	}

	private static double[][][] drawn(Random random, int p, int o, int r, double part, double operator, double both, double error) {
		double[] operators = random.doubles(o).map(u -> operator * random.nextGaussian()).toArray();
		double[][][] readings = new double[p][o][r];
		for (double[][] ofPart : readings) {
			double own = part * random.nextGaussian();
			for (int j = 0; j < o; j++) {
				double cell = both * random.nextGaussian();
				for (int k = 0; k < r; k++) {
					ofPart[j][k] = own + operators[j] + cell + error * random.nextGaussian();
				}
			}
		}
		return readings;
	}
}
