package org.flexwright.vatprint;

import static org.flexwright.vatprint.Bench.ask;
import static org.flexwright.vatprint.Bench.step;
import static org.flexwright.vatprint.Bench.trial;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.vatprint.data.PostCureMedium;
import org.flexwright.vatprint.data.PostCuring;
import org.flexwright.vatprint.data.Printing;
import org.flexwright.vatprint.data.VatprintDataFactory;
import org.flexwright.vatprint.data.WashSolvent;
import org.flexwright.vatprint.data.Washing;
import org.junit.jupiter.api.Test;

class VatprintRulesTest {

    private static Printing printing(double exposure) {
        Printing printing = VatprintDataFactory.eINSTANCE.createPrinting();
        printing.setLayerHeight(50.0);
        printing.setOverCure(25.0);
        printing.setIrradiance(2.5);
        printing.setPenetrationDepth(150.0);
        printing.setCriticalDose(6.0);
        printing.setPlannedExposure(exposure);
        return printing;
    }

    private static List<Finding> print(FindingRule rule, Printing printing) {
        return ask(rule, trial(step(PrintStep.ID, printing)));
    }

    @Test
    void tooLittleLightSplitsTheLayers() {
        // Ec exp(50 / 150) = 8.374 mJ/cm² = 3.350 s cures a layer just through
        assertEquals(Severity.CAUTION, print(new DoseRule(), printing(3.36)).get(0).severity());
        Finding split = print(new DoseRule(), printing(3.34)).get(0);
        assertEquals(Severity.STOP, split.severity());
        assertEquals("plannedExposure", split.feature());
        assertEquals("A dose of 8.35 mJ/cm² cures 49.6 µm deep, less than the layer of 50 µm: layers will split.", split.message().text());
        assertEquals("Expose about 3.96 s, or measure your own working curve again.", split.remedy().text());
    }

    @Test
    void enoughForLayerAndOverCureIsFine() {
        assertTrue(print(new DoseRule(), printing(3.96)).isEmpty());
        assertEquals(Severity.CAUTION, print(new DoseRule(), printing(3.95)).get(0).severity());
    }

    @Test
    void atTheCriticalDoseNothingCures() {
        assertEquals("A dose of 6 mJ/cm² is no more than the critical dose of 6 mJ/cm²: nothing cures.",
                print(new DoseRule(), printing(2.4)).get(0).message().text());
        assertEquals(Severity.STOP, print(new DoseRule(), printing(0)).get(0).severity());
    }

    @Test
    void theExposureUsedCountsBeforeThePlannedOne() {
        Printing printing = printing(4);
        printing.setActualExposure(3.0);
        assertEquals("actualExposure", print(new DoseRule(), printing).get(0).feature());
    }

    @Test
    void withoutAWorkingCurveNothingIsSaidOfDose() {
        Printing printing = printing(1);
        printing.setPenetrationDepth(null);
        assertTrue(print(new DoseRule(), printing).isEmpty());
    }

    @Test
    void anExposureForAnotherLayerHeightIsFound() {
        Printing printing = printing(4);
        printing.setExposureForLayer(50.0);
        assertTrue(print(new CopiedExposureRule(), printing).isEmpty());
        printing.setExposureForLayer(25.0);
        assertTrue(print(new CopiedExposureRule(), printing).get(0).message().text().endsWith("are thicker and need more light."));
        printing.setExposureForLayer(100.0);
        assertTrue(print(new CopiedExposureRule(), printing).get(0).message().text().endsWith("get more light than they need."));
    }

    @Test
    void washingNeitherHurriedNorLong() {
        assertEquals("wash.short", wash(0.9, WashSolvent.ISOPROPANOL).get(0).message().key());
        assertTrue(wash(1, WashSolvent.ISOPROPANOL).isEmpty());
        assertTrue(wash(10, WashSolvent.ISOPROPANOL).isEmpty());
        assertEquals("wash.long", wash(10.1, WashSolvent.ISOPROPANOL).get(0).message().key());
        assertTrue(wash(30, WashSolvent.WATER).isEmpty());
    }

