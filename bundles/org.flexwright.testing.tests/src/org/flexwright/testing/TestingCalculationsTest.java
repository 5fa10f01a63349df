package org.flexwright.testing;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.find.Remark;
import org.flexwright.testing.hardness.CrossScaleCalculation;
import org.flexwright.testing.hardness.DecayCalculation;
import org.flexwright.testing.hardness.DurometerCheck;
import org.flexwright.testing.hardness.DurometerProtocol;
import org.flexwright.testing.hardness.ScaleChoiceCalculation;
import org.flexwright.testing.law.OgdenLawCalculation;
import org.flexwright.testing.law.PronyFitCalculation;
import org.flexwright.testing.law.RelaxationCalculation;
import org.flexwright.testing.law.RubberFitCalculation;
import org.flexwright.testing.law.RubberLawCalculation;
import org.flexwright.testing.motion.DropReboundCalculation;
import org.flexwright.testing.motion.HopCalculation;
import org.flexwright.testing.motion.HysteresisCalculation;
import org.flexwright.testing.motion.LossAngleCalculation;
import org.flexwright.testing.motion.PictureTimeCalculation;
import org.flexwright.testing.motion.PlungerReboundCalculation;
import org.flexwright.testing.motion.ReboundCalculation;
import org.flexwright.testing.piece.CompressionSetCalculation;
import org.flexwright.testing.piece.DensityCalculation;
import org.flexwright.testing.piece.TearCalculation;
import org.flexwright.testing.piece.TensileCalculation;
import org.flexwright.testing.sample.CountsCalculation;
import org.flexwright.testing.sample.GroupsCalculation;
import org.flexwright.testing.sample.ReadingsCalculation;
import org.flexwright.testing.sample.TwoGroupsCalculation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Calculations as form and command line run them: from typed text. */
class TestingCalculationsTest {

    static List<Calculation<?, ?>> all() {
        return List.of(new DurometerCheck(), new DurometerProtocol(), new ScaleChoiceCalculation(), new CrossScaleCalculation(), new DecayCalculation(),
                new TensileCalculation(), new TearCalculation(), new CompressionSetCalculation(), new DensityCalculation(), new ReboundCalculation(),
                new DropReboundCalculation(), new PlungerReboundCalculation(), new PictureTimeCalculation(), new LossAngleCalculation(), new HopCalculation(), new HysteresisCalculation(), new ReadingsCalculation(), new CountsCalculation(), new TwoGroupsCalculation(), new GroupsCalculation(),
                new RelaxationCalculation(), new PronyFitCalculation(), new RubberFitCalculation(), new RubberLawCalculation(), new OgdenLawCalculation());
    }

    @ParameterizedTest
    @MethodSource("all")
    void opensWithAnExampleThatComputes(Calculation<?, ?> calculation) {
        CalculationResult result = CalculationRunner.run(calculation, Map.of());
        assertNull(result.refused(), () -> String.valueOf(result.refused()));
        assertTrue(calculation.info().id().startsWith("testing."));
        for (FieldDescriptor field : CalculationRunner.inputs(calculation)) {
            assertFalse(field.help().isBlank(), field.name());
        }
        result.findings().forEach(f -> assertFalse(f.message().text().isBlank()));
    }

    @Test
    void durometerExampleOfFiveReadings() {
        CalculationResult result = run(new DurometerCheck());
        assertEquals(61, likely(result, "hardness"));
        assertEquals(60, result.results().get("hardness").low());
        assertEquals(62, result.results().get("hardness").high());
        assertEquals(93.75, likely(result, "coverage"), 1e-9);
        assertEquals("A/3:61", result.results().get("iso").text());
        assertEquals("A/61/3", result.results().get("astm").text());
    }

    @Test
    void aThinPieceReadsAnApparentHardnessAndSaysSo() {
        CalculationResult result = run(new DurometerCheck(), "thickness", "3 mm");
        assertEquals("apparent", result.results().get("standsFor").text());
        assertTrue(says(result, "apparent hardness"));
        assertTrue(says(result, "3 mm"));
    }

    @Test
    void oneReadingWarns() {
        assertTrue(says(run(new DurometerCheck(), "readings", "61"), "One reading"));
        assertFalse(says(run(new DurometerCheck()), "One reading"));
    }

    @Test
    void knownMaterialIsReadThreeTimesAnUnknownOneFive() {
        assertFalse(says(run(new DurometerCheck(), "readings", "61; 62; 61", "material", "vulcanised"), "readings: "));
        assertTrue(says(run(new DurometerCheck(), "readings", "61; 62; 61", "material", "unknown"), "asks for 5"));
    }

