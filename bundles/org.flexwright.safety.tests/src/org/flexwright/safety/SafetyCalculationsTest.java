package org.flexwright.safety;

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
import org.flexwright.core.find.Severity;
import org.flexwright.safety.air.LimitsCalculation;
import org.flexwright.safety.air.MixtureCalculation;
import org.flexwright.safety.air.PpmCalculation;
import org.flexwright.safety.air.PurgeCalculation;
import org.flexwright.safety.air.RoomCalculation;
import org.flexwright.safety.air.ShiftCalculation;
import org.flexwright.safety.air.SolventCalculation;
import org.flexwright.safety.air.SpillCalculation;
import org.flexwright.safety.energy.ExothermCalculation;
import org.flexwright.safety.energy.MoistureGasCalculation;
import org.flexwright.safety.energy.PressurePotCalculation;
import org.flexwright.safety.energy.TouchCalculation;
import org.flexwright.safety.energy.VacuumCalculation;
import org.flexwright.safety.gauge.SmallPartCalculation;
import org.flexwright.safety.light.UvCalculation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Calculations as form and command line run them: from typed text. */
class SafetyCalculationsTest {

    static List<Calculation<?, ?>> all() {
        return List.of(new SpillCalculation(), new RoomCalculation(), new PurgeCalculation(), new PpmCalculation(), new ShiftCalculation(), new MixtureCalculation(),
                new SolventCalculation(), new UvCalculation(), new PressurePotCalculation(), new VacuumCalculation(), new ExothermCalculation(),
                new MoistureGasCalculation(), new TouchCalculation(), new SmallPartCalculation(), new LimitsCalculation());
    }

    @ParameterizedTest
    @MethodSource("all")
    void opensWithAnExampleThatComputes(Calculation<?, ?> calculation) {
        CalculationResult result = CalculationRunner.run(calculation, Map.of());
        assertNull(result.refused(), () -> String.valueOf(result.refused()));
        assertTrue(calculation.info().id().startsWith("safety."));
        for (FieldDescriptor field : CalculationRunner.inputs(calculation)) {
            assertFalse(field.help().isBlank(), field.name());
        }
        result.findings().forEach(f -> assertFalse(f.message().text().isBlank()));
    }

    @Test
    void hundredMillilitresOfIsopropanolInThirtyCubicMetres() {
        CalculationResult result = run(new SpillCalculation());
        assertEquals(1065, likely(result, "ppm"), 0.5);
        assertEquals(2617, likely(result, "milligrams"), 0.5);
        assertTrue(text(result, "comparison").contains("no figure was entered"));
        assertTrue(text(result, "convention").contains("Q/k"));
        assertTrue(says(result, "flammable layer exists near the liquid"));
    }

    @Test
    void aSpillIsComparedWithTheFigureEnteredAndItsSource() {
        CalculationResult above = run(new SpillCalculation(), "limit", "500", "limitSource", "NIOSH short term, 2005");
        assertTrue(text(above, "comparison").contains("above the figure you entered, 500 ppm (NIOSH short term, 2005)"), text(above, "comparison"));
        // 30 m3 at one change an hour and k = 3: time constant 3 h.
        assertEquals(180 * Math.log(1064.5 / 500), likely(above, "minutes"), 0.1);
        CalculationResult below = run(new SpillCalculation(), "limit", "2000");
        assertTrue(text(below, "comparison").contains("below the figure you entered"));
        assertTrue(says(below, "no source and year"));
    }

    @Test
    void aQuarterOfTheLowerExplosiveLimitIsAStop() {
        CalculationResult little = run(new SpillCalculation(), "lower", "2 %");
        assertEquals(5.32, likely(little, "ofLower"), 0.01);
        assertTrue(little.findings().stream().noneMatch(f -> f.severity() == Severity.STOP));
        CalculationResult much = run(new SpillCalculation(), "lower", "2 %", "mass", "400 g");
        assertTrue(much.findings().stream().anyMatch(f -> f.severity() == Severity.STOP));
        assertEquals("mass", run(new SpillCalculation(), "mass", "100 kg").refused().input());
    }

    @Test
    void aWarmThinnerAirHoldsMorePartsPerMillion() {
        assertTrue(likely(run(new SpillCalculation(), "temperature", "35 C", "pressure", "85 kPa"), "ppm") > likely(run(new SpillCalculation()), "ppm"));
    }

    @Test
    void bathInARoom() {
        CalculationResult ideal = run(new RoomCalculation(), "mixing", "1");
        assertEquals(514, likely(ideal, "then"), 0.5);
        assertEquals(814, likely(ideal, "steady"), 0.5);
        CalculationResult usual = run(new RoomCalculation(), "limit", "400", "limitSource", "own");
        assertEquals(2441, likely(usual, "steady"), 0.5);
        assertEquals(814, likely(usual, "steadyOther"), 0.5);
        assertEquals(3 * 0.024409 / 400e-6, likely(usual, "needed"), 0.1);
        assertNotNull(usual.results().get("minutes").value());
        CalculationResult closed = run(new RoomCalculation(), "changes", "0");
        assertNull(closed.results().get("steady").value());
        assertTrue(says(closed, "closed room"));
        assertEquals("rate", run(new RoomCalculation(), "rate", "100000", "hours", "100 h").refused().input());
    }

