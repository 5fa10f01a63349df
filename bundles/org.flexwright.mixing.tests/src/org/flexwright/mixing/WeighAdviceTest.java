package org.flexwright.mixing;

import static org.flexwright.mixing.Bench.ratio;
import static org.flexwright.mixing.Bench.step;
import static org.flexwright.mixing.Bench.use;
import static org.flexwright.model.PartRole.COMPONENT_A;
import static org.flexwright.model.PartRole.COMPONENT_B;
import static org.flexwright.model.PartRole.FILLER;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.flexwright.mixing.data.Basis;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.Weighing;
import org.junit.jupiter.api.Test;

class WeighAdviceTest {

    private static final double RATIO = 21.57 / 22.88;

    private static WeighDetails byVolume() {
        WeighDetails details = ratio(100, 90);
        details.setBasis(Basis.VOLUME);
        details.setDensityA(1.05);
        details.setDensityB(1.10);
        return details;
    }

    private static Step dome(double[] a, double[] b) {
        return step(WeighStep.ID, byVolume(), use(COMPONENT_A, 22.88, a), use(COMPONENT_B, 21.57, b));
    }

    @Test
    void nothingWeighedYetMeansThePlan() {
        WeighAdvice advice = WeighAdvice.of(dome(new double[0], new double[0]));
        assertEquals(22.88, advice.targets().get(0).now());
        assertEquals(21.57, advice.targets().get(1).now());
        assertEquals("Weigh 22.88 g of A.", advice.sentence().text());
        assertTrue(advice.deviation().isEmpty());
    }

    @Test
    void whileBIsNotWeighedItFollowsTheAReallyInTheCup() {
        WeighAdvice advice = WeighAdvice.of(dome(new double[] { 24.88 }, new double[0]));
        assertEquals(23.46, advice.targets().get(1).now(), 0.005);
        assertEquals("Weigh 23.46 g of B.", advice.sentence().text());
        assertEquals(COMPONENT_B, advice.next().orElseThrow().use().getRole());
    }

    @Test
    void whileAIsNotWeighedItFollowsB() {
        WeighAdvice advice = WeighAdvice.of(dome(new double[0], new double[] { 23.0 }));
        assertEquals(23.0 / (0.9 * 1.10 / 1.05), advice.targets().get(0).now(), 1e-9);
    }

    @Test
    void twoGramsTooMuchOfAAreMendedWithB() {
        WeighAdvice advice = WeighAdvice.of(dome(new double[] { 24.88 }, new double[] { 21.57 }));
        assertEquals(-0.080, advice.deviation().orElseThrow(), 0.0005);
        assertEquals(1.89, advice.addition(), 0.005);
        assertEquals(COMPONENT_B, advice.shortRole().orElseThrow());
        assertTrue(advice.outside());
        assertEquals("Add 1.89 g of B: the ratio is -8.05 % off, above your own limit of 2 %.", advice.sentence().text());
    }

    @Test
    void theRescueCountsAndThenNothingIsLeftToAdd() {
        WeighAdvice advice = WeighAdvice.of(dome(new double[] { 24.88 }, new double[] { 21.57, 1.889 }));
        assertFalse(advice.outside());
        assertEquals(0, advice.addition(), 0.001, "a milligram of A is short now, which no balance shows");
        assertTrue(advice.next().isEmpty());
        assertEquals("Everything is weighed and the ratio is as planned.", advice.sentence().text());
    }

    @Test
    void aRatioByVolumeWithoutDensitiesFallsBackOnThePlannedGramsElseItSaysSo() {
        WeighDetails details = ratio(100, 90);
        details.setBasis(Basis.VOLUME);
        WeighAdvice grams = WeighAdvice.of(step(WeighStep.ID, details, use(COMPONENT_A, 22.88, 24.88), use(COMPONENT_B, 21.57)));
        assertEquals(24.88 * RATIO, grams.targets().get(1).now(), 1e-9);
        WeighAdvice none = WeighAdvice.of(step(WeighStep.ID, details, use(COMPONENT_A, null, 24.88), use(COMPONENT_B, null)));
        assertNull(none.ratio());
        assertTrue(none.sentence().text().contains("densities"), none.sentence().text());
    }

