package org.flexwright.filament;

import static org.flexwright.filament.Bench.ask;
import static org.flexwright.filament.Bench.step;
import static org.flexwright.filament.Bench.trial;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.filament.data.Drying;
import org.flexwright.filament.data.FilamentDataFactory;
import org.flexwright.filament.data.Printing;
import org.junit.jupiter.api.Test;

class FilamentRulesTest {

    private static Printing printing() {
        Printing printing = FilamentDataFactory.eINSTANCE.createPrinting();
        printing.setStrandDiameter(1.75);
        printing.setStrandModulus(12.0);
        printing.setFreeLength(10.0);
        return printing;
    }

    private static List<Finding> print(FindingRule rule, Printing printing) {
        return ask(rule, trial(step(PrintStep.ID, printing)));
    }

    private static Severity withPush(double push) {
        Printing printing = printing();
        printing.setPushForce(push);
        List<Finding> found = print(new BucklingRule(), printing);
        return found.isEmpty() ? null : found.get(0).severity();
    }

    @Test
    void thePushIsHeldAgainstTheBandOfTheEnds() {
        // Euler: 0.5453 N with ends free to turn, 2.181 N with ends held fast
        assertEquals(null, withPush(0.545));
        assertEquals(Severity.CAUTION, withPush(0.546));
        assertEquals(Severity.CAUTION, withPush(2.18));
        assertEquals(Severity.STOP, withPush(2.19));
    }

    @Test
    void aSlowerPrintNeedsLessPush() {
        Printing printing = printing();
        printing.setConsistency(5000.0);
        printing.setFlowIndex(0.5);
        printing.setNozzleDiameter(0.4);
        printing.setNozzleLength(1.0);
        printing.setLineWidth(0.45);
        printing.setLayerHeight(0.2);
        printing.setPlannedSpeed(2 / 0.09);
        Finding stop = print(new BucklingRule(), printing).get(0);
        assertEquals(Severity.STOP, stop.severity());
        assertEquals("The print needs a push of 2.4 N; a free strand of 10 mm with a modulus of 12 MPa (typed) buckles at 2.18 N even when both ends are held fast.",
                stop.message().text());
        printing.setActualSpeed(1.0);
        assertTrue(print(new BucklingRule(), printing).isEmpty());
    }

    @Test
    void aMeasuredPushCountsBeforeTheCalculatedOne() {
        Printing printing = printing();
        printing.setConsistency(5000.0);
        printing.setFlowIndex(0.5);
        printing.setNozzleDiameter(0.4);
        printing.setNozzleLength(1.0);
        printing.setLineWidth(0.45);
        printing.setLayerHeight(0.2);
        printing.setPlannedSpeed(20.0);
        printing.setPushForce(0.1);
        assertTrue(print(new BucklingRule(), printing).isEmpty());
    }

    @Test
    void withoutAPushNothingIsSaid() {
        assertTrue(print(new BucklingRule(), printing()).isEmpty());
    }

    @Test
    void aStrandLongOutOfTheDryBoxIsFound() {
        Printing printing = printing();
        printing.setHoursOut(8.0);
        assertTrue(print(new DampStrandRule(), printing).isEmpty());
        printing.setHoursOut(72.0);
        Finding damp = print(new DampStrandRule(), printing).get(0);
        assertEquals("hoursOut", damp.feature());
        // the drying calculation tells the same of the way out as this finding of the way in
        double least = gone(WaterBand.SLOWEST);
        double most = gone(WaterBand.FASTEST);
        assertTrue(damp.message().text().contains(org.flexwright.core.Rounded.text(least, "")), damp.message().text());
        assertTrue(damp.message().text().contains(org.flexwright.core.Rounded.text(most, "%")), damp.message().text());
    }

    private static double gone(double diffusivity) {
        return Ran.done(new DiffusionCalculation(), new DiffusionCalculation.Inputs(DryingShape.CYLINDER, 0.875, diffusivity, 72 * 3600, 10)).gone();
    }

