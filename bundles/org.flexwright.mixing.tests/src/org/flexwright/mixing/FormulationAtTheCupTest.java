package org.flexwright.mixing;

import static org.flexwright.mixing.Bench.ask;
import static org.flexwright.mixing.Bench.step;
import static org.flexwright.mixing.Cans.iso;
import static org.flexwright.mixing.Cans.polyol;
import static org.flexwright.mixing.Cans.powder;
import static org.flexwright.mixing.Cans.premix;
import static org.flexwright.mixing.Cans.use;
import static org.flexwright.model.PartRole.COMPONENT_A;
import static org.flexwright.model.PartRole.COMPONENT_B;
import static org.flexwright.model.PartRole.FILLER;
import static org.flexwright.model.PartsOf.UNSTATED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.ResourceBundle;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.mixing.data.DegasDetails;
import org.flexwright.mixing.data.MixingDataFactory;
import org.flexwright.mixing.data.WeighDetails;
import org.flexwright.mixing.formula.MoistureFoam;
import org.flexwright.mixing.formulation.Figure;
import org.flexwright.mixing.formulation.FormulationPlan;
import org.flexwright.mixing.formulation.MaterialFigures;
import org.flexwright.mixing.formulation.MixtureFigures;
import org.flexwright.model.AmountBasis;
import org.flexwright.model.GateWord;
import org.flexwright.model.Instrument;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.PartRole;
import org.flexwright.model.PartsOf;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.testsupport.CheckValues;
import org.junit.jupiter.api.Test;

class FormulationAtTheCupTest {
    private static final String BALANCE = "Mass balance";

    private static WeighDetails batch(Double grams) {
        WeighDetails details = MixingDataFactory.eINSTANCE.createWeighDetails();
        details.setBatchMass(grams);
        return details;
    }

    private static Step cup(WeighDetails details, MaterialUse... uses) {
        return step(WeighStep.ID, details, uses);
    }

    private static Trial trial(Step... steps) {
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.getSteps().addAll(List.of(steps));
        return trial;
    }

    private static StepAdvice line(Step step, Trial trial, String name) {
        return new WeighStep().advice(step, trial).stream().filter(l -> l.name().equals(name)).findFirst().orElse(null);
    }

    private static void balance(Step step, double resolution) {
        Instrument balance = ModelFactory.eINSTANCE.createInstrument();
        balance.setKind("balance");
        balance.setUnit("g");
        balance.setResolution(resolution);
        Session session = ModelFactory.eINSTANCE.createSession();
        session.getInstruments().add(balance);
        step.setSession(session);
    }

    @Test
    void gramsFollowFromPartsAndTheOwnValueOfTheLotWins() {
        MaterialUse a = use(COMPONENT_A, iso(), null, UNSTATED);
        MaterialUse b = use(COMPONENT_B, polyol(), 100.0, UNSTATED);
        WeighDetails details = batch(200.0);
        details.setIndex(100.0);
        Step step = cup(details, a, b);
        FormulationPlan sheet = FormulationPlan.of(step).orElseThrow();
        assertNull(sheet.problem());
        assertEquals(100 * 4202 / 9.0 / (56100 / 120.0), 100 * sheet.grams(a) / sheet.grams(b), 1e-9);
        assertEquals(200, sheet.grams(a) + sheet.grams(b), 1e-9);
        a.setLot(Cans.lot(a.getGrade(), MixingProperties.NCO_CONTENT, 8.5));
        FormulationPlan own = FormulationPlan.of(step).orElseThrow();
        assertEquals(100 * 4202 / 8.5 / (56100 / 120.0), 100 * own.grams(a) / own.grams(b), 1e-9);
        Figure used = own.figures().stream().filter(f -> f.name().equals("NCO content")).findFirst().orElseThrow();
        assertEquals(8.5, used.value());
        assertEquals(Source.Mark.OWN_RECORD, used.source().mark());
        assertEquals(Source.Mark.SHEET, sheet.figures().stream().filter(f -> f.name().equals("NCO content")).findFirst().orElseThrow().source().mark());
        assertEquals(100, line(step, trial(step), "index").value().likely(), 1e-9);
        assertEquals(own.grams(a), line(step, trial(step), "targetA").value().likely(), 1e-9);
    }