    @Test
    void withoutDetailsThePlannedGramsAreTheRatio() {
        WeighAdvice advice = WeighAdvice.of(step(WeighStep.ID, null, use(COMPONENT_A, 22.88, 24.88), use(COMPONENT_B, 21.57, 21.57)));
        assertEquals(1.89, advice.addition(), 0.005);
    }

    @Test
    void fillerFollowsTheBatchThatIsReallyMade() {
        Step step = step(WeighStep.ID, byVolume(), use(COMPONENT_A, 22.88, 24.88), use(COMPONENT_B, 21.57, 23.457), use(FILLER, 4.445));
        WeighAdvice advice = WeighAdvice.of(step);
        assertEquals(4.445 * (24.88 + 23.457) / (22.88 + 21.57), advice.targets().get(2).now(), 1e-3);
        assertEquals(FILLER, advice.next().orElseThrow().use().getRole());
    }

    @Test
    void grossAndTareGiveTheNet() {
        Weighing weighing = org.flexwright.model.ModelFactory.eINSTANCE.createWeighing();
        weighing.setGross(33.42);
        weighing.setTare(8.54);
        MaterialUse a = use(COMPONENT_A, 22.88);
        a.getWeighings().add(weighing);
        assertEquals(24.88 * RATIO, WeighAdvice.of(step(WeighStep.ID, null, a, use(COMPONENT_B, 21.57))).targets().get(1).now(), 1e-9);
    }

    @Test
    void twoBottlesOfAShareItsTarget() {
        Step step = step(WeighStep.ID, ratio(1, 1), use(COMPONENT_A, 10.0), use(COMPONENT_A, 30.0), use(COMPONENT_B, 40.0, 44.0));
        WeighAdvice advice = WeighAdvice.of(step);
        assertEquals(11, advice.targets().get(0).now(), 1e-9);
        assertEquals(33, advice.targets().get(1).now(), 1e-9);
    }

    @Test
    void anAdditionIsNeverNegativeAndMendsTheRatioExactly() {
        Random random = new Random(20);
        for (int i = 0; i < 2000; i++) {
            double a = 0.01 + 100 * random.nextDouble();
            double b = 0.01 + 100 * random.nextDouble();
            double planned = 0.01 + 5 * random.nextDouble();
            WeighAdvice advice = WeighAdvice.of(step(WeighStep.ID, ratio(1, planned), use(COMPONENT_A, 1.0, a), use(COMPONENT_B, planned, b)));
            assertTrue(advice.addition() >= 0);
            double mendedA = a + (advice.shortRole().filter(COMPONENT_A::equals).isPresent() ? advice.addition() : 0);
            double mendedB = b + (advice.shortRole().filter(COMPONENT_B::equals).isPresent() ? advice.addition() : 0);
            assertEquals(planned, mendedB / mendedA, 1e-9 * planned);
            advice.targets().forEach(t -> assertTrue(t.toAdd() >= 0));
        }
    }

    @Test
    void anEmptyStepSaysSo() {
        assertEquals("Nothing is planned to be weighed.", WeighAdvice.of(step(WeighStep.ID, null)).sentence().text());
    }

    @Test
    void withoutPlannedGramsTheyFollowFromThePartsToMake() {
        WeighDetails details = byVolume();
        details.setPartCount(3);
        details.setPartVolume(12.0);
        details.setExtra(15.0);
        Step step = step(WeighStep.ID, details, use(COMPONENT_A, null), use(COMPONENT_B, null));
        WeighAdvice advice = WeighAdvice.of(step);
        assertEquals(22.88, advice.targets().get(0).now(), 0.005);
        assertEquals(21.57, advice.targets().get(1).now(), 0.005);
    }

    @Test
    void theLinesOfTheStepCarryTargetDeviationAndAddition() {
        var lines = new WeighStep().advice(dome(new double[] { 24.88 }, new double[] { 21.57 }), null);
        var names = lines.stream().map(l -> l.name()).toList();
        assertEquals(java.util.List.of("targetA", "targetB", "ratio", "trueRatio", "deviation", "addB", "proposal"), names);
        assertEquals(1.89, lines.get(5).value().likely(), 0.005);
        assertEquals(org.flexwright.core.find.Severity.STOP, lines.get(4).remark().severity());
        var before = new WeighStep().advice(dome(new double[] { 24.88 }, new double[0]), null);
        assertEquals("Weigh 23.46 g of B.", before.get(1).remark().message().text());
    }
}