    @Test
    void thermoplasticDwellsFifteenSeconds() {
        assertTrue(says(run(new DurometerCheck(), "material", "thermoplastic"), "has 15 s"));
        assertFalse(says(run(new DurometerCheck(), "material", "thermoplastic", "dwell", "15 s"), "has 15 s"));
    }

    @Test
    void anIso868MeanIsAMean() {
        CalculationResult result = run(new DurometerCheck(), "standard", "ISO 868:2003");
        assertEquals(60.9, likely(result, "hardness"), 1e-9);
        assertEquals("mean", result.results().get("centre").text());
    }

    @Test
    void everythingElseTheProtocolMinds() {
        CalculationResult result = run(new DurometerCheck(), "readings", "12; 19; 10; 11; 12", "rest", "2 h", "temperature", "33", "edge", "5 mm", "spacing", "2 mm",
                "plies", "4", "curved", "yes");
        for (String part : List.of("use scale 00", "wait 16 h", "33 °C", "5 mm to the edge", "2 mm between", "4 plies", "curved spot", "differ by 9 points")) {
            assertTrue(says(result, part), part);
        }
        assertTrue(says(run(new DurometerCheck(), "plies", "2"), "2 plies"));
        assertTrue(says(run(new DurometerCheck(), "scale", "00", "standard", "astm-d2240", "readings", "8; 8; 8; 8; 8"), "no better scale"));
    }

    @Test
    void aStandardWithoutTheScaleRefuses() {
        assertEquals("standard", run(new DurometerCheck(), "scale", "00").refused().input());
        assertEquals("standard", run(new DurometerProtocol(), "scale", "00").refused().input());
        assertEquals("readings", run(new DurometerCheck(), "readings", "61; 161").refused().input());
    }

    @Test
    void protocolLinesCarryTheirOwnMark() {
        String text = run(new DurometerProtocol()).results().get("protocol").text();
        assertTrue(text.contains("ISO 48-4:2018, cl. 9.2"), text);
        assertTrue(text.contains("ISO 48-4:2018, cl. 9.3"), text);
        assertTrue(text.contains("ISO 48-4:2018, cl. 8"), text);
        assertTrue(text.contains("clause not confirmed (from memory, unconfirmed)"), text);
    }

    @Test
    void scales() {
        assertEquals("00", run(new ScaleChoiceCalculation()).results().get("suited").text());
        assertEquals("D", run(new ScaleChoiceCalculation(), "reading", "93").results().get("suited").text());
        assertEquals("A", run(new ScaleChoiceCalculation(), "scale", "D", "reading", "15").results().get("suited").text());
        assertTrue(says(run(new ScaleChoiceCalculation(), "thickness", "3 mm"), "3 mm"));
        assertTrue(says(run(new ScaleChoiceCalculation(), "scale", "D", "reading", "95"), "no better scale"));
    }

    @Test
    void chartValuesAreApproximateAndEnd() {
        CalculationResult result = run(new CrossScaleCalculation());
        assertEquals(86, likely(result, "about"));
        assertEquals(81, result.results().get("about").low());
        assertTrue(says(result, "approximate"));
        assertEquals("reading", run(new CrossScaleCalculation(), "reading", "96").refused().input());
        assertEquals("reading", run(new CrossScaleCalculation(), "to", "D", "reading", "20").refused().input());
        assertEquals("to", run(new CrossScaleCalculation(), "to", "A").refused().input());
    }

    @Test
    void fallOfAReading() {
        CalculationResult four = run(new DecayCalculation());
        expect("testing/6.decay.c4", likely(four, "fall"), "common practice, no source");
        expect("testing/6.decay.H1", likely(four, "atOneSecond"), "common practice, no source");
        CalculationResult two = run(new DecayCalculation(), "readings", "1; 60 | 15; 56");
        expect("testing/6.decay.c", likely(two, "fall"), "common practice, no source");
        assertTrue(says(two, "Two readings"));
        assertEquals("readings", run(new DecayCalculation(), "readings", "3; 60 | 3; 56").refused().input());
    }

    @Test
    void countsInWords() {
        assertEquals("4 of 5 did; 28 to 99 % is not excluded.", run(new CountsCalculation()).results().get("words").text());
        assertEquals("None of 5 did; up to 52 % is not excluded.", run(new CountsCalculation(), "did", "0").results().get("words").text());
        assertEquals("All 5 did; down to 48 % is not excluded.", run(new CountsCalculation(), "did", "5").results().get("words").text());
        assertEquals("did", run(new CountsCalculation(), "did", "6").refused().input());
        assertTrue(says(run(new CountsCalculation(), "did", "1", "tried", "2"), "too few"));
    }

