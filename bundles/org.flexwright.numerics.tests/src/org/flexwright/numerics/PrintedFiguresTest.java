package org.flexwright.numerics;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.flexwright.testsupport.CheckValues.expectSeries;
import static org.flexwright.testsupport.CheckValues.expectText;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.flexwright.numerics.Uncertainty.Contribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The figures of section 7 of the testing sheet, but for the gauge study, which has a test of its own. */
class PrintedFiguresTest {
	private static final String T_TABLE = "Student t tables";
	private static final String GRUBBS = "NIST/SEMATECH e-Handbook 1.3.5.17, formula; recomputed";
	private static final String DIXON = "Rorabacher 1991, Anal. Chem. 63, 139, two-sided";
	private static final String GUM = "JCGM 100:2008 (GUM), Table 1";
	private static final String STRD = "NIST StRD, certified";
	private static final String TWO_SAMPLE = "NIST/SEMATECH e-Handbook 1.3.5.3";
	private static final String TOST = "Schuirmann 1987; statistics-manual example kept in an open test suite; recomputed";
	private static final double[] GRUBBS_DATA = { 199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57 };
	private static final double[] DIXON_DATA = { .189, .167, .187, .183, .186, .182, .181, .184, .181, .177 };
	private static final double[] GUM_DATA = { 96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.20,
			101.57, 101.84, 102.36, 102.72 };

	@Test
	void medianCoverage() {
		double[] percent = IntStream.of(3, 5, 6).mapToDouble(n -> 100 * Intervals.medianMinMaxCoverage(n)).toArray();
		expectSeries("testing/7.median", "derived: 1 - 2^(1-n)", percent);
	}

	@ParameterizedTest
	@ValueSource(ints = { 2, 4, 5, 9 })
	void studentT(int df) {
		expect("testing/7.t." + df, StudentT.quantile(0.975, df), T_TABLE);
	}

	@Test
	void grubbsTables() {
		expectSeries("testing/7.G1", GRUBBS, IntStream.rangeClosed(3, 10).mapToDouble(n -> Grubbs.critical(n, 0.05, Sides.ONE)).toArray());
		expectSeries("testing/7.G2", GRUBBS, IntStream.rangeClosed(3, 10).mapToDouble(n -> Grubbs.critical(n, 0.05, Sides.TWO)).toArray());
	}

	@Test
	void grubbsExample() {
		Outlier outlier = Grubbs.test(GRUBBS_DATA, 0.05, Sides.ONE).orElseThrow();
		expect("testing/7.grubbs", outlier.statistic(), "NIST/SEMATECH e-Handbook 1.3.5.17, example");
		expect("testing/7.grubbs.crit", outlier.critical(), "NIST/SEMATECH e-Handbook 1.3.5.17, example");
		assertTrue(outlier.suspicious());
		assertEquals(245.57, outlier.value());
	}

	@ParameterizedTest
	@ValueSource(ints = { 3, 4, 5, 6, 7, 8, 9, 10 })
	void dixonTable(int n) {
		expect("testing/7.Q95." + n, Dixon.critical(n, Dixon.Confidence.P95), DIXON);
	}

	@Test
	void dixonExample() {
		Outlier at95 = Dixon.test(DIXON_DATA, Dixon.Confidence.P95).orElseThrow();
		Outlier at90 = Dixon.test(DIXON_DATA, Dixon.Confidence.P90).orElseThrow();
		expect("testing/7.dixon", at95.statistic(), DIXON);
		expect("testing/7.Q90.10", at90.critical(), DIXON);
		assertEquals(.167, at95.value());
		assertFalse(at95.suspicious());
		assertTrue(at90.suspicious());
	}

	@Test
	void dixonComputed() {
		expect("testing/7.Q95.6.exact", Dixon.computedCritical(6, 0.05), "derived: quantile of r10 for normal values");
	}

	@Test
	void gumTable() {
		expectText("testing/7.gum.n", GUM_DATA.length + " readings", GUM);
		expect("testing/7.gum.mean", Descriptive.mean(GUM_DATA), GUM);
		expect("testing/7.gum.s", Descriptive.standardDeviation(GUM_DATA).orElseThrow(), GUM);
		expect("testing/7.gum.u", Uncertainty.ofMean(GUM_DATA).orElseThrow(), GUM);
	}

	@Test
	void shoreReadings() {
		String derived = "derived: GUM rules on invented readings";
		double[] x = { 61, 60.5, 62, 61, 60 };
		expect("testing/7.shore.med", Descriptive.median(x), derived);
		expect("testing/7.shore.mean", Descriptive.mean(x), derived);
		expect("testing/7.shore.s", Descriptive.standardDeviation(x).orElseThrow(), derived);
		Uncertainty combined = Uncertainty.combine(List.of(Contribution.of("repeats", Uncertainty.ofMean(x).orElseThrow(), x.length - 1),
				Contribution.of("display", Uncertainty.resolution(0.5), Double.POSITIVE_INFINITY),
				Contribution.of("instrument", Uncertainty.rectangular(1), Double.POSITIVE_INFINITY)));
		expect("testing/7.shore.uc", combined.standard(), derived);
	}