    @Test
    void aBatchOfPartsIsFilledAtTheDensityOfTheWholeMixture() {
        WeighDetails details = batch(null);
        details.setPartCount(3);
        details.setMeasuredVolume(12.0);
        MaterialUse a = use(COMPONENT_A, iso(), 100.0, UNSTATED);
        MaterialUse b = use(COMPONENT_B, polyol(), 50.0, UNSTATED);
        MaterialUse f = use(FILLER, powder(), 10.0, PartsOf.PER_100_POLYMER);
        FormulationPlan plan = FormulationPlan.of(cup(details, a, b, f)).orElseThrow();
        assertEquals(36, plan.grams(a) / 1.05 + plan.grams(b) / 1.10 + plan.grams(f) / 1.8, 1e-9);
        f.setGrade(null);
        assertEquals("The parts to make say a volume, and the density of filler is missing: give the batch in grams, or note the density.",
                FormulationPlan.of(cup(details, a, b, f)).orElseThrow().problem().text());
    }

    @Test
    void tenOfFillerIsNeverGuessedAndEveryReadingIsShown() {
        MaterialUse a = use(COMPONENT_A, iso(), 100.0, UNSTATED);
        MaterialUse b = use(COMPONENT_B, polyol(), 50.0, UNSTATED);
        MaterialUse f = use(FILLER, powder(), 10.0, UNSTATED);
        Step step = cup(batch(150.0), a, b, f);
        FormulationPlan plan = FormulationPlan.of(step).orElseThrow();
        assertTrue(plan.grams().isEmpty());
        assertEquals("No grams follow from the parts: those of Powder do not say of what; choose on 100 of polymer, of all, of A or of B.", plan.problem().text());
        Map<PartsOf, Double> readings = FormulationPlan.readings(step, f);
        CheckValues.expect("processes/A5 10 phr.1", 100 * readings.get(PartsOf.PER_100_POLYMER) / 150, BALANCE);
        assertEquals(15, readings.get(PartsOf.OF_ALL), 1e-9);
        CheckValues.expect("processes/A5 10% of total.1", 100 * readings.get(PartsOf.OF_ALL) / (150 - readings.get(PartsOf.OF_ALL)), BALANCE);
        CheckValues.expect("processes/A5 10% of B.1", 100 * readings.get(PartsOf.OF_B) / (150 - readings.get(PartsOf.OF_B)), BALANCE);
        assertEquals(15, line(step, trial(step), "reading3.of_all").value().likely(), 1e-9);
        assertEquals("Powder, if counted on part B", line(step, trial(step), "reading3.of_b").label());
        Finding finding = ask(new PartsRule(), step).getFirst();
        assertEquals(Severity.CAUTION, finding.severity());
        assertEquals("Weigh the batch: 10 of Powder, but not of what. It would be 13.64 g on 100 g of polymer, 15 g of all of it, 9.375 g of part A, 4.839 g of part B.",
                finding.message().text());
        assertEquals(1, ask(new PartsRule(), step).size(), "said once");
        f.setPartsOf(PartsOf.OF_B);
        assertEquals(4.839, FormulationPlan.of(step).orElseThrow().grams(f), 0.0005);
        assertEquals(List.of(), ask(new PartsRule(), step));
        f.setPlanned(15.0);
        assertEquals("Weigh the batch: 15 g of Powder is planned, but its parts come to 4.839 g.", ask(new PartsRule(), step).getFirst().message().text());
    }