    @Test
    void readingsPointAtAnOutlierAndKeepIt() {
        CalculationResult result = run(new ReadingsCalculation(), "readings", "199.31; 199.53; 200.19; 200.82; 201.92; 201.95; 202.18; 245.57");
        assertTrue(says(result, "Value 8"));
        assertEquals(8, likely(result, "count"));
        CalculationResult one = run(new ReadingsCalculation(), "readings", "61");
        assertNull(one.results().get("mean").value());
        assertTrue(says(one, "One value"));
        assertTrue(says(run(new ReadingsCalculation(), "readings", "61; 62"), "Two values"));
        assertEquals(0, likely(run(new ReadingsCalculation(), "readings", "61; 61", "resolution", "0", "accuracy", "0"), "uncertainty"));
    }

    /** The manual's yields (see the sheet): Welch 19.169 degrees of freedom, 90 % interval inside plus and minus 110. */
    @Test
    void twoGroupsAreAlikeWithinAMarginOrNot() {
        String a = "452; 874; 554; 447; 356; 754; 558; 574; 664; 682; 547; 435; 245";
        String b = "546; 547; 774; 465; 459; 665; 467; 365; 589; 534; 456; 651; 654; 665; 546; 537";
        CalculationResult result = run(new TwoGroupsCalculation(), "first", a, "second", b, "margin", "110");
        assertEquals(19.169, likely(result, "freedom"), 5e-4);
        assertTrue(result.results().get("alike").text().startsWith("Alike"));
        assertTrue(result.results().get("different").text().startsWith("No difference"));
        assertTrue(run(new TwoGroupsCalculation(), "first", a, "second", b, "margin", "50").results().get("alike").text().startsWith("Not shown"));
        assertEquals("second", run(new TwoGroupsCalculation(), "second", "44").refused().input());
        assertTrue(run(new TwoGroupsCalculation(), "first", "4; 4", "second", "5; 5").refused().why().contains("no spread"));
    }

    /** NIST StRD SiRstv: F 1.18046237440255. */
    @Test
    void severalGroupsDifferOrNot() {
        CalculationResult result = run(new GroupsCalculation(), "groups", ".3052; .1240; .1890; .2569; .3403 | .3042; .3825; .1669; .3257; .0422 | .1303; .2005; .2889; .0343; .1811 | "
                + ".2795; .1748; .1494; .1485; -.0115 | .2119; .1051; .1850; .0052; .2090");
        assertEquals(1.18046237440255, likely(result, "f"), 1e-12);
        assertTrue(result.results().get("words").text().startsWith("No difference"));
        assertTrue(run(new GroupsCalculation(), "groups", "1; 2").refused().why().contains("two groups"));
        assertTrue(run(new GroupsCalculation(), "groups", "1; x | 2; 3").refused().why().contains("\"x\""));
        assertTrue(run(new GroupsCalculation(), "groups", "1; 2 | ").refused().why().contains("Group 2"));
        assertTrue(run(new GroupsCalculation(), "groups", "1 | 2").refused().why().contains("no spread"));
    }

    @Test
    void whereMostOfAllLieIsWiderThanWhereTheMeanLies() {
        CalculationResult five = run(new ReadingsCalculation());
        assertEquals(60.9 + 5.076875 * 0.741620, five.results().get("all").high(), 1e-4);
        assertTrue(says(run(new ReadingsCalculation(), "readings", ".189; .167; .187; .183; .186; .182; .181; .184; .181; .130"), "Dixon"));
        assertTrue(says(run(new ReadingsCalculation(), "readings", "61; 61; 61"), "All values are the same"));
    }

    @Test
    void hopOfFourTenthsOfASecond() {
        assertEquals(196.1, likely(run(new HopCalculation()), "height"), 0.05);
        assertTrue(says(run(new HopCalculation(), "frames", "6"), "few"));
        assertEquals(4, likely(run(new HopCalculation(), "motion", "fall"), "height") / likely(run(new HopCalculation()), "height"), 1e-9);
    }

