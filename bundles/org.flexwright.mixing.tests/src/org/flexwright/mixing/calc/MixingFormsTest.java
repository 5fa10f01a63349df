package org.flexwright.mixing.calc;

import static org.flexwright.testsupport.CheckValues.expect;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.find.Severity;
import org.flexwright.mixing.formula.Pots;
import org.junit.jupiter.api.Test;

/** What the forms say, typed as a person would. */
class MixingFormsTest {

    private static CalculationResult run(Calculation<?, ?> calculation, String... typed) {
        Map<String, String> map = new HashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return CalculationRunner.run(calculation, map);
    }

    private static double value(CalculationResult result, String name) {
        return result.results().get(name).likely();
    }

    @Test
    void theBatchOpensWithTheWorkedExample() {
        CalculationResult result = run(new BatchCalculation());
        assertEquals(22.88, value(result, "massA"), 0.005);
        assertEquals(21.57, value(result, "massB"), 0.005);
        assertEquals(23.41, value(run(new BatchCalculation(), "extraKind", "loss"), "massA"), 0.005);
    }

    @Test
    void tenPercentOfTheTotalIsElevenPhr() {
        CalculationResult result = run(new FillerCalculation(), "countedOn", "total");
        assertEquals(11.111, value(result, "phr"), 0.0005);
        assertTrue(result.findings().get(0).message().text().contains("counted on the total is 11.11 phr"));
        assertEquals("amount", run(new FillerCalculation(), "countedOn", "total", "amount", "100").refused().input());
    }

    @Test
    void theIndexOfWhatWasWeighed() {
        CalculationResult result = run(new IndexCalculation(), "nco", "9 %", "hydroxylValue", "120", "extender", "0 g", "weighed", "100 g");
        assertEquals(100.13, value(result, "actualIndex"), 0.005);
        assertEquals("weighed", run(new IndexCalculation(), "weighed", "10 g").refused().input());
        assertEquals("polyol", run(new IndexCalculation(), "polyol", "0 g", "extender", "0 g").refused().input());
    }

    @Test
    void aPrepolymerWithTooMuchPolyolIsRefused() {
        assertEquals("isocyanate", run(new PrepolymerCalculation(), "isocyanate", "100 g").refused().input());
        assertEquals(3.361, value(run(new PrepolymerCalculation()), "nco"), 0.002);
    }

    @Test
    void aGaugeBelowTheRoomIsTakenFromTheRoom() {
        CalculationResult result = run(new DegassingCalculation(), "counted", "below-room", "reading", "95 kPa", "room", "1013.25 mbar");
        assertEquals(16.02, value(result, "growth"), 0.005);
        assertEquals("reading", run(new DegassingCalculation(), "counted", "below-room", "reading", "102 kPa").refused().input());
    }

    /** A11: a gauge value never passes for an absolute one, nor the other way round. */
    @Test
    void aGaugePressureIsNotTakenForAnAbsoluteOne() {
        for (String typed : new String[] { "-0.95 bar gauge", "-95 kPa gauge" }) {
            CalculationResult result = run(new DegassingCalculation(), "reading", typed);
            assertEquals("reading", result.refused().input());
            assertTrue(result.refused().why().contains("absolute"), result.refused().why());
        }
        assertEquals("room", run(new DegassingCalculation(), "room", "0 kPa gauge").refused().input());
        // the same vacuum both ways, from 101.325 kPa: 5 kPa absolute is 96.325 kPa below the room
        assertEquals(value(run(new DegassingCalculation(), "reading", "5 kPa"), "growth"),
                value(run(new DegassingCalculation(), "reading", "96.325 kPa", "counted", "below-room"), "growth"), 1e-9);
    }

    @Test
    void aHundredMillilitresInTwoHundredAndFiftyAreTooMuchForFoam() {
        CalculationResult result = run(new DegassingCalculation(), "mixVolume", "100 ml");
        assertTrue(result.findings().get(0).message().text().contains("take a cup of 300 ml"), result.findings().get(0).message().text());
        assertEquals("mixVolume", run(new DegassingCalculation(), "mixVolume", "300 ml").refused().input());
    }

    @Test
    void belowTheVapourPressureOfWaterItSaysSo() {
        assertTrue(run(new DegassingCalculation(), "reading", "1 kPa").findings().stream().anyMatch(f -> f.message().text().contains("water boils")));
    }

    @Test
    void withoutAnActivationEnergyTheWorkingTimeIsABand() {
        var band = run(new WorkingTimeCalculation(), "temperature", "33 degC").results().get("time");
        assertEquals(20 / 1.941, band.likely(), 0.005);
        assertTrue(band.low() < band.likely() && band.likely() < band.high());
        var known = run(new WorkingTimeCalculation(), "temperature", "33 degC", "activationEnergy", "50").results().get("time");
        assertEquals(known.low(), known.high());
    }

