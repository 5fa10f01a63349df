package org.flexwright.core.find.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Source;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.find.Severity;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.Instruments;
import org.flexwright.core.verdict.Bench;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;
import org.flexwright.model.TrialState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class CoreRulesTest {
    private static final Instant NOW = Instant.parse("2025-03-14T10:00:00Z");
    private static final PropertyCatalogue CATALOGUE = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.FORCE, Bench.HARDNESS, Bench.INVERTED);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };

    private final Project project = ModelFactory.eINSTANCE.createProject();
    private final Trial trial = ModelFactory.eINSTANCE.createTrial();

    @BeforeEach
    void project() {
        project.setId("p");
        trial.setId("t1");
        trial.setCode("T1");
        project.getTrials().add(trial);
    }

    private List<Finding> ask(FindingRule rule) {
        List<Finding> found = new FindingService(List.of(rule), CATALOGUE).check(project, NOW);
        found.forEach(f -> {
            assertEquals(rule.id(), f.rule(), f.message().text());
            assertFalse(f.remedy().text().contains("{"), f.remedy().text());
            assertFalse(f.message().text().contains("{"), f.message().text());
            assertEquals(Source.Mark.COMMON_PRACTICE, f.source().mark());
        });
        assertFalse(rule.title().isBlank());
        return found;
    }

    private String only(FindingRule rule) {
        List<Finding> found = ask(rule);
        assertEquals(1, found.size(), found.toString());
        return found.get(0).message().text();
    }

    private Target target(double tolerance) {
        TargetSheet sheet = ModelFactory.eINSTANCE.createTargetSheet();
        Target target = Bench.nominal(50, tolerance);
        target.setId("target");
        sheet.getTargets().add(target);
        project.getTargetSheets().add(sheet);
        return target;
    }

    @Test
    void aToleranceBelowTheGaugesStepErrorOrSpreadIsFlagged() {
        Target target = target(1);
        Measurement read = Bench.read(Bench.part(trial, "1"), Bench.HARDNESS, 50, 50, 50, 50, 50);
        assertEquals(List.of(), ask(new TightToleranceRule()));
        Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setResolution(2.0);
        read.setInstrument(gauge);
        assertEquals("Hardness: the tolerance ± 1 Shore A is less than one display step of the gauge (2 Shore A).", only(new TightToleranceRule()));
        gauge.setAccuracy(3.0);
        assertTrue(only(new TightToleranceRule()).contains("own error (3 Shore A)"));
        // Sums of squares 0 and 50 over 4 + 4 degrees of freedom: s = 2.5, twice that is 5.
        Bench.read(Bench.part(trial, "2"), Bench.HARDNESS, 45, 50, 50, 50, 55);
        assertTrue(only(new TightToleranceRule()).contains("(± 5 Shore A)"), only(new TightToleranceRule()));
        target.setTolerance(5.0);
        assertEquals(List.of(), ask(new TightToleranceRule()));
    }

    @Test
    void onlyTheNewestSheetIsLookedAt() {
        target(1);
        target(5);
        Bench.read(Bench.part(trial, "1"), Bench.HARDNESS, 47, 50, 50, 50, 53);
        assertEquals(List.of(), ask(new TightToleranceRule()));
    }

    private Step step(StepState state) {
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setId("s" + trial.getSteps().size());
        step.setTitle("weigh");
        step.setState(state);
        trial.getSteps().add(step);
        return step;
    }

    @Test
    void anExpiredLotIsSaidAndBlocksNothing() {
        Step step = step(StepState.DONE);
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode("L7");
        use.setLot(lot);
        step.getUses().add(use);
        assertEquals(List.of(), ask(new ExpiredLotRule()));
        lot.setExpires(LocalDate.of(2025, 3, 1));
        assertEquals("T1: lot L7 expired on 2025-03-01.", only(new ExpiredLotRule()));
        step.setStartedAt(Instant.parse("2025-02-10T10:00:00Z"));
        assertEquals(List.of(), ask(new ExpiredLotRule()), "it was fresh when it was used");
        step.setStartedAt(Instant.parse("2025-03-10T10:00:00Z"));
        assertEquals("T1: lot L7 expired on 2025-03-01 and was used on 2025-03-10.", only(new ExpiredLotRule()));
        assertEquals(Severity.CAUTION, ask(new ExpiredLotRule()).get(0).severity());
        step.setState(StepState.SKIPPED);
        assertEquals(List.of(), ask(new ExpiredLotRule()));
    }

    @Test
    void anExpiredLotInsideAPremixIsSaidToo() {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setCode("F3");
        lot.setExpires(LocalDate.of(2025, 3, 1));
        MaterialUse powder = ModelFactory.eINSTANCE.createMaterialUse();
        powder.setLot(lot);
        Premix premix = ModelFactory.eINSTANCE.createPremix();
        premix.getIngredients().add(powder);
        project.getPremixes().add(premix);
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setPremix(premix);
        step(StepState.PLANNED).getUses().add(use);
        assertEquals("T1: lot F3 expired on 2025-03-01.", only(new ExpiredLotRule()));
    }

    @Test
    void whatIsStillToBeWeighedIsHeldAgainstWhatIsLeft() {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        lot.setId("l7");
        lot.setCode("L7");
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setLot(lot);
        use.setPlanned(60.0);
        Step step = step(StepState.PLANNED);
        step.getUses().add(use);
        assertEquals(List.of(), found(new ShortStockRule()), "nobody said how much there was");
        lot.setAmount(50.0);
        assertEquals("T1: 60 g of L7 is still to be weighed, and 50 g is left.", found(new ShortStockRule()).getFirst().message().text());
        Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
        weighing.setNet(12.0);
        use.getWeighings().add(weighing);
        assertEquals("T1: 48 g of L7 is still to be weighed, and 38 g is left.", found(new ShortStockRule()).getFirst().message().text());
        lot.setAmount(60.0);
        assertEquals(List.of(), found(new ShortStockRule()));
        lot.setAmount(20.0);
        step.setState(StepState.DONE);
        assertEquals(List.of(), found(new ShortStockRule()), "nothing is to come");
    }

    private List<Finding> found(FindingRule rule) {
        return new FindingService(List.of(rule), CATALOGUE).check(project, NOW);
    }

    @Test
    void aStepLeftUnconfirmedIsSaidOnceMakingBegan() {
        step(StepState.DONE).setUnconfirmed(true);
        step(StepState.SKIPPED).setUnconfirmed(true);
        trial.setState(TrialState.PLANNED);
        assertEquals(List.of(), ask(new UnconfirmedStepRule()));
        trial.setState(TrialState.MAKING);
        assertEquals("T1: the step weigh still holds copied values nobody confirmed.", only(new UnconfirmedStepRule()));
    }

    @Test
    void failuresWithoutAReasonAreSaid() {
        trial.setState(TrialState.MADE);
        assertEquals(List.of(), ask(new NoReasonRule()));
        trial.setState(TrialState.FAILED);
        assertEquals("T1 failed, and nothing says why.", only(new NoReasonRule()));
        trial.setState(TrialState.DISCARDED);
        assertEquals("T1 was discarded, and nothing says why.", only(new NoReasonRule()));
        trial.setStateReason("tacky");
        Part part = Bench.part(trial, "3");
        part.setFailed(true);
        assertEquals("T1: part 3 failed, and nothing says why.", only(new NoReasonRule()));
        part.setFailReason("torn");
        assertEquals(List.of(), ask(new NoReasonRule()));
    }

    private record Route(String id, String roomLabel) implements ProcessKind {
        Route(String id) {
            this(id, "room");
        }

        @Override
        public String title() {
            return id;
        }

        @Override
        public String summary() {
            return id;
        }

        @Override
        public List<PlannedStep> steps() {
            return List.of();
        }

        @Override
        public List<Factor> factors() {
            return List.of(new Factor("room", roomLabel, "t.step", "roomC"), new Factor("humidity", "humidity", "t.step", "roomRh"));
        }

        @Override
        public List<EstimateLine> estimate(Trial plan) {
            return List.of();
        }
    }

    private static void plan(Trial trial, Double room, Double humidity) {
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setKind("t.step");
        Session details = ModelFactory.eINSTANCE.createSession();
        details.setRoomC(room);
        details.setRoomRh(humidity);
        step.setDetails(details);
        trial.getSteps().add(step);
        trial.setRoute("cast");
    }

    @Test
    void changingMoreThanOneFactorIsNoted() {
        Trial next = ModelFactory.eINSTANCE.createTrial();
        next.setCode("T2");
        next.setBasedOn(trial);
        project.getTrials().add(next);
        plan(trial, 20.0, 40.0);
        plan(next, 25.0, 40.0);
        ChangedFactorsRule rule = new ChangedFactorsRule(List.of(new Route("cast")));
        assertEquals(List.of(), ask(rule), "one change is what a trial is for");
        ((Session) next.getSteps().get(0).getDetails()).setRoomRh(50.0);
        assertEquals("T2 differs from T1 in 2 planned factors: room, humidity.", only(rule));
        ((Session) next.getSteps().get(0).getDetails()).setRoomRh(40.0);
        MaterialUse filler = ModelFactory.eINSTANCE.createMaterialUse();
        filler.setRole(PartRole.FILLER);
        filler.setGrade(ModelFactory.eINSTANCE.createMaterialGrade());
        filler.getGrade().setName("chalk");
        next.getSteps().get(0).getUses().add(filler);
        assertEquals("T2 differs from T1 in 2 planned factors: room, filler.", only(rule));
        ChangedFactorsRule named = new ChangedFactorsRule(List.of(new Route("cast", "Filler")));
        assertEquals(List.of(), ask(named), "how much filler and which filler are one change");
        next.setRoute("print");
        assertEquals(List.of(), ask(rule), "another route differs in everything");
    }

    private Session session(String code) {
        Session session = ModelFactory.eINSTANCE.createSession();
        session.setId(code);
        session.setCode(code);
        project.getSessions().add(session);
        return session;
    }

    @Test
    void aControlPieceOffByThreePointsPutsTheSessionInDoubt() {
        ControlPiece control = ModelFactory.eINSTANCE.createControlPiece();
        control.setCode("K1");
        project.getControlPieces().add(control);
        double[] medians = {50, 50, 53};
        for (int i = 0; i < medians.length; i++) {
            Session session = session("S" + i);
            session.setControlPiece(control);
            Measurement read = Bench.read(Bench.part(ModelFactory.eINSTANCE.createTrial(), "x"), Bench.HARDNESS, medians[i]);
            read.setSession(session);
            control.getMeasurements().add(read);
        }
        assertEquals("Session S2: control piece K1 read 53 Shore A, 3 Shore A above its usual 50 Shore A; allowed: less than 3 points, common practice while too few "
                + "sessions show its own spread; all readings of this session are in doubt.",
                only(new ControlOffRule()));
        control.getMeasurements().get(2).getReadings().get(0).setValue(52.5);
        assertEquals(List.of(), ask(new ControlOffRule()));
        control.getMeasurements().get(2).getReadings().get(0).setValue(40.0);
        assertTrue(only(new ControlOffRule()).contains("10 Shore A below"));
    }

    @Test
    void aGaugeWhoseCheckNoLongerHoldsSpeaksUp() {
        Instrument gauge = ModelFactory.eINSTANCE.createInstrument();
        gauge.setName("hand durometer");
        project.getInstruments().add(gauge);
        assertEquals(List.of(), ask(new CheckOverdueRule()), "nobody said how long a check holds");
        gauge.setCheckEveryDays(365.0);
        assertEquals("hand durometer has no check noted, though it is to be checked from time to time.", only(new CheckOverdueRule()));
        gauge.setCheckedOn(Instruments.day(NOW).minusDays(365));
        assertEquals(List.of(), ask(new CheckOverdueRule()), "it holds on its last day");
        gauge.setCheckedOn(Instruments.day(NOW).minusDays(366));
        String due = gauge.getCheckedOn().plusDays(365).toString();
        assertEquals("hand durometer was last checked on " + gauge.getCheckedOn() + ", which held until " + due + ".", only(new CheckOverdueRule()));
        Session session = session("S1");
        session.setAt(NOW);
        Measurement read = Bench.read(Bench.part(trial, "1"), Bench.HARDNESS, 50);
        read.setSession(session);
        read.setInstrument(gauge);
        assertTrue(only(new CheckOverdueRule()).endsWith("which held until " + due + "; read since then in session S1."));
        session.setAt(NOW.minusSeconds(5 * 86_400L));
        assertFalse(only(new CheckOverdueRule()).contains("S1"), "it held then");
    }

    @Test
    void aSessionWithoutRoomTemperatureIsNotedWhenItWasUsed() {
        Session session = session("S1");
        assertEquals(List.of(), ask(new RoomUnknownRule()));
        Bench.read(Bench.part(trial, "1"), Bench.HARDNESS, 50).setSession(session);
        assertEquals("Session S1 has no room temperature.", only(new RoomUnknownRule()));
        session.setRoomC(0.0);
        assertEquals(List.of(), ask(new RoomUnknownRule()));
    }

    @Test
    void anUnknownAgeIsNotedOnceForTheTrial() {
        Part one = Bench.part(trial, "1");
        Part two = Bench.part(trial, "2");
        Bench.yes(one, true);
        assertEquals(List.of(), ask(new AgeUnknownRule()), "a yes or no has no age here");
        Measurement first = Bench.read(one, Bench.HARDNESS, 50);
        Measurement second = Bench.read(two, Bench.HARDNESS, 50);
        assertEquals("T1: the ages of the parts 1, 2 when they were read are unknown.", only(new AgeUnknownRule()));
        first.setDelayHours(24.0);
        assertEquals("T1: the age of part 2 when it was read is unknown.", only(new AgeUnknownRule()));
        two.setMadeAt(NOW.minusSeconds(3600));
        second.setAt(NOW);
        assertEquals(List.of(), ask(new AgeUnknownRule()));
    }

    @Test
    void everyRuleHasItsOwnId() {
        List<FindingRule> rules = new ArrayList<>(List.of(new TightToleranceRule(), new ExpiredLotRule(), new UnconfirmedStepRule(), new NoReasonRule(),
                new ChangedFactorsRule(List.of()), new ControlOffRule(), new RoomUnknownRule(), new CheckOverdueRule(), new AgeUnknownRule(), new ShortStockRule()));
        assertEquals(rules.size(), rules.stream().map(FindingRule::id).distinct().count());
    }
}
