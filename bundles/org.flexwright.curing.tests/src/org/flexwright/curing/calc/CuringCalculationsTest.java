package org.flexwright.curing.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.find.Severity;
import org.junit.jupiter.api.Test;

/** What the forms say, typed as a person would. */
class CuringCalculationsTest {

    private static CalculationResult run(Calculation<?, ?> calculation, String... typed) {
        Map<String, String> map = new java.util.HashMap<>();
        for (int i = 0; i < typed.length; i += 2) {
            map.put(typed[i], typed[i + 1]);
        }
        return CalculationRunner.run(calculation, map);
    }

    private static double value(CalculationResult result, String name) {
        return result.results().get(name).likely();
    }

    @Test
    void twoHoursAtSixtyDegreesAreADayOrSoAtRoomTemperature() {
        CalculationResult result = run(new ScheduleCalculation(), "stretches", "120; 60; no", "activationEnergy", "56");
        assertEquals(25.00, value(result, "equivalent"), 0.005);
        assertEquals(100 * 25.00 / 16, value(result, "share"), 0.05);
        assertTrue(result.findings().stream().noneMatch(f -> f.severity() == Severity.CAUTION));
    }

    @Test
    void withoutAnOwnActivationEnergyTheBandIsWideAndSaysSo() {
        CalculationResult result = run(new ScheduleCalculation(), "stretches", "120; 60; no");
        var band = result.results().get("equivalent");
        assertTrue(band.low() < 12 && band.high() > 50, band.toString());
        assertTrue(result.findings().get(0).message().text().contains("assumed"));
    }

    @Test
    void aTooShortScheduleSaysByHowMuch() {
        CalculationResult result = run(new ScheduleCalculation(), "stretches", "60; 23; no", "activationEnergy", "50");
        assertTrue(result.findings().get(0).message().text().startsWith("The likely cure is 6.25 % of what is wanted: short by 15 h at 23"),
                result.findings().get(0).message().text());
    }

    @Test
    void anEmptyScheduleIsRefused() {
        assertEquals("stretches", run(new ScheduleCalculation(), "stretches", "0; 60; no").refused().input());
    }

    @Test
    void aMixtureThatNeverGelsIsRefusedWithBothConversions() {
        CalculationResult result = run(new GelPointCalculation(), "index", "40");
        assertFalse(result.done());
        assertTrue(result.refused().why().contains("112"), result.refused().why());
        assertEquals(70.711, value(run(new GelPointCalculation()), "hydroxylAt"), 5e-4);
    }

    @Test
    void aGelledResinIsSaidToBeGelledNotInfinite() {
        CalculationResult result = run(new ViscosityCalculation(), "time", "100000 s");
        assertEquals("gelled", result.results().get("state").value());
        assertEquals(null, result.results().get("now").likely());
    }

    @Test
    void aBiggerCupIsShorter() {
        double big = value(run(new CupCalculation(), "batch", "500 g"), "workingTime");
        double small = value(run(new CupCalculation(), "batch", "20 g"), "workingTime");
        assertEquals(1360.1 / 60, big, 0.001);
        assertEquals(1481.6 / 60, small, 0.001);
    }

    @Test
    void aPartBetweenWarmWallsFollowsTheWorkedCase() {
        CalculationResult result = run(new PartCureCalculation(), "time", "10 min");
        assertEquals(336.877 - 273.15, value(result, "centre"), 0.002);
        assertEquals(40.163, value(result, "conversion"), 0.002);
    }

    @Test
    void aThickSourceRunsAway() {
        assertEquals(Severity.STOP, run(new InternalHeatCalculation(), "thickness", "200 mm").findings().get(0).severity());
        assertEquals(12.5, value(run(new InternalHeatCalculation()), "rise"), 1e-9);
    }

    @Test
    void aCentreBeyondTheOvenIsRefused() {
        assertEquals("wanted", run(new WarmUpCalculation(), "wanted", "70 degC").refused().input());
        assertEquals("oven", run(new WarmUpCalculation(), "oven", "23 degC").refused().input());
    }

    /** The time to the wanted centre, put in as time, gives that centre. */
    @Test
    void warmingThereAndBackAgrees() {
        double minutes = value(run(new WarmUpCalculation()), "timeTo");
        assertEquals(55, value(run(new WarmUpCalculation(), "time", minutes + " min"), "centre"), 1e-4);
    }

    @Test
    void aMouldIsBiggerThanItsPart() {
        CalculationResult result = run(new ShrinkageCalculation());
        assertEquals(0.6712, value(result, "linear"), 5e-5);
        assertTrue(value(result, "scale") > 1);
    }

    @Test
    void theSlowSetIsNearlyDoneAfterADayAtSixtyDegrees() {
        assertEquals(87.29, value(run(new PublishedCureCalculation()), "conversion"), 0.005);
    }

    @Test
    void theFastSetIsSlowedBeyondHalfConversionAndTheFoamUsesItsWater() {
        double plain = value(run(new PublishedCureCalculation(), "set", "fast-rigid", "temperature", "23.85 degC", "time", "603.81 s"), "conversion");
        assertEquals(50, plain, 0.001);
        double late = value(run(new PublishedCureCalculation(), "set", "fast-rigid", "temperature", "23.85 degC", "time", "6832.6 s"), "conversion");
        assertEquals(85, late, 0.001);
        assertEquals(6832.6 / 3600, value(run(new PublishedCureCalculation(), "set", "fast-rigid", "temperature", "23.85 degC"), "timeTo"), 0.0001);
        CalculationResult foam = run(new PublishedCureCalculation(), "set", "foam", "temperature", "50 degC", "time", "60 s");
        assertEquals(100 * (1 - Math.exp(-7.2832e-3 * 60)), value(foam, "water"), 0.01);
        assertTrue(value(foam, "conversion") > 0 && value(foam, "conversion") < 100);
    }

    @Test
    void aWarmCupFeelsThinUntilJustBeforeItGels() {
        CalculationResult result = run(new ViscosityCalculation(), "constants", "set-1", "temperature", "23.85 degC", "rise", "142.42 K");
        assertTrue(result.findings().stream().anyMatch(f -> f.message().text().contains("0.1383 Pa s at a conversion of 34.1 %")), result.findings().toString());
    }

    @Test
    void earlyOnTheOneTermTablesAreWrongAndItSaysSo() {
        assertTrue(run(new WarmUpCalculation(), "time", "1 min").findings().stream().anyMatch(f -> f.message().text().contains("one-term")));
        assertTrue(run(new WarmUpCalculation(), "time", "60 min").findings().stream().noneMatch(f -> f.message().text().contains("one-term")));
    }

    @Test
    void theFastestMomentIsKnownForSimpleOrdersOnly() {
        assertEquals(40, value(run(new AutocatalyticCalculation()), "fastest"), 1e-9);
        assertEquals(null, run(new AutocatalyticCalculation(), "n", "1.5").results().get("fastest").likely());
    }
}