    @Test
    void aBiggerCupIsShorterByARoughBand() {
        var sheet = run(new WorkingTimeCalculation(), "temperature", "23 degC", "sheetMass", "100 g").results().get("time");
        assertEquals(20, sheet.likely(), 1e-9);
        var big = run(new WorkingTimeCalculation(), "temperature", "23 degC", "sheetMass", "100 g", "mass", "1 kg");
        assertTrue(big.results().get("time").high() < 20 && big.results().get("time").low() < big.results().get("time").high());
        assertTrue(big.findings().stream().anyMatch(f -> f.message().text().startsWith("From 100 g to 1000 g")));
    }

    @Test
    void packedFillerIsRefused() {
        assertEquals("phi", run(new FillerStiffnessCalculation(), "phi", "0.6", "packing", "0.55").refused().input());
    }

    @Test
    void dampGivesMoreGasThanOnePerCent() {
        assertEquals(Severity.CAUTION, run(new MoistureCalculation()).findings().get(0).severity());
        assertEquals(67.9, value(run(new MoistureCalculation()), "gasVolume"), 0.05);
    }

    @Test
    void netIsGrossLessTareAndNeverNegative() {
        assertEquals(22.88, value(run(new GrossNetCalculation()), "net"), 1e-9);
        assertEquals("gross", run(new GrossNetCalculation(), "tare", "40 g").refused().input());
    }

    @Test
    void tenPartsNeedAsManyPotsAsTheWorkingTimeAsks() {
        CalculationResult result = run(new PotsCalculation());
        assertEquals("2", result.results().get("pots").text());
        assertEquals("5", result.results().get("partsAPot").text());
        assertEquals(76.26 / 2, value(result, "potA"), 1e-9);
        assertEquals("workingTime", run(new PotsCalculation(), "before", "18 min").refused().input());
        assertEquals(5, Pots.fitting(20, 7, 2, 1.3));
        assertEquals(0, Pots.fitting(20, 20, 2, 1.3));
        assertEquals(4, new Pots(10, 3).pots());
        assertEquals(3, new Pots(10, 3).fullest());
    }

    @Test
    void aMoleOfKohMayBeCountedExactly() {
        CalculationResult rounded = run(new IndexCalculation(), "nco", "9 %", "hydroxylValue", "120", "extender", "0 g", "weighed", "100 g");
        CalculationResult exact = run(new IndexCalculation(), "nco", "9 %", "hydroxylValue", "120", "extender", "0 g", "weighed", "100 g", "koh", "exact");
        expect("processes/A4 constants NCO, KOH(old weights), EWwater.2", 120 * value(exact, "polyolEquivalent"), KohMass.WEIGHTS.display());
        assertEquals(KohMass.EXACT.milligrams() / 56100, value(exact, "actualIndex") / value(rounded, "actualIndex"), 1e-12);
    }

    /** Water at 20 degC weighs 0.9982 g/cm3, at 4 degC 1.0000 and at 25 degC 0.9970 (tables, from memory). */
    @Test
    void volumesByWaterAndByMassAskWhenTheyDisagree() {
        assertEquals(10 / 0.9982, value(run(new VolumeByWaterCalculation(), "water", "10 g", "celsius", "20 degC"), "volume"), 0.0005);
        assertEquals(10 / 0.9970, value(run(new VolumeByWaterCalculation(), "water", "10 g", "celsius", "25 degC"), "volume"), 0.0005);
        assertEquals(10, value(run(new VolumeByWaterCalculation(), "water", "10 g", "celsius", "4 degC"), "volume"), 0.0005);
        assertEquals("water", run(new VolumeByWaterCalculation(), "water", "0 g").refused().input());
        assertEquals(12, value(run(new VolumeByMassCalculation(), "mass", "12.84 g", "density", "1.07 g/cm3"), "volume"), 1e-9);
        CalculationResult near = run(new VolumeByMassCalculation(), "mass", "12.84 g", "density", "1.07 g/cm3", "drawn", "11.5 ml");
        assertTrue(near.findings().isEmpty(), near.findings().toString());
        CalculationResult apart = run(new VolumeByMassCalculation(), "mass", "12.84 g", "density", "1.07 g/cm3", "drawn", "11.4 ml");
        assertEquals(5.263, value(apart, "apart"), 0.0005);
        assertTrue(apart.findings().getFirst().message().text().contains("Which of them is it?"), apart.findings().toString());
        assertTrue(run(new VolumeByWaterCalculation(), "water", "12 g", "drawn", "11 ml").findings().stream().anyMatch(f -> f.message().text().contains("Which of them is it?")));
    }
}
