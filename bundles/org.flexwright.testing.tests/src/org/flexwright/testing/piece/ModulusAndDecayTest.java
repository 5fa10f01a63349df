package org.flexwright.testing.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Remark;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.rubber.ModulusBand;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.RunResult;
import org.flexwright.model.Trial;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.hardness.Decay;
import org.flexwright.testing.piece.CouponCalculation.Inputs;
import org.flexwright.testing.piece.CouponCalculation.Load;
import org.flexwright.testing.piece.CouponCalculation.Results;
import org.flexwright.testing.step.ReadStep;
import org.junit.jupiter.api.Test;

class ModulusAndDecayTest {
    private static final ModelFactory MODEL = ModelFactory.eINSTANCE;

    /** Length of a strip of modulus E (MPa) under a mass (g) beyond the clip, by halving. */
    private static double length(double modulus, double grams, double area, double first) {
        double stress = grams * 9.80665e-3 / area;
        double low = 0.5;
        double high = 8;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (modulus * (middle - 1 / (middle * middle)) / 3 > stress) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low * first;
    }

    private static List<Load> loads(double modulus, double clip, double step) {
        List<Load> loads = new ArrayList<>();
        for (double grams : new double[] {50, 100, 150, 200, 300}) {
            double exact = length(modulus, grams + clip, 12, 50);
            loads.add(new Load(grams, step == 0 ? exact : Math.round(exact / step) * step));
        }
        return loads;
    }

    private static Results done(Inputs in) {
        return assertInstanceOf(Outcome.Done.class, new CouponCalculation().run(in)).results() instanceof Results r ? r : null;
    }

    private static List<String> remarks(Inputs in) {
        return ((Outcome.Done<Results>) new CouponCalculation().run(in)).remarks().stream().map(Remark::message).map(m -> m.text()).toList();
    }

    /** The lengths come from the law itself: the modulus must come back, and the clip's mass with it, however heavy the clip. */
    @Test
    void theModulusComesBackWhateverTheClipWeighs() {
        for (double clip : new double[] {0, 17, 60}) {
            Results results = done(new Inputs(6, 2, 50, loads(2, clip, 0), 30.0, 0.5, 0.05, null));
            assertEquals(2, results.modulus().likely(), 1e-9);
            assertEquals(-clip, results.start(), 1e-6);
            assertTrue(results.modulus().low() < 2 && results.modulus().high() > 2);
        }
    }

    /** The band holds the truth at its level when lengths are rounded to the ruler and the section is off by what the calliper may be. */
    @Test
    void theBandHoldsTheTruth() {
        Random random = new Random(1958);
        int held = 0;
        int tries = 400;
        for (int i = 0; i < tries; i++) {
            double modulus = 0.8 + 4 * random.nextDouble();
            double width = 6 + (2 * random.nextDouble() - 1) * 0.05;
            double thickness = 2 + (2 * random.nextDouble() - 1) * 0.05;
            List<Load> loads = new ArrayList<>();
            for (double grams : new double[] {50, 100, 150, 200, 300}) {
                loads.add(new Load(grams, Math.round((length(modulus, grams, width * thickness, 50) + 0.3 * random.nextGaussian()) / 0.5) * 0.5));
            }
            if (new CouponCalculation().run(new Inputs(6, 2, 50, loads, 30.0, 0.5, 0.05, null)) instanceof Outcome.Done<Results> done) {
                held += done.results().modulus().low() <= modulus && modulus <= done.results().modulus().high() ? 1 : 0;
            } else {
                tries--;
            }
        }
        assertTrue(held >= 0.93 * tries, held + " of " + tries);
        assertTrue(tries > 350, "too many were refused: " + tries);
    }

    /** Perfect lengths do not make the band narrower than ruler and calliper allow. */
    @Test
    void theBandIsNoNarrowerThanTheTools() {
        double fine = width(done(new Inputs(6, 2, 50, loads(2, 0, 0), 30.0, 0.1, 0.01, null)));
        double coarse = width(done(new Inputs(6, 2, 50, loads(2, 0, 0), 30.0, 1, 0.01, null)));
        double thin = width(done(new Inputs(6, 2, 50, loads(2, 0, 0), 30.0, 0.1, 0.2, null)));
        assertTrue(fine > 0.005 && coarse > 3 * fine && thin > 3 * fine, fine + " " + coarse + " " + thin);
    }

