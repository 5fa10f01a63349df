package org.flexwright.mixing.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.flexwright.core.calc.Outcome;
import org.flexwright.mixing.formula.Surplus;
import org.flexwright.testsupport.CheckValues;
import org.junit.jupiter.api.Test;

class BatchCalculationTest {

    private static final String SOURCE = "derived: mass balance";
    private final BatchCalculation batch = new BatchCalculation();

    private static BatchCalculation.Inputs dome(double extra, Surplus kind) {
        return new BatchCalculation.Inputs(3, 12, 0, 0, extra, kind, 100, 90, RatioBasis.VOLUME, 1.05, 1.10, null);
    }

    private Outcome.Done<BatchCalculation.Results> done(BatchCalculation.Inputs in) {
        return (Outcome.Done<BatchCalculation.Results>) batch.run(in);
    }

    @Test
    void threePartsWithAllowance() {
        var done = done(dome(15, Surplus.ALLOWANCE));
        assertEquals(22.88, done.results().massA(), 0.005);
        assertEquals(21.57, done.results().massB(), 0.005);
        assertEquals(41.4, done.results().volume(), 1e-9);
        assertTrue(done.remarks().get(0).message().text().contains("23.41 g of A and 22.07 g of B"), done.remarks().get(0).message().text());
    }

    @Test
    void threePartsWithLossAndTheReason() {
        var done = done(dome(15, Surplus.LOSS));
        assertEquals(23.41, done.results().massA(), 0.005);
        assertEquals(22.07, done.results().massB(), 0.005);
        String why = done.remarks().get(0).message().text();
        assertTrue(why.contains("divided by 0.85") && why.contains("22.88 g of A and 21.57 g of B"), why);
    }

    @Test
    void withoutExtraBothWaysAgreeAndNothingIsSaid() {
        var done = done(dome(0, Surplus.LOSS));
        assertEquals(done(dome(0, Surplus.ALLOWANCE)).results(), done.results());
        assertTrue(done.remarks().isEmpty());
    }

    @Test
    void printedBatch() {
        var loss = done(new BatchCalculation.Inputs(3, 12.5, 2, 1.5, 8, Surplus.LOSS, 100, 50, RatioBasis.WEIGHT, null, null, 1.06)).results();
        var surcharge = done(new BatchCalculation.Inputs(3, 12.5, 2, 1.5, 8, Surplus.ALLOWANCE, 100, 50, RatioBasis.WEIGHT, null, null, 1.06)).results();
        CheckValues.expect("processes/A1 net/loss/surcharge.1", loss.netMass(), SOURCE);
        CheckValues.expect("processes/A1 net/loss/surcharge.2", loss.total(), SOURCE);
        CheckValues.expect("processes/A1 net/loss/surcharge.3", surcharge.total(), SOURCE);
    }

    @Test
    void aRatioByVolumeNeedsBothDensities() {
        var refused = assertInstanceOf(Outcome.Refused.class,
                batch.run(new BatchCalculation.Inputs(3, 12, 0, 0, 15, Surplus.LOSS, 100, 90, RatioBasis.VOLUME, 1.05, null, 1.07)));
        assertEquals("densityB", refused.input());
    }

    @Test
    void anEmptyBatchIsRefused() {
        var refused = assertInstanceOf(Outcome.Refused.class,
                batch.run(new BatchCalculation.Inputs(3, 0, 0, 0, 15, Surplus.LOSS, 100, 90, RatioBasis.WEIGHT, 1.05, 1.1, null)));
        assertEquals("partVolume", refused.input());
    }
}
