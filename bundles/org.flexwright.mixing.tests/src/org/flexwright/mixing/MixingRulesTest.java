package org.flexwright.mixing;

import static org.flexwright.mixing.Bench.ask;
import static org.flexwright.mixing.Bench.ratio;
import static org.flexwright.mixing.Bench.step;
import static org.flexwright.mixing.Bench.use;
import static org.flexwright.model.PartRole.COMPONENT_A;
import static org.flexwright.model.PartRole.COMPONENT_B;
import static org.flexwright.model.PartRole.FILLER;
import static org.flexwright.model.PartRole.PIGMENT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.process.StepKind;
import org.flexwright.mixing.data.Basis;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.FillerBasis;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.MixingDataFactory;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.data.WorkingTimeRule;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MixingRulesTest {

    private static List<Finding> ratioOf(double weighedA, double weighedB) {
        return ask(new RatioRule(), step(WeighStep.ID, ratio(22.88, 21.57), use(COMPONENT_A, 22.88, weighedA), use(COMPONENT_B, 21.57, weighedB)));
    }

    @Test
    void aRatioFarOffStopsAndSaysHowManyGramsOfWhich() {
        Finding finding = ratioOf(24.88, 21.57).get(0);
        assertEquals(Severity.STOP, finding.severity());
        assertEquals("s-mixing.weigh", finding.subject());
        assertEquals("Weigh the batch: B to A is -8.04 % off the plan (own limit 2 %); B is short.", finding.message().text());
        assertEquals("Add 1.89 g of B before mixing; nothing can be taken out again.", finding.remedy().text());
    }

    @Test
    void betweenOnceAndTwiceTheLimitIsACautionAndInsideNothing() {
        assertEquals(Severity.CAUTION, ratioOf(22.88, 21.57 * 1.03).get(0).severity());
        assertEquals(Severity.STOP, ratioOf(22.88, 21.57 * 1.05).get(0).severity());
        assertTrue(ratioOf(22.88, 21.57 * 1.019).isEmpty());
    }

    @Test
    void theHashChangesWhenTheCupDoes() {
        assertFalse(ratioOf(24.88, 21.57).get(0).restsOn().equals(ratioOf(24.88, 21.58).get(0).restsOn()));
    }

    @Test
    void plannedGramsThatContradictTheRatioAreFound() {
        List<Finding> found = ask(new RatioRule(), step(WeighStep.ID, ratio(100, 50), use(COMPONENT_A, 40.0), use(COMPONENT_B, 40.0)));
        assertEquals("Plan 20 g of B for the planned A, or correct the ratio.", found.get(0).remedy().text());
        assertTrue(ask(new RatioRule(), step(WeighStep.ID, ratio(100, 50), use(COMPONENT_A, 40.0), use(COMPONENT_B, 20.0))).isEmpty());
    }

    @Test
    void aRatioByVolumeAsksForTheMissingDensity() {
        WeighDetails details = ratio(100, 90);
        details.setBasis(Basis.VOLUME);
        details.setDensityA(1.05);
        List<Finding> found = ask(new RatioRule(), step(WeighStep.ID, details));
        assertEquals("densityB", found.get(0).feature());
        details.setDensityB(1.1);
        assertTrue(ask(new RatioRule(), step(WeighStep.ID, details)).isEmpty());
    }

    @Test
    void anAmountOfFillerMustSayOfWhat() {
        WeighDetails details = ratio(100, 50);
        details.setFiller(10.0);
        Step step = step(WeighStep.ID, details, use(COMPONENT_A, 100.0), use(COMPONENT_B, 50.0), use(FILLER, 15.0));
        Finding finding = ask(new FillerBasisRule(), step).get(0);
        assertEquals("Weigh the batch: 10 of filler, but not on what. On 100 g of polymer it is 15 g, of the total it is 16.67 g.", finding.message().text());
        details.setFillerBasis(FillerBasis.PHR);
        assertTrue(ask(new FillerBasisRule(), step).isEmpty());
        details.setFillerBasis(FillerBasis.OF_B);
        assertEquals("Plan 5 g, or correct the stated amount.", ask(new FillerBasisRule(), step).get(0).remedy().text());
    }

    @Test
    void aBalanceWithCoarseStepsUsesUpTheLimitOfASmallBatch() {
        Instrument balance = ModelFactory.eINSTANCE.createInstrument();
        balance.setKind("balance");
        balance.setUnit("g");
        balance.setResolution(0.1);
        Session session = ModelFactory.eINSTANCE.createSession();
        session.getInstruments().add(balance);
        Step small = step(WeighStep.ID, ratio(10, 1), use(COMPONENT_A, 20.0), use(COMPONENT_B, 2.0));
        assertTrue(ask(new BalanceRule(), small).isEmpty(), "no balance is known yet");
        small.setSession(session);
        Finding finding = ask(new BalanceRule(), small).get(0);
        assertTrue(finding.message().text().contains("2.05 %"), finding.message().text());
        assertTrue(finding.remedy().text().contains("at least 4.1 g"), finding.remedy().text());
        balance.setResolution(0.01);
        assertTrue(ask(new BalanceRule(), small).isEmpty());
        small.getUses().get(0).getWeighings().addAll(use(COMPONENT_A, null, 20.0).getWeighings());
        Instrument kitchen = ModelFactory.eINSTANCE.createInstrument();
        kitchen.setUnit("g");
        kitchen.setResolution(1.0);
        small.getUses().get(0).getWeighings().get(0).setInstrument(kitchen);
        assertEquals(1, ask(new BalanceRule(), small).size(), "the balance really used counts");
    }

    @Test
    void muchPigmentPasteIsACaution() {
        assertTrue(ask(new PigmentRule(), step(WeighStep.ID, null, use(COMPONENT_A, 97.0), use(PIGMENT, 3.0))).isEmpty());
        assertTrue(ask(new PigmentRule(), step(WeighStep.ID, null, use(COMPONENT_A, 95.0), use(PIGMENT, 5.0))).get(0).message().text().contains("5 %"));
    }

    private static List<Finding> cup(Double cup, Double mixture) {
        DegasDetails details = MixingDataFactory.eINSTANCE.createDegasDetails();
        details.setCupVolume(cup);
        details.setMixVolume(mixture);
        return ask(new CupRule(), step(DegasStep.ID, details));
    }

    @Test
    void foamNeedsRoom() {
        assertEquals(Severity.CAUTION, cup(250.0, 100.0).get(0).severity());
        assertEquals("Take a cup of at least 300 ml, or degas in smaller portions.", cup(250.0, 100.0).get(0).remedy().text());
        assertEquals(Severity.STOP, cup(90.0, 100.0).get(0).severity());
        assertTrue(cup(300.0, 100.0).isEmpty());
        assertEquals(Severity.NOTE, cup(null, 100.0).get(0).severity());
    }

    @Test
    void aWorkingTimeNeedsItsDefinition() {
        MixDetails details = MixingDataFactory.eINSTANCE.createMixDetails();
        Step step = step(MixStep.ID, details);
        assertTrue(ask(new WorkingTimeLeftRule(), step).isEmpty());
        details.setWorkingTime(20.0);
        assertTrue(ask(new WorkingTimeLeftRule(), step).get(0).message().text().contains("what ends it, the mass in the cup, the temperature"));
        details.setWorkingTimeRule(WorkingTimeRule.VISCOSITY_DOUBLES);
        details.setWorkingTimeMass(100.0);
        details.setWorkingTimeC(23.0);
        assertTrue(ask(new WorkingTimeLeftRule(), step).isEmpty());
    }

    @Test
    void fillingMustEndWellBeforeTheWorkingTime() {
        MixDetails details = MixingDataFactory.eINSTANCE.createMixDetails();
        details.setWorkingTime(20.0);
        details.setWorkingTimeRule(WorkingTimeRule.GELS);
        details.setWorkingTimeMass(100.0);
        details.setWorkingTimeC(23.0);
        Step fill = step("moulding.fill", null);
        fill.setPlannedStart(6.0);
        fill.setPlannedDuration(10.0);
        assertTrue(ask(new WorkingTimeLeftRule(), step(MixStep.ID, details), fill).isEmpty());
        fill.setPlannedStart(8.0);
        assertEquals(Severity.CAUTION, ask(new WorkingTimeLeftRule(), step(MixStep.ID, details), fill).get(0).severity());
        fill.setPlannedStart(12.0);
        Finding stop = ask(new WorkingTimeLeftRule(), step(MixStep.ID, details), fill).get(0);
        assertEquals(Severity.STOP, stop.severity());
        assertTrue(stop.remedy().text().contains("by 7 min"), stop.remedy().text());
    }

    /** The time the sheet gives is not the time in a warmer room: the rule asks for the one here. */
    @Test
    void theWorkingTimeCountsAsItIsInThisRoomAndCup() {
        MixDetails details = MixingDataFactory.eINSTANCE.createMixDetails();
        details.setWorkingTime(20.0);
        details.setWorkingTimeRule(WorkingTimeRule.VISCOSITY_DOUBLES);
        details.setWorkingTimeMass(100.0);
        details.setWorkingTimeC(23.0);
        Step fill = step("moulding.fill", null);
        fill.setPlannedStart(5.0);
        fill.setPlannedDuration(6.0);
        Step mix = step(MixStep.ID, details, use(COMPONENT_A, 50.0), use(COMPONENT_B, 50.0));
        assertTrue(ask(new WorkingTimeLeftRule(), mix, fill).isEmpty());
        mix.setSession(ModelFactory.eINSTANCE.createSession());
        mix.getSession().setRoomC(33.0);
        Finding stop = ask(new WorkingTimeLeftRule(), mix, fill).get(0);
        assertEquals(Severity.STOP, stop.severity());
        assertTrue(stop.message().text().contains("the working time here is 10 (7 \u2026 13) min"), stop.message().text());
        Trial trial = (Trial) mix.eContainer();
        var advice = new MixStep().advice(mix, trial, StepKinds.of(new MixStep())).get(0);
        assertEquals(20 / 1.941, advice.value().likely(), 0.005);
        assertEquals("Working time for 100 g at 33 \u00b0C", advice.label());
        assertTrue(advice.remark().message().text().endsWith("until its viscosity has doubled."), advice.remark().message().text());
        mix.getSession().setRoomC(23.0);
        assertTrue(new MixStep().advice(mix, trial, StepKinds.of(new MixStep())).isEmpty(), "what the sheet says is not said twice");
    }

    @Test
    void anUnscrapedCupIsFoundOnlyWhenSomebodySaidSo() {
        MixDetails details = MixingDataFactory.eINSTANCE.createMixDetails();
        assertTrue(ask(new WorkingTimeLeftRule(), step(MixStep.ID, details)).isEmpty());
        details.setScraped(false);
        assertEquals("scraped", ask(new WorkingTimeLeftRule(), step(MixStep.ID, details)).get(0).feature());
    }

    @Test
    void stepKindsDescribeTheirFields() {
        for (StepKind kind : List.of(new WeighStep(), new MixStep(), new DegasStep())) {
            FieldDescriptors.ofClass(kind.details()).forEach(f -> assertFalse(f.help().isBlank(), () -> kind.id() + "." + f.name()));
            kind.prompts(step(kind.id(), null, use(FILLER, 1.0)), null).forEach(p -> {
                assertFalse(p.hazard().text().isBlank());
                assertFalse(p.controls().text().isBlank());
            });
        }
        assertTrue(new WeighStep().prompts(step(WeighStep.ID, null, use(COMPONENT_A, 1.0)), null).isEmpty());
    }

    @Test
    void propertiesHaveTheirAgreedIds() {
        assertEquals(Set.of("mixing.viscosity", "mixing.working-time", "mixing.nco-content", "mixing.hydroxyl-value", "mixing.water-content", "mixing.oil-absorption"),
                new MixingProperties().properties().stream().map(p -> p.id()).collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @EnumSource(Say.class)
    void everySentenceHasWords(Say sentence) {
        String text = sentence.with("1", "2", "3", "4", "5", "6", "7", "8").text();
        assertFalse(text.isBlank() || text.contains("{") || text.contains("''"), text);
    }

    @Test
    void noWordsAreLeftOver() {
        assertEquals(Stream.of(Say.values()).map(Say::key).collect(Collectors.toSet()), ResourceBundle.getBundle("org.flexwright.mixing.messages").keySet());
    }
}