    private static double width(Results results) {
        return (results.modulus().high() - results.modulus().low()) / results.modulus().likely();
    }

    @Test
    void whatIsMissingOrOddIsSaid() {
        assertTrue(remarks(new Inputs(6, 2, 50, loads(2, 0, 0), null, 0.5, 0.05, null)).stream().anyMatch(r -> r.contains("wait after each weight is not entered")));
        assertTrue(remarks(new Inputs(6, 2, 50, loads(0.4, 0, 0), 30.0, 0.5, 0.05, null)).stream().anyMatch(r -> r.contains("beyond 50 %")));
        assertTrue(remarks(new Inputs(6, 2, 50, loads(2, 0, 0).subList(2, 4).size() == 2 ? List.of(loads(2, 0, 0).get(0), loads(2, 0, 0).get(4)) : List.of(), 30.0, 0.5, 0.05, null))
                .stream().anyMatch(r -> r.startsWith("Two weights")));
        assertTrue(remarks(new Inputs(6, 2, 50, loads(2, 0, 0), 30.0, 0.5, 0.05, 45.0)).stream().anyMatch(r -> r.contains("both agree")));
        assertTrue(remarks(new Inputs(6, 2, 50, loads(2, 0, 0), 30.0, 0.5, 0.05, 80.0)).stream().anyMatch(r -> r.contains("do not agree")));
        Results beside = done(new Inputs(6, 2, 50, loads(2, 0, 0), 30.0, 0.5, 0.05, 80.0));
        assertEquals(2, beside.modulus().likely(), 1e-9, "the hardness is never mixed in");
        assertEquals(ModulusBand.of(80).likely(), beside.fromHardness().likely());
        assertNull(done(new Inputs(6, 2, 50, loads(2, 0, 0), 30.0, 0.5, 0.05, null)).fromHardness());
    }

    @Test
    void whatCannotBeIsRefused() {
        assertRefused(List.of(new Load(100, 52), new Load(100, 53)));
        assertRefused(List.of(new Load(50, 53), new Load(100, 52), new Load(150, 51)));
        assertRefused(List.of(new Load(100, 52), new Load(101, 52.1)));
    }

    private static void assertRefused(List<Load> loads) {
        assertInstanceOf(Outcome.Refused.class, new CouponCalculation().run(new Inputs(6, 2, 50, loads, 30.0, 0.5, 0.05, null)));
    }

    private static Trial trial() {
        Trial trial = MODEL.createTrial();
        trial.setCode("T07");
        return trial;
    }

    private static Part part(Trial trial, String code) {
        Part part = MODEL.createPart();
        part.setCode(code);
        part.setThickness(6.5);
        trial.getParts().add(part);
        return part;
    }

    private static void read(Part part, String property, Double dwell, double... values) {
        Measurement measurement = MODEL.createMeasurement();
        PropertyKey key = MODEL.createPropertyKey();
        key.setProperty(property);
        key.setDwell(dwell);
        key.setSpot("button");
        measurement.setKey(key);
        for (double value : values) {
            Reading reading = MODEL.createReading();
            reading.setValue(value);
            measurement.getReadings().add(reading);
        }
        part.getMeasurements().add(measurement);
    }

    private static void keep(Trial trial, double low, double likely, double high) {
        CalculationRun run = MODEL.createCalculationRun();
        run.setCalculation(CouponCalculation.ID);
        RunResult result = MODEL.createRunResult();
        result.setName("modulus");
        result.setUnit("MPa");
        result.setLow(low);
        result.setLikely(likely);
        result.setHigh(high);
        run.getResults().add(result);
        trial.getCalculations().add(run);
    }