    @Test
    void airingOut() {
        CalculationResult result = run(new PurgeCalculation(), "start", "100", "target", "25", "changes", "1.2", "mixing", "1");
        assertEquals(69.3, likely(result, "minutes"), 0.05);
        assertEquals(46, likely(run(new PurgeCalculation(), "mixing", "1"), "ninetyNine"), 0.1);
        assertEquals("target", run(new PurgeCalculation(), "target", "2000").refused().input());
    }

    @Test
    void ppmThereAndBack() {
        double milligrams = likely(run(new PpmCalculation()), "milligrams");
        assertEquals(400 * 60.1 / 24.45, milligrams, 1e-9);
        assertEquals(400, likely(run(new PpmCalculation(), "direction", "milligrams", "value", Double.toString(milligrams)), "ppm"), 1e-9);
    }

    @Test
    void aMeanNeverHidesACeiling() {
        CalculationResult result = run(new ShiftCalculation(), "limit", "100", "ceiling", "120", "limitSource", "example of 29 CFR 1910.1000(d)");
        assertEquals(81.25, likely(result, "mean"), 1e-9);
        assertTrue(text(result, "comparison").contains("below the figure"));
        assertTrue(says(result, "above the ceiling"));
        assertTrue(says(run(new ShiftCalculation(), "stretches", "10; 5"), "longer than a shift"));
    }

    @Test
    void mixtures() {
        CalculationResult result = run(new MixtureCalculation());
        assertEquals(0.925, likely(result, "sum"), 1e-9);
        assertTrue(text(result, "comparison").contains("not above"));
        assertTrue(text(run(new MixtureCalculation(), "substances", "a; 2; 1"), "comparison").contains("above 1"));
    }

    @Test
    void liquids() {
        CalculationResult ipa = run(new SolventCalculation());
        assertEquals("yes", text(ipa, "burns"));
        assertTrue(says(ipa, "can catch fire"));
        assertEquals(1.9, likely(ipa, "volumeAtLower"), 0.05);
        assertTrue(says(run(new SolventCalculation(), "liquid", "acetone"), "too rich"));
    }

    @Test
    void lamps() {
        CalculationResult violet = run(new UvCalculation());
        assertEquals(50, likely(violet, "blue"), 1e-9);
        assertNull(violet.results().get("lens").value());
        assertTrue(says(violet, "10 to 20 nm wide"));
        CalculationResult uva = run(new UvCalculation(), "wavelength", "365");
        assertEquals(1000, likely(uva, "lens"), 1e-9);
        assertFalse(says(uva, "10 to 20 nm wide"));
    }

    @Test
    void pressureAndVacuum() {
        CalculationResult pot = run(new PressurePotCalculation());
        assertEquals(4.6, likely(pot, "isentropic"), 0.05);
        assertEquals(10, likely(pot, "brode"), 0.05);
        assertEquals(likely(pot, "brode") / 2, likely(run(new PressurePotCalculation(), "filled", "5 l"), "brode"), 1e-9);
        assertEquals("filled", run(new PressurePotCalculation(), "filled", "10 l").refused().input());
        assertTrue(run(new PressurePotCalculation(), "volume", "200 l").findings().stream().anyMatch(f -> f.severity() == Severity.STOP));
        assertEquals(507, likely(run(new VacuumCalculation()), "kilograms"), 0.5);
    }

    @Test
    void heatAndGas() {
        assertEquals(98, likely(run(new ExothermCalculation()), "hottest"), 1e-9);
        assertTrue(says(run(new ExothermCalculation()), "stopped and spread thin"));
        assertFalse(says(run(new ExothermCalculation(), "groups", "0.5"), "stopped and spread thin"));
        assertEquals(1.36, likely(run(new MoistureGasCalculation()), "gas"), 0.005);
        assertEquals(2.75, likely(run(new MoistureGasCalculation()), "pressure"), 0.005);
    }

    @Test
    void hotSurfaces() {
        CalculationResult metal = run(new TouchCalculation());
        assertTrue(text(metal, "comparison").contains("below the threshold"));
        assertTrue(says(metal, "HOT"));
        assertTrue(text(run(new TouchCalculation(), "temperature", "67"), "comparison").contains("within"));
        assertTrue(text(run(new TouchCalculation(), "temperature", "80"), "comparison").contains("above"));
        assertEquals("contact", run(new TouchCalculation(), "surface", "glass").refused().input());
        assertFalse(says(run(new TouchCalculation(), "temperature", "40"), "HOT"));
    }

    @Test
    void smallParts() {
        assertEquals("fits", text(run(new SmallPartCalculation(), "longest", "20", "middle", "10", "shortest", "10"), "fit"));
        assertEquals("fits", text(run(new SmallPartCalculation()), "fit"), "a dome 28 mm across and 6 mm high");
        assertEquals("cannot tell", text(run(new SmallPartCalculation(), "longest", "60", "middle", "5", "shortest", "5"), "fit"));
        CalculationResult ball = run(new SmallPartCalculation(), "shape", "ball", "longest", "40");
        assertEquals("does not fit", text(ball, "fit"));
        assertEquals("yes", text(ball, "ball"));
        assertTrue(says(ball, "squeezed smaller"));
        assertEquals("middle", run(new SmallPartCalculation(), "middle", "50").refused().input());
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

    private static String text(CalculationResult result, String name) {
        assertNull(result.refused(), () -> String.valueOf(result.refused()));
        return result.results().get(name).text();
    }

    private static boolean says(CalculationResult result, String part) {
        return result.findings().stream().anyMatch(f -> f.message().text().contains(part));
    }
}
