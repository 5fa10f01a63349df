package org.flexwright.numerics;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.flexwright.testsupport.CheckValues.expectSeries;
import static org.flexwright.testsupport.CheckValues.expectText;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class GaugeStudyTest {
	private static final String AIAG = "AIAG MSA, 4th ed. 2010, gauge study example by analysis of variance";
	/** Rows are parts; columns are operator A three times, B three times, C three times. */
	private static final double[][] AIAG_ROWS = { { .29, .41, .64, .08, .25, .07, .04, -.11, -.15 }, { -.56, -.68, -.58, -.47, -1.22, -.68, -1.38, -1.13, -.96 },
			{ 1.34, 1.17, 1.27, 1.19, .94, 1.34, .88, 1.09, .67 }, { .47, .50, .64, .01, 1.03, .20, .14, .20, .11 },
			{ -.80, -.92, -.84, -.56, -1.20, -1.28, -1.46, -1.07, -1.45 }, { .02, -.11, -.21, -.20, .22, .06, -.29, -.67, -.49 },
			{ .59, .75, .66, .47, .55, .83, .02, .01, .21 }, { -.31, -.20, -.17, -.63, .08, -.34, -.46, -.56, -.49 },
			{ 2.26, 1.99, 2.01, 1.80, 2.12, 2.19, 1.77, 1.45, 1.87 }, { -1.36, -1.25, -1.31, -1.68, -1.62, -1.50, -1.49, -1.77, -2.16 } };

	@Test
	void agreesWithThePublishedExample() {
		GaugeStudy study = GaugeStudy.of(byOperator(3)).orElseThrow();
		CrossedAnova a = study.anova();
		expectText("testing/7.aiag.n", a.parts() + " x " + a.operators() * a.repeats(), AIAG);
		expectSeries("testing/7.aiag.SS", AIAG, a.ssPart(), a.ssOperator(), a.ssInteraction(), a.ssError());
		expect("testing/7.aiag.F", study.interactionF().orElseThrow(), AIAG);
		expect("testing/7.aiag.p", study.interactionP().orElseThrow(), AIAG);
		assertTrue(study.pooled());
		expect("testing/7.aiag.MSEpool", study.errorMeanSquare(), AIAG);
		expect("testing/7.aiag.df", study.errorDf(), 0, "whole number", AIAG);
		expect("testing/7.aiag.repro", study.reproducibility(), AIAG);
		expect("testing/7.aiag.GRR", study.gauge(), AIAG);
		expect("testing/7.aiag.part", study.part(), AIAG);
		expect("testing/7.aiag.contrib", study.contributionPercent().orElseThrow(), AIAG);
		expect("testing/7.aiag.study", study.studyPercent().orElseThrow(), AIAG);
		expect("testing/7.aiag.ndc", study.distinctCategories().orElseThrow(), 0, "whole number", AIAG);
	}

	@Test
	void keepsTheInteractionWhenToldTo() {
		GaugeStudy study = GaugeStudy.of(byOperator(3), GaugeStudy.Pooling.NEVER).orElseThrow();
		expect("testing/7.aiag.unpooled", study.gauge(), "derived from the same data");
		assertFalse(study.pooled());
		assertEquals(60, study.errorDf());
	}

	@Test
	void oneOperatorIsRepeatabilityAlone() {
		double[][] readings = { { 40, 41 }, { 50, 51 }, { 60, 61 } };
		GaugeStudy study = GaugeStudy.ofOneOperator(readings).orElseThrow();
		assertTrue(study.repeatabilityOnly());
		assertEquals(0.5, study.repeatability(), 1e-12);
		assertEquals(0, study.reproducibility());
		assertEquals((200 - 0.5) / 2, study.part(), 1e-10); // mean square of the parts 2 * 100
		assertTrue(study.interactionF().isEmpty());
		assertEquals(19, study.distinctCategories().orElseThrow()); // 1.41 * sqrt(99.75 / 0.5) = 19.9
	}

	@Test
	void aSignificantInteractionIsNotPooled() {
		double[][][] readings = { { { 10, 10.1 }, { 12, 12.1 } }, { { 12, 12.1 }, { 10, 10.1 } }, { { 11, 11.1 }, { 11, 11.1 } } };
		GaugeStudy study = GaugeStudy.of(readings).orElseThrow();
		assertFalse(study.pooled());
		assertTrue(study.interactionP().orElseThrow() < 0.001);
		assertTrue(study.interaction() > 0.5);
		assertEquals(0, study.part()); // a negative estimate is shown as none
	}

	@Test
	void tooLittleIsNoStudy() {
		assertTrue(GaugeStudy.of(new double[][][] { { { 1, 2 } } }).isEmpty(), "one part");
		assertTrue(GaugeStudy.of(new double[][][] { { { 1 }, { 2 } }, { { 1 }, { 3 } } }).isEmpty(), "no repeats");
		assertTrue(GaugeStudy.of(new double[0][][]).isEmpty(), "nothing");
		assertThrows(IllegalArgumentException.class, () -> GaugeStudy.of(new double[][][] { { { 1, 2 } }, { { 1 } } }), "a reading is missing");
	}

	@Test
	void aGaugeWithoutSpreadHasNoShares() {
		GaugeStudy study = GaugeStudy.of(new double[][][] { { { 5, 5 }, { 5, 5 } }, { { 5, 5 }, { 5, 5 } } }).orElseThrow();
		assertTrue(study.contributionPercent().isEmpty());
		assertTrue(study.studyPercent().isEmpty());
		assertTrue(study.distinctCategories().isEmpty());
	}

	private static double[][][] byOperator(int repeats) {
		double[][][] readings = new double[AIAG_ROWS.length][][];
		for (int i = 0; i < AIAG_ROWS.length; i++) {
			readings[i] = new double[AIAG_ROWS[i].length / repeats][repeats];
			for (int k = 0; k < AIAG_ROWS[i].length; k++) {
				readings[i][k / repeats][k % repeats] = AIAG_ROWS[i][k];
			}
		}
		return readings;
	}
}