	@Test
	void numAcc1() {
		double[] x = { 10000001, 10000003, 10000002 };
		String why = "whole numbers far below 2^53: nothing is rounded";
		expect("testing/7.NumAcc1.mean", Descriptive.mean(x), 0, why, STRD);
		expect("testing/7.NumAcc1.s", Descriptive.standardDeviation(x).orElseThrow(), 0, why, STRD);
	}

	@Test
	void numAcc4() {
		double[] x = new double[1001];
		x[0] = 10000000.2;
		for (int i = 1; i < x.length; i += 2) {
			x[i] = 10000000.1;
			x[i + 1] = 10000000.3;
		}
		expect("testing/7.NumAcc4.mean", Descriptive.mean(x), 2e-9, "one step of a double at 1e7 is 1.9e-9", STRD + ", from memory");
		expect("testing/7.NumAcc4.s", Descriptive.standardDeviation(x).orElseThrow(), 1e-9, "the data themselves are off by up to 1e-9 as doubles", STRD + ", from memory");
	}

	@Test
	void mavro() {
		int[] counts = { 180, 170, 180, 190, 180, 170, 150, 140, 150, 150, 170, 180, 180, 190, 190, 210, 200, 160, 140, 130, 130, 150, 150, 160, 150, 140, 130, 140, 150, 140,
				150, 160, 150, 160, 190, 200, 200, 210, 220, 230, 240, 250, 270, 260, 260, 260, 270, 260, 250, 240 };
		double[] x = IntStream.of(counts).mapToDouble(n -> 2 + n * 1e-5).toArray();
		expectText("testing/7.Mavro.n", x.length + " values", STRD);
		expect("testing/7.Mavro.mean", Descriptive.mean(x), 1e-15, "certified without rounding; two steps of a double", STRD);
		expect("testing/7.Mavro.s", Descriptive.standardDeviation(x).orElseThrow(), 1e-16,
				"the data are off by 2e-16 each as doubles, which moves s by less than 1e-16: 12 digits agree", STRD);
	}

	@Test
	void siRstv() {
		double[][] groups = { { 196.3052, 196.1240, 196.1890, 196.2569, 196.3403 }, { 196.3042, 196.3825, 196.1669, 196.3257, 196.0422 },
				{ 196.1303, 196.2005, 196.2889, 196.0343, 196.1811 }, { 196.2795, 196.1748, 196.1494, 196.1485, 195.9885 },
				{ 196.2119, 196.1051, 196.1850, 196.0052, 196.2090 } };
		OneWayAnova anova = OneWayAnova.of(groups).orElseThrow();
		expectText("testing/7.SiRstv.n", (anova.dfBetween() + 1) + " x " + (anova.dfWithin() / (anova.dfBetween() + 1) + 1), STRD);
		String why = "the data are off by up to 1.4e-14 each as doubles";
		expect("testing/7.SiRstv.SSb", anova.ssBetween(), 1e-12, why, STRD);
		expect("testing/7.SiRstv.SSw", anova.ssWithin(), 1e-12, why, STRD);
		expect("testing/7.SiRstv.F", anova.f(), 1e-11, why, STRD);
	}

	@Test
	void welchAndPooled() {
		Sample x = new Sample(249, 20.14458, 6.41470);
		Sample y = new Sample(79, 30.48101, 6.10771);
		MeanDifference welch = Welch.test(x, y).orElseThrow();
		MeanDifference pooled = PooledT.test(x, y).orElseThrow();
		expect("testing/7.welch.t", welch.t(), TWO_SAMPLE);
		expect("testing/7.welch.df", welch.df(), TWO_SAMPLE);
		expect("testing/7.pooled.t", pooled.t(), TWO_SAMPLE);
		expect("testing/7.pooled.df", pooled.df(), 0, "whole number", TWO_SAMPLE);
	}

	@Test
	void tost() {
		double[] a = { 452, 874, 554, 447, 356, 754, 558, 574, 664, 682, 547, 435, 245 };
		double[] b = { 546, 547, 774, 465, 459, 665, 467, 365, 589, 534, 456, 651, 654, 665, 546, 537 };
		expectText("testing/7.tost.n", Sample.of(a).orElseThrow().n() + " and " + Sample.of(b).orElseThrow().n(), TOST);
		Tost welch = Tost.test(Welch.test(a, b).orElseThrow(), 110);
		expectSeries("testing/7.tost.welch", TOST, welch.difference().standardError(), welch.difference().df(), welch.pLower(), welch.pUpper());
		Tost pooled = Tost.test(PooledT.test(a, b).orElseThrow(), 110);
		expectSeries("testing/7.tost.pooled", TOST, pooled.difference().standardError(), pooled.difference().df(), pooled.pLower(), pooled.pUpper());
		assertTrue(welch.equivalent(0.05));
		assertFalse(welch.equivalent(0.03));
	}
}