    @Test
    void reboundHeard() {
        CalculationResult result = run(new ReboundCalculation());
        assertEquals(0.8, likely(result, "restitution"), 1e-9);
        assertEquals(64, likely(result, "rebound"), 1e-9);
        assertNull(result.results().get("fitted").value());
        CalculationResult four = run(new ReboundCalculation(), "impacts", "0; 0.6; 1.08; 1.464");
        assertEquals(0.8, likely(four, "fitted"), 1e-9);
        assertEquals("impacts", run(new ReboundCalculation(), "impacts", "0; 0.6; 0.5").refused().input());
        assertTrue(run(new ReboundCalculation(), "impacts", "0; 0.4; 1.0").refused().why().contains("Flight 2"));
    }

    @Test
    void reboundSeen() {
        CalculationResult result = run(new DropReboundCalculation());
        assertEquals(37.5, likely(result, "rebound"), 1e-9);
        assertEquals(37 - 100 * Math.hypot(1, 0.37) * 3 / 400, result.results().get("rebound").low(), 1e-9);
        assertEquals(37, run(new DropReboundCalculation(), "reading", "0 mm").results().get("rebound").low(), 1e-9);
        assertEquals("rebounds", run(new DropReboundCalculation(), "rebounds", "150; 401").refused().input());
        assertTrue(says(run(new DropReboundCalculation(), "rebounds", "150"), "take three") || says(run(new DropReboundCalculation(), "rebounds", "150"), "read three"));
    }

    @Test
    void reboundOfThePlunger() {
        CalculationResult result = run(new PlungerReboundCalculation());
        assertEquals(37.5, likely(result, "rebound"), 1e-9);
        assertEquals(3, likely(result, "counted"));
        assertEquals(37, likely(run(new PlungerReboundCalculation(), "rebounds", "1; 2; 3; 148; 148; 148; 399"), "rebound"), 1e-9);
        assertTrue(says(run(new PlungerReboundCalculation(), "rebounds", "1; 2; 3; 148"), "1 rebounds count"));
        assertEquals("rebounds", run(new PlungerReboundCalculation(), "rebounds", "1; 2; 3; 400").refused().input());
        assertTrue(says(run(new PlungerReboundCalculation(), "thickness", "10 mm"), "10 mm thick"));
    }

    @Test
    void timeBetweenTwoPictures() {
        CalculationResult result = run(new PictureTimeCalculation());
        assertEquals(0.275, likely(result, "time"), 1e-12);
        assertEquals(2 / (240 * Math.sqrt(6)), likely(result, "time") - result.results().get("time").low(), 1e-12);
        assertEquals(1000 / 240.0, likely(result, "bound"), 1e-9);
        assertEquals("last", run(new PictureTimeCalculation(), "last", "400").refused().input());
        assertTrue(run(new PictureTimeCalculation(), "last", "412").refused().remedy().contains("< 4.17 ms"));
        assertTrue(says(run(new PictureTimeCalculation(), "last", "415"), "3 pictures are few"));
        assertEquals("rate", run(new PictureTimeCalculation(), "rate", "0 fps").refused().input());
        assertEquals("rate", run(new HopCalculation(), "rate", "0 fps").refused().input());
    }

    @Test
    void lossAngle() {
        CalculationResult result = run(new LossAngleCalculation());
        assertEquals(Math.tan(0.2), likely(result, "tanDelta"), 1e-5);
        double k = likely(result, "storage");
        assertEquals(likely(result, "tanDelta"), 6.2414 / (2 * Math.PI * k / 2), 1e-12);
        assertEquals("lost", run(new LossAngleCalculation(), "lost", "32 mJ").refused().input());
        assertEquals(0, likely(run(new LossAngleCalculation(), "lost", "0 mJ"), "tanDelta"));
    }

    @Test
    void loops() {
        CalculationResult result = run(new HysteresisCalculation());
        assertEquals(17.879, likely(result, "loss"), 0.0005);
        assertNotNull(result.results().get("tanDelta").value());
        CalculationResult turned = run(new HysteresisCalculation(), "loading", "0; 0 | 1; 1", "unloading", "0; 0 | 1; 2");
        assertNull(turned.results().get("tanDelta").value());
        assertTrue(says(turned, "No less energy"));
        assertEquals("unloading", run(new HysteresisCalculation(), "unloading", "5; 16 | 0; 0").refused().input());
        assertEquals("loading", run(new HysteresisCalculation(), "loading", "0; -1 | 5; -2").refused().input());
    }