    private static List<Finding> dry(Drying drying) {
        return ask(new DryingRule(), trial(step(DryStep.ID, drying)));
    }

    private static Drying drying(double celsius, double hours) {
        Drying drying = FilamentDataFactory.eINSTANCE.createDrying();
        drying.setPlannedTemperature(celsius);
        drying.setPlannedHours(hours);
        return drying;
    }

    @Test
    void waterLeftIsSurelyPerhapsOrNotTooMuch() {
        // at 65 degC 90 % is out after 2.05 h at the fast end and 21 h at the slow end of what is published
        assertEquals(Severity.CAUTION, dry(drying(65, 2)).get(0).severity());
        assertEquals(Severity.NOTE, dry(drying(65, 2.1)).get(0).severity());
        assertEquals(Severity.NOTE, dry(drying(65, 20.9)).get(0).severity());
        assertTrue(dry(drying(65, 21.2)).isEmpty());
    }

    @Test
    void ownDiffusivityReplacesThePublishedOne() {
        Drying drying = drying(65, 3);
        drying.setDiffusivity(3.4e-12);
        drying.setActivationEnergy(46.024);
        assertTrue(dry(drying).isEmpty());
        drying.setActualHours(2.0);
        Finding wet = dry(drying).get(0);
        assertEquals("actualHours", wet.feature());
        assertFalse(wet.source().display().contains("preprint"));
    }

    @Test
    void dryingAtItsSofteningIsFound() {
        Drying drying = drying(60, 100);
        drying.setSoftening(60.0);
        assertEquals("drying.sticks", dry(drying).get(0).message().key());
        drying.setActualTemperature(55.0);
        assertTrue(dry(drying).isEmpty());
    }

    @Test
    void aLightPrintIsUnderExtruded() {
        assertTrue(weighed(10, 9.6).isEmpty());
        Finding under = weighed(10, 8.9).get(0);
        assertEquals(Severity.CAUTION, under.severity());
        assertEquals("The print weighs 8.9 g, 11 % less than the 10 g that were to be laid: lines are thin or missing.", under.message().text());
        assertTrue(under.remedy().text().endsWith("set the flow to 1.12 times what it was."));
        assertEquals(Severity.NOTE, weighed(10, 10.6).get(0).severity());
    }

    private static List<Finding> weighed(double planned, double actual) {
        Printing printing = printing();
        printing.setPlannedMass(planned);
        printing.setActualMass(actual);
        return print(new UnderExtrusionRule(), printing);
    }

    @Test
    void theStepsSayWhatTheyNeedAndLeave() {
        Printing printing = printing();
        printing.setPushForce(0.5);
        var push = new PrintStep().advice(step(PrintStep.ID, printing), null);
        assertEquals(0.5, push.get(0).value().likely(), 0);
        assertEquals(0.5453, push.get(1).value().low(), 0.00005);
        assertEquals(2.181, push.get(1).value().high(), 0.0005);
        var left = new DryStep().advice(step(DryStep.ID, drying(65, 2.05)), trial()).get(0).value();
        // 2.05 h leaves 10 % at the fast end
        assertEquals(10, left.low(), 0.05);
        assertTrue(left.high() > left.likely() && left.likely() > left.low());
        assertEquals(List.of(), new DryStep().advice(step(DryStep.ID, FilamentDataFactory.eINSTANCE.createDrying()), trial()));
    }

    @Test
    void promptsHaveWords() {
        List<HazardPrompt> prompts = Stream.concat(new DryStep().prompts(step(DryStep.ID, null), null).stream(),
                new PrintStep().prompts(step(PrintStep.ID, null), null).stream()).toList();
        assertEquals(List.of("filament.dryer", "filament.hot-end", "filament.fumes"), prompts.stream().map(HazardPrompt::id).toList());
        prompts.forEach(prompt -> assertFalse(prompt.hazard().text().isBlank() || prompt.controls().text().isBlank()));
    }
}