    /** Whatever a share is counted on, what is in the cup stays what it is. */
    @Test
    void switchingTheBasisNeverTouchesWhatIsWeighed() {
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            MaterialUse a = use(COMPONENT_A, iso(), 100.0, UNSTATED, 10 + 50 * random.nextDouble());
            MaterialUse b = use(COMPONENT_B, polyol(), 40 + 60 * random.nextDouble(), UNSTATED, 10 + 50 * random.nextDouble());
            MaterialUse f = use(FILLER, powder(), 1 + 15 * random.nextDouble(), UNSTATED, 1 + 5 * random.nextDouble());
            Step step = cup(batch(50 + 100 * random.nextDouble()), a, b, f);
            MixtureFigures before = MixtureFigures.weighed(step);
            WeighAdvice asked = WeighAdvice.of(step);
            double[] grams = {Mixtures.grams(a), Mixtures.grams(b), Mixtures.grams(f)};
            double planned = -1;
            for (PartsOf of : FormulationPlan.READINGS) {
                f.setPartsOf(of);
                FormulationPlan plan = FormulationPlan.of(step).orElseThrow();
                assertTrue(planned != plan.grams(f), "the plan does change");
                planned = plan.grams(f);
                assertEquals(grams[0], Mixtures.grams(a));
                assertEquals(grams[1], Mixtures.grams(b));
                assertEquals(grams[2], Mixtures.grams(f));
                assertEquals(before.index(), MixtureFigures.weighed(step).index());
                assertEquals(before.filler(), MixtureFigures.weighed(step).filler());
                WeighAdvice advice = WeighAdvice.of(step);
                assertTrue(advice.addition() >= 0);
                assertEquals(asked.weighed() == null ? advice.addition() : asked.addition(), advice.addition(), 1e-9, "nor what would mend the ratio");
            }
        }
    }

    @Test
    void aPremixIsWeighedAsOneAndCountsAsItsIngredients() {
        Random random = new Random(8);
        for (int round = 0; round < 300; round++) {
            MaterialUse blend = use(premix(20 * random.nextDouble() + 0.1, 5 * random.nextDouble()), null, 5 + 60 * random.nextDouble());
            MaterialUse a = use(COMPONENT_A, iso(), null, UNSTATED, 40);
            Step step = cup(null, a, blend);
            assertEquals(1, Mixtures.shares(blend).stream().mapToDouble(Mixtures.Share::share).sum(), 1e-12);
            assertEquals(40 + Mixtures.grams(blend), Mixtures.of(step).actualTotal(), 1e-9);
            MaterialUse b = use(COMPONENT_B, polyol(), null, UNSTATED, Mixtures.of(step).actual(COMPONENT_B));
            MaterialUse f = use(FILLER, powder(), null, UNSTATED, Mixtures.of(step).actual(FILLER));
            f.setMoisture(blend.getPremix().getIngredients().get(1).getMoisture());
            Step apart = cup(null, EcoreUtil.copy(a), b, f);
            assertEquals(MixtureFigures.weighed(apart).index(), MixtureFigures.weighed(step).index(), 1e-9);
            assertEquals(MixtureFigures.weighed(apart).filler(), MixtureFigures.weighed(step).filler(), 1e-9);
            assertEquals(MixtureFigures.weighed(apart).water(), MixtureFigures.weighed(step).water(), 1e-9);
            assertEquals(Mixtures.of(apart).actualRatio(), Mixtures.of(step).actualRatio(), 1e-9);
        }
    }

    @Test
    void theTargetOfAPremixFollowsTheAInTheCup() {
        WeighDetails details = batch(208.0);
        MaterialUse a = use(COMPONENT_A, iso(), 100.0, UNSTATED, 102);
        MaterialUse blend = use(premix(8, null), 108.0);
        Step step = cup(details, a, blend);
        assertEquals(102 * 1.08, line(step, trial(step), "target2").value().likely(), 1e-9);
        assertEquals("Target of premix X1", line(step, trial(step), "target2").label());
        blend.getWeighings().add(EcoreUtil.copy(use(COMPONENT_B, null, null, UNSTATED, 100).getWeighings().getFirst()));
        WeighAdvice advice = WeighAdvice.of(step);
        assertEquals(PartRole.COMPONENT_B, advice.shortRole().orElseThrow());
        assertEquals(102 * 1.08 - 100, advice.addition(), 1e-9, "grams of the premix, not of the B in it");
        assertEquals(advice.addition(), line(step, trial(step), "add2").value().likely(), 1e-12);
        assertTrue(advice.sentence().text().startsWith("Add 10.2 g of premix X1"), advice.sentence().text());
    }

    @Test
    void undriedPowderInAPremixLowersTheIndexByWhatItsWaterUsesUp() {
        // 0.05 g of water in 100 g of B: 5 g of powder with 1 %.
        MaterialUse a = use(COMPONENT_A, iso(), null, UNSTATED, 100);
        Step step = cup(null, a, use(premix(5, 1.0), null, 105));
        CheckValues.expect("processes/A4 prepolymer, index, index+water.3", MixtureFigures.weighed(step).index(), "PMA technical library, section 5; mass balance");
        CheckValues.expect("processes/A12.3", MoistureFoam.co2Grams(MixtureFigures.weighed(step).water()), "Stoichiometry");
        Step dry = cup(null, EcoreUtil.copy(a), use(premix(5, 0.0), null, 105));
        CheckValues.expect("processes/A4 prepolymer, index, index+water.2", MixtureFigures.weighed(dry).index(), "PMA technical library, section 5; mass balance");
        Random random = new Random(9);
        for (int round = 0; round < 300; round++) {
            double less = 4 * random.nextDouble();
            double powder = 0.5 + 20 * random.nextDouble();
            double blend = 20 + 100 * random.nextDouble();
            double dryer = index(powder, less, blend);
            double damper = index(powder, less + 0.01 + random.nextDouble(), blend);
            assertTrue(damper < dryer, damper + " against " + dryer);
        }
    }

    private static double index(double powder, double moisture, double blend) {
        return MixtureFigures.weighed(cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 100), use(premix(powder, moisture), null, blend))).index();
    }

    @Test
    void driedPowderIsNotTakenToHoldTheWaterOfItsSheet() {
        MaterialGrade damp = Cans.grade("Powder", MixingProperties.WATER_CONTENT, 3.0);
        MaterialUse use = use(FILLER, damp, null, UNSTATED, 10);
        assertEquals(0.03, MaterialFigures.of(use).substance().water());
        use.setDried(true);
        assertEquals(0, MaterialFigures.of(use).substance().water());
        assertTrue(MaterialFigures.of(use).waterUnknown());
        use.setMoisture(0.2);
        assertEquals(0.002, MaterialFigures.of(use).substance().water());
        assertFalse(MaterialFigures.of(use).waterUnknown());
    }

    @Test
    void theIndexRuleSaysHowFarOffAndWhatIsMissing() {
        assertEquals(List.of(), ask(new IndexRule(), cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 100), use(COMPONENT_B, polyol(), null, UNSTATED, 100))));
        assertEquals(Severity.CAUTION, indexOf(107, 100).severity());
        assertEquals(Severity.CAUTION, indexOf(94, 100).severity());
        assertEquals(Severity.STOP, indexOf(79, 100).severity());
        assertEquals(Severity.STOP, indexOf(131, 100).severity());
        MaterialGrade bare = Cans.grade("Extender");
        Finding missing = ask(new IndexRule(), cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 100), use(PartRole.POLYOL, bare, null, UNSTATED, 5),
                use(COMPONENT_B, polyol(), null, UNSTATED, 100))).getFirst();
        assertEquals(Severity.NOTE, missing.severity());
        assertEquals("Weigh the batch: The index is not known: the NCO content or hydroxyl value of Extender is missing.", missing.message().text());
        List<Finding> damp = ask(new IndexRule(), cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 103), use(premix(8, null), null, 108)));
        assertEquals("Weigh the batch: nobody says how much water Powder brings along, so the index counts none for it.", damp.getFirst().message().text());
        MaterialUse dried = use(premix(8, null), null, 108);
        dried.getPremix().getIngredients().get(1).setDried(true);
        assertEquals(List.of(), ask(new IndexRule(), cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 103), dried)), "it was dried, and somebody said so");
        List<Finding> foam = ask(new IndexRule(), cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 103), use(premix(8, 3.0), null, 108)));
        assertTrue(foam.stream().anyMatch(f -> f.message().text().contains("of carbon dioxide")), foam.toString());
        assertEquals(List.of(), ask(new IndexRule(), cup(null, use(COMPONENT_A, Cans.grade("Silicone A"), null, UNSTATED, 1), use(COMPONENT_B, Cans.grade("B"), null, UNSTATED, 9))),
                "an index means nothing without an isocyanate");
    }

    private static Finding indexOf(double a, double b) {
        return ask(new IndexRule(), cup(null, use(COMPONENT_A, iso(), null, UNSTATED, a), use(COMPONENT_B, polyol(), null, UNSTATED, b))).getFirst();
    }

    @Test
    void theBalanceLeavesRatioIndexAndFillerOpen() {
        Step step = cup(null, use(COMPONENT_A, iso(), 20.0, UNSTATED, 20), use(COMPONENT_B, polyol(), 2.0, UNSTATED, 2));
        assertEquals(0, width(line(step, trial(step), "trueRatio")), "no balance, no band");
        balance(step, 0.1);
        CheckValues.expect("processes/A6.2", 100 * width(line(step, trial(step), "trueRatio")) / 2, "JCGM 100:2008, 4.3.7, from memory");
        CheckValues.expect("processes/A6.2", 100 * width(line(step, trial(step), "trueIndex")) / 2, "JCGM 100:2008, 4.3.7, from memory");
        balance(step, 0.01);
        CheckValues.expect("processes/A6.3", 100 * width(line(step, trial(step), "trueRatio")) / 2, "JCGM 100:2008, 4.3.7, from memory");
        Step filled = cup(null, use(COMPONENT_A, iso(), 100.0, UNSTATED, 10), use(COMPONENT_B, polyol(), 100.0, UNSTATED, 10), use(FILLER, powder(), null, UNSTATED, 1));
        balance(filled, 0.1);
        // w = F/T: u^2 = ((T - F)^2 + 2 F^2) d^2/6 / T^4
        double u = Math.sqrt((20.0 * 20 + 2) / 6) * 0.1 / (21 * 21);
        assertEquals(2 * u * 21, width(line(filled, trial(filled), "filler")), 1e-9);
        Step two = cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 5, 5), use(COMPONENT_B, polyol(), null, UNSTATED, 10));
        two.getUses().get(0).setPlanned(10.0);
        two.getUses().get(1).setPlanned(10.0);
        balance(two, 0.1);
        assertEquals(2 * Math.sqrt(3.0 / 6) * 0.1 / 10, width(line(two, trial(two), "trueRatio")), 1e-9, "two weighings are four readings");
    }

    /** Half of the band over the value. */
    private static double width(StepAdvice line) {
        return (line.value().high() - line.value().low()) / 2 / line.value().likely();
    }

    @Test
    void theLeastThisBalanceWeighsIsSaidWhereItMatters() {
        WeighDetails details = batch(30.0);
        details.setOwnLimit(2.0);
        Step step = cup(details, use(COMPONENT_A, iso(), 100.0, UNSTATED), use(COMPONENT_B, polyol(), 10.0, UNSTATED));
        balance(step, 0.1);
        CheckValues.expect("processes/A6.6", line(step, trial(step), "smallest").value().likely(), "JCGM 100:2008, 4.3.7, from memory");
        details.setBatchMass(300.0);
        assertNull(line(step, trial(step), "smallest"));
    }

    @Test
    void aCorrectionThatDoesNotFitIsNotOffered() {
        WeighDetails details = MixingDataFactory.eINSTANCE.createWeighDetails();
        details.setRatioA(100.0);
        details.setRatioB(100.0);
        Step step = cup(details, use(COMPONENT_A, iso(), null, UNSTATED, 110), use(COMPONENT_B, polyol(), null, UNSTATED, 100));
        Trial trial = trial(step);
        assertTrue(proposal(step, trial).reason().text().endsWith("the size of the cup or a density is not known."), proposal(step, trial).reason().text());
        details.setCupVolume(210.0);
        assertEquals("Hold: add 10 g of B; B to A is -9.09 % off, above the own limit of 2 %.", proposal(step, trial).reason().text());
        assertEquals(10, line(step, trial, "addB").value().likely(), 1e-9);
        details.setCupVolume(200.0);
        assertEquals(GateWord.HOLD, proposal(step, trial).word());
        assertEquals("Hold: B to A is -9.09 % off, and 10 g more of B does not fit into the cup of 200 ml. Pour over into one of at least 205 ml first, or weigh anew.",
                proposal(step, trial).reason().text());
        assertNull(line(step, trial, "addB"));
        assertEquals(proposal(step, trial).reason(), line(step, trial, "deviation").remark().message());
        trial.setContactAt(Instant.EPOCH);
        assertEquals(GateWord.DUMP, proposal(step, trial).word());
        assertTrue(proposal(step, trial).reason().text().endsWith("and A has met B already."), proposal(step, trial).reason().text());
    }

    @Test
    void aCupThatIsDegassedMayBeAThirdFull() {
        WeighDetails details = MixingDataFactory.eINSTANCE.createWeighDetails();
        details.setRatioA(100.0);
        details.setRatioB(100.0);
        DegasDetails degas = MixingDataFactory.eINSTANCE.createDegasDetails();
        degas.setCupVolume(600.0);
        Step step = cup(details, use(COMPONENT_A, iso(), null, UNSTATED, 110), use(COMPONENT_B, polyol(), null, UNSTATED, 100));
        Trial trial = trial(step, step(DegasStep.ID, degas));
        assertTrue(proposal(step, trial).reason().text().contains("at least 615 ml"), proposal(step, trial).reason().text());
        degas.setCupVolume(620.0);
        assertTrue(proposal(step, trial).adds());
    }

    @Test
    void goHoldOrDumpFollowsTheCup() {
        WeighDetails details = MixingDataFactory.eINSTANCE.createWeighDetails();
        details.setRatioA(100.0);
        details.setRatioB(70.0);
        Step step = cup(details, use(COMPONENT_A, iso(), null, UNSTATED), use(COMPONENT_B, polyol(), null, UNSTATED));
        assertTrue(WeighProposal.of(step, trial(step)).isEmpty(), "nothing is in the cup");
        Step half = cup(details, use(COMPONENT_A, iso(), null, UNSTATED, 100), use(COMPONENT_B, polyol(), null, UNSTATED));
        assertEquals("Hold: B is not weighed yet.", proposal(half, trial(half)).reason().text());
        Step off = cup(details, use(COMPONENT_A, iso(), null, UNSTATED, 100), use(COMPONENT_B, polyol(), null, UNSTATED, 70));
        assertEquals("Hold: the ratio is as planned, but the index is 143, outside 80 to 130. Check the values of the materials before anything is mixed.",
                proposal(off, trial(off)).reason().text());
        details.setRatioB(100.0);
        Step right = cup(details, use(COMPONENT_A, iso(), null, UNSTATED, 100), use(COMPONENT_B, polyol(), null, UNSTATED, 101));
        assertEquals(GateWord.GO, proposal(right, trial(right)).word());
        assertEquals("Go", line(right, trial(right), "proposal").label());
    }

    private static WeighProposal proposal(Step step, Trial trial) {
        return WeighProposal.of(step, trial).orElseThrow();
    }

    @Test
    void anotherOrderOfAddingIsNoted() {
        MaterialUse a = use(COMPONENT_A, iso(), null, UNSTATED, 100);
        MaterialUse b = use(COMPONENT_B, polyol(), null, UNSTATED, 100);
        MaterialUse f = use(FILLER, powder(), null, UNSTATED, 5);
        Step step = cup(null, b, f, a);
        assertEquals(List.of(), ask(new AddingOrderRule(), step), "no times, no order");
        b.getWeighings().getFirst().setAt(Instant.ofEpochSecond(10));
        f.getWeighings().getFirst().setAt(Instant.ofEpochSecond(20));
        a.getWeighings().getFirst().setAt(Instant.ofEpochSecond(30));
        assertEquals(List.of(), ask(new AddingOrderRule(), step));
        f.getWeighings().getFirst().setAt(Instant.ofEpochSecond(40));
        assertEquals("Weigh the batch: weighed in the order B, A, Powder, planned as B, Powder, A.", ask(new AddingOrderRule(), step).getFirst().message().text());
    }

    @Test
    void drawingAndMeasurementThatLieApartAreAsked() {
        WeighDetails details = MixingDataFactory.eINSTANCE.createWeighDetails();
        details.setPartVolume(12.0);
        details.setMeasuredVolume(12.6);
        assertEquals(List.of(), ask(new PartVolumeRule(), cup(details)), "5 % is not more than 5 %");
        details.setMeasuredVolume(12.7);
        assertEquals("Weigh the batch: a part is 12 ml by the drawing and 12.7 ml as measured, 5.83 % apart. Which is it?",
                ask(new PartVolumeRule(), cup(details)).getFirst().message().text());
    }

    @Test
    void partsThatCannotBeCountedSaySoInOneSentence() {
        MaterialUse a = use(COMPONENT_A, iso(), 100.0, UNSTATED);
        MaterialUse b = use(COMPONENT_B, polyol(), null, UNSTATED);
        assertEquals("No grams follow from the parts: those of Polyol are missing, and it belongs to the ratio.", problem(batch(100.0), a, b));
        b.setParts(0.0);
        assertEquals("No grams follow from the parts: the parts of Polyol are 0, and a ratio needs more than that.", problem(batch(100.0), a, b));
        b.setParts(100.0);
        assertTrue(problem(batch(null), a, b).startsWith("The parts say shares but not how much"));
        b.setPlanned(50.0);
        assertEquals(50, FormulationPlan.of(cup(batch(null), a, b)).orElseThrow().grams(a), 1e-9, "one component says how much");
        b.setGrade(Cans.grade("Bare"));
        a.setPartsBy(AmountBasis.EQUIVALENTS);
        b.setPartsBy(AmountBasis.EQUIVALENTS);
        assertEquals("No grams follow from the parts: the NCO content or hydroxyl value of Bare is missing; note it from its sheet.", problem(batch(100.0), a, b));
        WeighDetails far = batch(100.0);
        far.setIndex(140.0);
        assertEquals("No grams follow from the parts: the index wanted must lie between 80 and 130.", problem(far, a, b));
        assertEquals(Severity.NOTE, ask(new PartsRule(), cup(far, a, b)).getFirst().severity());
        assertTrue(FormulationPlan.of(cup(null, use(COMPONENT_A, iso(), null, UNSTATED, 5))).isEmpty(), "nobody gave parts");
    }

    private static String problem(WeighDetails details, MaterialUse... uses) {
        return FormulationPlan.of(cup(details, uses)).orElseThrow().problem().text();
    }

    @Test
    void everyProblemHasWords() {
        ResourceBundle words = ResourceBundle.getBundle("org.flexwright.mixing.formulation.messages");
        for (org.flexwright.mixing.formula.Formulation.Problem problem : org.flexwright.mixing.formula.Formulation.Problem.values()) {
            assertFalse(words.getString(problem.name().toLowerCase(java.util.Locale.ROOT).replace('_', '.')).isBlank());
        }
    }
}
