package org.flexwright.core.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Target;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;

class WhatHelpsTest {
    private static final Target TARGET = Bench.nominal(42, 3);

    /** Parts alike, readings far apart: the difference between parts is reading, so more readings settle it. */
    @Test
    void scatteredReadingsAskForMoreReadings() {
        Judgement judgement = judge(null, new double[] { 44, 48 }, new double[] { 40.5, 44.5 }, new double[] { 41, 46 }, new double[] { 42, 46.5 }, new double[] { 40, 44 });
        assertEquals(Verdict.CANNOT_TELL, judgement.verdict());
        assertTrue(says(judgement, "readings a part instead of 2 would settle it"), judgement.notes().toString());
    }

    /** Readings alike, parts far apart: no reading helps. */
    @Test
    void partsThatDifferAskForMoreParts() {
        Judgement judgement = judge(null, new double[] { 39, 39.1, 39.2 }, new double[] { 45, 45.1, 45.2 }, new double[] { 43, 43.1, 43.2 });
        assertEquals(Verdict.CANNOT_TELL, judgement.verdict());
        assertTrue(says(judgement, "the parts themselves differ by about"), judgement.notes().toString());
        assertFalse(says(judgement, "instead of"));
    }

    @Test
    void onePartIsOnePartHoweverOftenItIsRead() {
        Random random = new Random(4);
        for (int n = 1; n < 40; n++) {
            double[] readings = random.doubles(n).map(u -> 42 + u).toArray();
            Judgement judgement = judge(null, readings);
            assertEquals(1, judgement.n());
            assertEquals(Verdict.CANNOT_TELL, judgement.verdict());
            assertTrue(says(judgement, "they say nothing about how parts differ"));
        }
    }

    @Test
    void aMeanNearerToAnEdgeThanTheGaugeIsSure() {
        Instrument gauge = gauge(0.1, 2.0);
        Judgement judgement = judge(gauge, new double[] { 44, 44.2 }, new double[] { 45, 45.2 }, new double[] { 44.5, 44.7 });
        assertEquals(Verdict.CANNOT_TELL, judgement.verdict());
        assertTrue(says(judgement, "closer check of the gauge"), judgement.notes().toString());
    }

    /** Three parts that read nearly alike by chance are not known better than the gauge reads. */
    @Test
    void whatTheGaugeIsKnownToScatterByIsTheLeastSpread() {
        Instrument gauge = gauge(0.1, null);
        Judgement blind = judge(gauge, new double[] { 44 }, new double[] { 44.1 }, new double[] { 44 });
        assertEquals(Verdict.IN, blind.verdict());
        gauge.setSpread(1.0);
        gauge.setSpreadFrom("a certificate");
        Judgement judgement = judge(gauge, new double[] { 44 }, new double[] { 44.1 }, new double[] { 44 });
        assertEquals(Verdict.CANNOT_TELL, judgement.verdict());
        assertEquals(4.302653 / Math.sqrt(3), judgement.interval().halfWidth(), 1e-4);
        assertTrue(says(judgement, "a certificate"), judgement.notes().toString());
        gauge.setUnit("mm");
        assertEquals(Verdict.IN, judge(gauge, new double[] { 44 }, new double[] { 44.1 }, new double[] { 44 }).verdict(), "a spread in another kind of unit says nothing");
    }

    private static boolean says(Judgement judgement, String words) {
        return judgement.notes().stream().anyMatch(note -> note.text().contains(words));
    }

    private static Judgement judge(Instrument gauge, double[]... parts) {
        Trial trial = Bench.trial();
        for (double[] readings : parts) {
            Bench.read(Bench.part(trial, String.valueOf(trial.getParts().size() + 1)), Bench.HARDNESS, readings).setInstrument(gauge);
        }
        List<PartValue> values = PartValues.of(trial, TARGET.getKey(), Bench.HARDNESS);
        return Verdicts.judge(TARGET, Bench.HARDNESS, values);
    }

    private static Instrument gauge(double resolution, Double accuracy) {
        Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setName("hand gauge");
        gauge.setResolution(resolution);
        gauge.setAccuracy(accuracy);
        return gauge;
    }
}
