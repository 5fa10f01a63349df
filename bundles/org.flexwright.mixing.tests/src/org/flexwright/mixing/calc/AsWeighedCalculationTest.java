package org.flexwright.mixing.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Severity;
import org.junit.jupiter.api.Test;

class AsWeighedCalculationTest {

    private static Outcome.Done<AsWeighedCalculation.Results> run(double a, Double b, double limit) {
        return (Outcome.Done<AsWeighedCalculation.Results>) new AsWeighedCalculation().run(new AsWeighedCalculation.Inputs(22.88, 21.57, a, b, limit));
    }

    @Test
    void twoGramsTooMuchOfA() {
        var done = run(24.88, 21.57, 2);
        assertEquals(-8.0, done.results().deviation(), 0.05);
        assertEquals("B", done.results().shortOf());
        assertEquals(1.89, done.results().add(), 0.005);
        assertEquals(Severity.STOP, done.remarks().get(0).severity());
        assertTrue(done.remarks().get(0).message().text().contains("adding 1.89 g of B"), done.remarks().get(0).message().text());
    }

    @Test
    void whileBIsNotWeighedItFollowsA() {
        var done = run(24.88, null, 2);
        assertEquals(23.46, done.results().targetB(), 0.005);
        assertEquals(done.results().targetB(), done.results().add());
        assertNull(done.results().deviation());
        assertNull(done.results().trueRatio());
    }

    @Test
    void tooMuchOfBIsMendedWithA() {
        var done = run(22.88, 23.57, 6);
        assertEquals("A", done.results().shortOf());
        assertEquals(23.57 * 22.88 / 21.57 - 22.88, done.results().add(), 1e-12);
        assertEquals(Severity.CAUTION, done.remarks().get(0).severity());
    }

    @Test
    void insideTheLimitIsANote() {
        assertEquals(Severity.NOTE, run(22.88, 21.60, 2).remarks().get(0).severity());
        assertEquals("none", run(22.88, 21.57, 2).results().shortOf());
        assertEquals(0, run(22.88, 21.57, 2).results().add());
    }
}