    @Test
    void densities() {
        assertEquals(1133.569, likely(run(new DensityCalculation()), "density"), 0.0005);
        assertEquals(1133.405, likely(run(new DensityCalculation(), "buoyancy", "yes"), "density"), 0.0005);
        assertEquals(950.04, likely(run(new DensityCalculation(), "inAir", "3", "sinker", "8", "inWater", "7.85"), "density"), 0.005);
        assertEquals("inWater", run(new DensityCalculation(), "inWater", "10").refused().input());
        assertEquals("inWater", run(new DensityCalculation(), "inWater", "-0.3").refused().input(), "a piece that floats");
        assertTrue(says(run(new DensityCalculation(), "inWater", "0"), "floats"));
    }

    @Test
    void pieces() {
        assertEquals(8, likely(run(new TensileCalculation()), "strength"), 1e-9);
        assertEquals("lengthAtBreak", run(new TensileCalculation(), "lengthAtBreak", "12").refused().input());
        assertTrue(says(run(new TensileCalculation(), "thickness", "3"), "3 mm thick"));
        assertTrue(says(run(new TensileCalculation(), "forceThere", "80"), "highest force"));
        assertEquals(19.192, likely(run(new TearCalculation()), "strength"), 0.0005);
        assertEquals(500, likely(run(new TearCalculation(), "piece", "crescent"), "speed"));
        assertEquals(51.282, likely(run(new CompressionSetCalculation()), "set"), 0.0005);
        assertEquals("spacer", run(new CompressionSetCalculation(), "spacer", "13").refused().input());
        assertTrue(says(run(new CompressionSetCalculation(), "hardness", "85"), "15 % is usual"));
        assertTrue(says(run(new CompressionSetCalculation(), "after", "13"), "cannot come"));
        assertEquals(1.481959, likely(run(new RelaxationCalculation()), "modulus"), 5e-7);
        assertEquals("terms", run(new RelaxationCalculation(), "terms", "0.6; 1 | 0.4; 2").refused().input());
    }

    @Test
    void rubberLaws() {
        assertEquals(0.6125, likely(run(new RubberLawCalculation()), "uniaxial"), 1e-9);
        assertTrue(run(new RubberLawCalculation()).results().get("stability").text().startsWith("Stable from 0.5 to 3"));
        String gives = run(new RubberLawCalculation(), "c10", "0.3", "c01", "-0.05").results().get("stability").text();
        // Pressed alike in two directions to 6^(-1/4): the thickness is then stretched to the square root of 6, where pulling gives way.
        assertTrue(gives.contains("0.639 in two directions alike"), gives);
        assertEquals(0.591068, likely(run(new OgdenLawCalculation()), "uniaxial"), 5e-7);
        assertEquals("terms", run(new OgdenLawCalculation(), "terms", "1; 0").refused().input());
    }

    @Test
    void rubberFits() {
        CalculationResult result = run(new RubberFitCalculation());
        assertEquals(0.119986, likely(result, "c10"), 5e-7);
        assertEquals(0.01347, likely(result, "rms"), 5e-6);
        assertTrue(says(result, "Only one direction was measured"));
        assertTrue(result.results().get("c10").low() < 0.119986 && result.results().get("c10").high() > 0.119986, "a coefficient comes with its interval");
        assertEquals("points", run(new RubberFitCalculation(), "points", "uniaxial; 1.5; 1 | uniaxial; 2; 1.5", "form", "yeoh").refused().input());
        assertEquals("points", run(new RubberFitCalculation(), "points", "uniaxial; 1.5; 1 | uniaxial; 1.5; 1.1").refused().input());
        // Half of the whole curve's upturn makes a law with a negative modulus: it must not come out as a result.
        CalculationResult unstable = run(new RubberFitCalculation(), "points",
                "uniaxial; 1.24; 2.30 kgf/cm2 | uniaxial; 3.02; 8.80 kgf/cm2 | uniaxial; 6.15; 27.4 kgf/cm2 | uniaxial; 7.15; 45.8 kgf/cm2 | uniaxial; 7.60; 64.4 kgf/cm2");
        assertEquals("form", unstable.refused().input());
        assertTrue(unstable.refused().why().startsWith("Mooney-Rivlin is rejected: it gives way at stretch"), unstable.refused().why());
    }

    private static CalculationResult run(Calculation<?, ?> calculation, String... typed) {
        Map<String, String> values = new HashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            values.put(typed[i], typed[i + 1]);
        }
        return CalculationRunner.run(calculation, values);
    }

    private static double likely(CalculationResult result, String name) {
        assertNull(result.refused(), () -> String.valueOf(result.refused()));
        return result.results().get(name).likely();
    }

    private static boolean says(CalculationResult result, String part) {
        return result.findings().stream().map(Remark::message).anyMatch(m -> m.text().contains(part));
    }
}