    @Test
    void theWeightsGoBeforeTheHardnessAndItIsSaid() {
        Trial trial = trial();
        assertEquals(List.of(), new ReadStep().advice(MODEL.createStep(), trial));
        read(part(trial, "B1"), TestingProperties.SHORE_A, 3.0, 44, 45, 45);
        StepAdvice alone = new ReadStep().advice(MODEL.createStep(), trial).getFirst();
        assertTrue(alone.value().low() <= ModulusBand.of(45).low() && alone.value().high() >= ModulusBand.of(45).high(), "rounded outwards");
        assertEquals(ModulusBand.of(45).likely(), alone.value().likely(), 0.05);
        assertTrue(alone.label().contains("hardness of B1, after 3 s"), alone.label());
        assertNull(alone.remark());
        keep(trial, 1.7, 1.9, 2.1);
        List<StepAdvice> both = new ReadStep().advice(MODEL.createStep(), trial);
        assertEquals(List.of("modulus.weights", "modulus.hardness"), both.stream().map(StepAdvice::name).toList());
        assertEquals(1.9, both.getFirst().value().likely());
        assertTrue(both.getFirst().remark().message().text().contains("goes before"));
        assertEquals(alone.value(), both.get(1).value(), "neither is mixed into the other");
    }

    /** A modulus belongs to a time: readings after another dwell are another modulus. */
    @Test
    void theModulusIsThatOfOneDwell() {
        Trial trial = trial();
        Part button = part(trial, "B1");
        read(button, TestingProperties.SHORE_A, 60.0, 40, 40, 40, 40, 40);
        read(button, TestingProperties.SHORE_A, 3.0, 45);
        assertEquals(ModulusBand.of(45).likely(), ModulusKnown.of(trial).getFirst().modulus().likely(), 1e-12);
        part(trial, "F1").setFailed(true);
        read(trial.getParts().getLast(), TestingProperties.SHORE_A, 3.0, 20);
        assertEquals(1, ModulusKnown.of(trial).size());
        assertEquals("B1, after 3 s", ModulusKnown.of(trial).getFirst().detail());
    }

    @Test
    void hardnessFallsAlongALineThatIsDrawn() {
        Trial trial = trial();
        Part button = part(trial, "B1");
        double[][] seen = {{1, 62}, {3, 60.5}, {15, 58}, {60, 56}};
        for (double[] point : seen) {
            read(button, TestingProperties.SHORE_A, point[0], point[1]);
        }
        Decay decay = Decay.of(button).getFirst();
        assertEquals(3.40266, decay.fall().orElseThrow().likely(), 5e-6, "sheet, section 6");
        assertTrue(decay.fall().orElseThrow().low() < 3.4 && decay.fall().orElseThrow().high() > 3.41);
        StepPlot drawn = new ReadStep().plots(MODEL.createStep(), trial, null).getFirst();
        assertEquals(List.of(PlotModel.Style.POINTS, PlotModel.Style.LINE), drawn.plot().series().stream().map(PlotModel.Series::style).toList());
        assertEquals(List.of("1", "3", "15", "60"), drawn.plot().x().ticks().stream().map(t -> t.label()).toList());
        assertTrue(drawn.remarks().getFirst().message().text().startsWith("B1 button: 3.4 points lost"), drawn.remarks().getFirst().message().text());
        StepAdvice advice = new ReadStep().advice(MODEL.createStep(), trial).getFirst();
        assertNotNull(advice.remark());
        assertEquals("fall1", advice.name());
    }

    /** Readings that lie on a line by luck were read to whole points all the same. */
    @Test
    void theBandOfTheFallIsNoNarrowerThanTheDial() {
        Part button = part(trial(), "B1");
        read(button, TestingProperties.SHORE_A, 1.0, 60);
        read(button, TestingProperties.SHORE_A, 10.0, 57);
        read(button, TestingProperties.SHORE_A, 100.0, 54);
        assertEquals(3, Decay.of(button).getFirst().fall().orElseThrow().likely(), 1e-9);
        assertEquals(2 / Math.sqrt(12) / Math.sqrt(2), 3 - Decay.of(button).getFirst().fall().orElseThrow().low(), 1e-9);
    }

    @Test
    void oneDwellIsNoFallTwoHaveNoBand() {
        Trial trial = trial();
        Part button = part(trial, "B1");
        read(button, TestingProperties.SHORE_A, 1.0, 60);
        assertEquals(List.of(), Decay.of(button));
        assertEquals(List.of(), new ReadStep().plots(MODEL.createStep(), trial, null));
        read(button, TestingProperties.SHORE_A, 15.0, 56);
        assertEquals(3.40110, Decay.of(button).getFirst().fall().orElseThrow().likely(), 5e-6, "sheet, section 6");
        assertTrue(new ReadStep().plots(MODEL.createStep(), trial, null).getFirst().remarks().getFirst().message().text().contains("nothing about its error"));
    }
}