    private static List<Finding> wash(double minutes, WashSolvent solvent) {
        Washing washing = VatprintDataFactory.eINSTANCE.createWashing();
        washing.setSolvent(solvent);
        washing.setPlannedMinutes(minutes);
        return ask(new WashRule(), trial(step(WashStep.ID, washing)));
    }

    @Test
    void aWashThatLeavesResinIsFound() {
        Washing washing = VatprintDataFactory.eINSTANCE.createWashing();
        washing.setBathVolume(200.0);
        washing.setCarriedVolume(5.0);
        washing.setBaths(1);
        assertEquals("About 2.44 % of the resin that clings to the part is left after the last bath, more than 1 %.",
                ask(new WashRule(), trial(step(WashStep.ID, washing))).get(0).message().text());
        washing.setBaths(2);
        assertTrue(ask(new WashRule(), trial(step(WashStep.ID, washing))).isEmpty());
    }

    @Test
    void aPartThatIsNotDryIsFoundBeforeLight() {
        PostCuring cure = VatprintDataFactory.eINSTANCE.createPostCuring();
        assertEquals("postcure.no-drying", postCure(cure).get(0).message().key());
        cure.setPlannedDryMinutes(60.0);
        assertTrue(postCure(cure).isEmpty());
        cure.setActualDryMinutes(0.0);
        assertEquals("actualDryMinutes", postCure(cure).get(0).feature());
        cure.setMassSteady(true);
        assertTrue(postCure(cure).isEmpty());
        cure.setMassSteady(false);
        assertEquals("massSteady", postCure(cure).get(0).feature());
    }

    @Test
    void airIsNoted() {
        PostCuring cure = VatprintDataFactory.eINSTANCE.createPostCuring();
        cure.setPlannedDryMinutes(60.0);
        cure.setMedium(PostCureMedium.AIR);
        assertEquals(Severity.NOTE, postCure(cure).get(0).severity());
        cure.setMedium(PostCureMedium.WATER);
        assertTrue(postCure(cure).isEmpty());
    }

    private static List<Finding> postCure(PostCuring cure) {
        return ask(new PostCureRule(), trial(step(PostCureStep.ID, cure)));
    }

    @Test
    void theStepSaysWhatItsLightDoes() {
        var advice = new PrintStep().advice(step(PrintStep.ID, printing(4)), null);
        assertEquals(List.of("dose", "depth", "needed"), advice.stream().map(a -> a.name()).toList());
        assertEquals(10, advice.get(0).value().likely(), 1e-9);
        assertEquals(76.62, advice.get(1).value().likely(), 0.005);
        assertEquals(3.957, advice.get(2).value().likely(), 0.0005);
        Printing unknown = printing(4);
        unknown.setCriticalDose(null);
        assertEquals(List.of(), new PrintStep().advice(step(PrintStep.ID, unknown), null));
    }

    @Test
    void promptsFollowWhatIsInTheStep() {
        assertEquals(List.of("vatprint.resin", "vatprint.lamp"), ids(new PrintStep().prompts(step(PrintStep.ID, printing(4)), null)));
        Washing washing = VatprintDataFactory.eINSTANCE.createWashing();
        assertEquals(List.of("vatprint.solvent"), ids(new WashStep().prompts(step(WashStep.ID, washing), null)));
        washing.setSolvent(WashSolvent.WATER);
        assertEquals(List.of("vatprint.wash-water"), ids(new WashStep().prompts(step(WashStep.ID, washing), null)));
        assertEquals(List.of("vatprint.lamp", "vatprint.wet-lamp"), ids(new PostCureStep().prompts(step(PostCureStep.ID, null), null)));
    }

    private static List<String> ids(List<HazardPrompt> prompts) {
        prompts.forEach(prompt -> assertFalse(prompt.hazard().text().isBlank() || prompt.controls().text().isBlank()));
        return prompts.stream().map(HazardPrompt::id).toList();
    }
}
