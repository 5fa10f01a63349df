package org.flexwright.core.ageing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.find.Finding;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.find.rules.AgeingDueRule;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.verdict.Bench;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.AgeingPlan;
import org.flexwright.model.Censoring;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which readings of an ageing plan are due, and what age did to the pieces. */
class AgeingTest {
    private static final Instant MADE = Instant.parse("2026-01-01T08:00:00Z");
    private static final PropertyCatalogue KNOWN = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.FORCE);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(d -> d.id().equals(id)).findFirst();
        }
    };

    @TempDir
    Path folder;
    private ProjectSession session;
    private Trial trial;

    @BeforeEach
    void open() {
        ProjectStore store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.fixed(MADE, ZoneOffset.UTC), "tester", "1", List.of()));
        session = store.create(folder.resolve("a" + ProjectStore.SUFFIX), "Ageing");
        trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode("T01");
        session.execute("trial", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, trial));
        for (int i = 1; i <= 3; i++) {
            Part part = ModelFactory.eINSTANCE.createPart();
            part.setCode("P" + i);
            part.setMadeAt(MADE);
            part.setPieceKind(org.flexwright.model.PieceKind.PART);
            session.execute("part", e -> e.add(trial, ModelPackage.Literals.TRIAL__PARTS, part));
        }
    }

    @AfterEach
    void close() {
        session.close();
    }

    private AgeingPlan plan(Double... days) {
        AgeingPlan[] plan = new AgeingPlan[1];
        session.execute("plan", e -> plan[0] = AgeingPlans.add(e, "over age", Bench.key(Bench.FORCE), trial.getParts(), List.of(days), null));
        return plan[0];
    }

    private void read(int part, double days, double... values) {
        Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
        measurement.setKey(Bench.key(Bench.FORCE));
        measurement.setAt(at(days));
        for (double value : values) {
            measurement.getReadings().add(Bench.reading(value, Censoring.NONE));
        }
        session.execute("read", e -> e.add(trial.getParts().get(part - 1), ModelPackage.Literals.SPECIMEN__MEASUREMENTS, measurement));
    }

    private static Instant at(double days) {
        return MADE.plusSeconds(Math.round(days * 86_400));
    }

    private static List<AgeingState> states(AgeingPlan plan, double days) {
        return AgeingPlans.checks(plan, Bench.FORCE, at(days)).stream().map(AgeingCheck::state).toList();
    }

    @Test
    void aReadingIsComingThenDueThenRead() {
        AgeingPlan plan = plan(7.0);
        assertEquals(List.of(AgeingState.COMING, AgeingState.COMING, AgeingState.COMING), states(plan, 5.9));
        assertEquals(List.of(AgeingState.DUE, AgeingState.DUE, AgeingState.DUE), states(plan, 6.1));
        read(1, 6.5, 0.8);
        read(2, 12, 0.8);
        assertEquals(List.of(AgeingState.READ, AgeingState.DUE, AgeingState.DUE), states(plan, 8), "a reading at 12 d is none at 7 d");
        assertEquals(List.of(AgeingState.READ, AgeingState.MISSED, AgeingState.MISSED), states(plan, 9));
        session.execute("skip", e -> AgeingPlans.skip(e, plan.getPoints().getFirst(), " away "));
        assertEquals(List.of(AgeingState.READ, AgeingState.SKIPPED, AgeingState.SKIPPED), states(plan, 9));
        trial.getParts().get(1).setMadeAt(null);
        assertEquals(AgeingState.SKIPPED, states(plan, 9).get(1));
    }

    @Test
    void whatIsDueIsRemindedOfAndOnlyThat() {
        plan(7.0, 30.0);
        assertEquals(List.of(), findings(3));
        List<Finding> due = findings(7);
        assertEquals(1, due.size());
        assertTrue(due.getFirst().message().text().startsWith("over age: T01/P1, T01/P2, T01/P3 to be read at 7 d, give or take 25 h"), due.getFirst().message().text());
        assertEquals(2, findings(31).size(), "one missed, one due");
        session.project().getAgeingPlans().getFirst().setRemind(false);
        assertEquals(List.of(), findings(31));
    }

    private List<Finding> findings(double days) {
        List<Finding> found = new ArrayList<>();
        new AgeingDueRule().check(new RuleContext(session.project(), null, KNOWN, at(days)), found::add);
        return found;
    }

    @Test
    void badPlansAreRefusedAndNothingIsWritten() {
        for (List<Double> days : List.of(List.<Double>of(), List.of(0.0), List.of(-3.0), List.of(Double.NaN), List.of(1e9))) {
            assertThrows(RefusedException.class, () -> session.execute("plan", e -> AgeingPlans.add(e, "", Bench.key(Bench.FORCE), trial.getParts(), days, null)));
        }
        assertThrows(RefusedException.class, () -> session.execute("plan", e -> AgeingPlans.add(e, "", Bench.key(Bench.FORCE), List.of(), List.of(1.0), null)));
        assertTrue(session.project().getAgeingPlans().isEmpty());
    }

    /** 0.80 to 0.90, 0.81 to 0.92, 0.82 to 0.93 N: changes 0.10, 0.11, 0.11; mean 0.1067, s 0.005774, t(2) 4.3027: 0.0923 to 0.1210. */
    @Test
    void eachPieceIsComparedWithItself() {
        AgeingPlan plan = plan(1.0, 30.0);
        double[] young = { 0.80, 0.81, 0.82 };
        double[] old = { 0.90, 0.92, 0.93 };
        for (int i = 0; i < 3; i++) {
            read(i + 1, 1, young[i]);
            read(i + 1, 30, old[i]);
        }
        Drift drift = Drift.of(plan, Bench.FORCE);
        String said = drift.sentence().text();
        assertTrue(said.startsWith("3 pieces went up by 0.107 N between 24 h and 30 d"), said);
        assertTrue(said.contains("0.092 \u2026 0.121 N"), said);
        assertTrue(drift.remarks().getFirst().text().contains("control piece"));
        PlotModel plot = drift.plot();
        assertEquals(List.of("24 h", "30 d"), plot.x().ticks().stream().map(t -> t.label()).toList());
        assertEquals(3, plot.series().size());
        assertEquals(1.0, plot.series().get(1).points().getLast().x(), 1e-9);
        assertEquals(6, drift.table().rows().size());
    }

    /** Two sessions shift all pieces alike, which their own changes do not show: what the control piece did between them stands beside the interval. */
    @Test
    void whatTheControlPieceDidIsSaidBesideTheChange() {
        AgeingPlan plan = plan(1.0, 30.0);
        ControlPiece control = ModelFactory.eINSTANCE.createControlPiece();
        control.setCode("K1");
        List<Session> sessions = List.of(ModelFactory.eINSTANCE.createSession(), ModelFactory.eINSTANCE.createSession());
        session.execute("begin", e -> {
            e.add(session.project(), ModelPackage.Literals.PROJECT__CONTROL_PIECES, control);
            sessions.forEach(s -> {
                s.setControlPiece(control);
                e.add(session.project(), ModelPackage.Literals.PROJECT__SESSIONS, s);
            });
            sessions.forEach(s -> {
                Measurement read = ModelFactory.eINSTANCE.createMeasurement();
                read.setKey(Bench.key(Bench.FORCE));
                read.setKnowledge(Knowledge.MEASURED);
                read.setSession(s);
                read.getReadings().add(Bench.reading(s == sessions.get(0) ? 0.50 : 0.54, Censoring.NONE));
                e.add(control, ModelPackage.Literals.SPECIMEN__MEASUREMENTS, read);
            });
        });
        for (int i = 1; i <= 3; i++) {
            read(i, 1, 0.80);
            read(i, 30, 0.83);
        }
        assertTrue(said(plan).contains("No control piece was read both times"), said(plan));
        session.execute("sessions", e -> trial.getParts().forEach(part -> {
            for (int i = 0; i < Math.min(2, part.getMeasurements().size()); i++) {
                e.set(part.getMeasurements().get(i), ModelPackage.Literals.MEASUREMENT__SESSION, sessions.get(i));
            }
        }));
        assertTrue(said(plan).contains("The control piece K1 itself changed by +0.04 N"), said(plan));
    }

    private static String said(AgeingPlan plan) {
        return Drift.of(plan, Bench.FORCE).remarks().stream().map(m -> m.text()).collect(Collectors.joining(" "));
    }

    @Test
    void aChangeSmallerThanItsIntervalIsNoChange() {
        AgeingPlan plan = plan(1.0, 30.0);
        double[] old = { 0.70, 0.81, 0.92 };
        for (int i = 0; i < 3; i++) {
            read(i + 1, 1, 0.80);
            read(i + 1, 30, old[i]);
        }
        assertTrue(Drift.of(plan, Bench.FORCE).sentence().text().startsWith("No change can be told"), Drift.of(plan, Bench.FORCE).sentence().text());
    }

    @Test
    void twoPiecesSayNothingOfTheSpreadAndOneAgeNothingAtAll() {
        AgeingPlan plan = plan(1.0, 30.0);
        read(1, 1, 0.8);
        assertTrue(Drift.of(plan, Bench.FORCE).sentence().text().startsWith("No piece was read at two ages"));
        read(1, 30, 0.9);
        assertTrue(Drift.of(plan, Bench.FORCE).sentence().text().contains("fewer than three"));
    }

    @Test
    void boundsAreShownAsBoundsAndInNoMean() {
        AgeingPlan plan = plan(1.0, 30.0);
        read(1, 1, 0.8);
        read(1, 30, 5.0);
        trial.getParts().getFirst().getMeasurements().getLast().getReadings().getFirst().setCensoring(Censoring.MORE_THAN);
        Drift drift = Drift.of(plan, Bench.FORCE);
        assertEquals("more than 5 N", drift.text(drift.series().getFirst().values().getLast()));
        assertTrue(drift.sentence().text().startsWith("No piece was read at two ages"));
        assertFalse(drift.plot().series().getFirst().points().getLast().high() == Double.POSITIVE_INFINITY);
    }

    /** t(0.975; 4 df) 2.7764; three readings twice with s 0.1 each, whose median scatters by 1.1602 s / sqrt 3: 0.18597. */
    @Test
    void theBandOfAValueRestsOnTheScatterOfReadings() {
        AgeingPlan plan = plan(1.0, 30.0);
        read(1, 1, 0.7, 0.8, 0.9);
        read(1, 30, 0.8, 0.9, 1.0);
        Drift drift = Drift.of(plan, Bench.FORCE);
        assertEquals(0.18597, drift.series().getFirst().values().getFirst().half(), 1e-5);
    }

    @Test
    void trueAgesStandBetweenTheAgesOfThePlan() {
        List<Double> ages = List.of(1.0, 7.0, 30.0, 365.0);
        assertEquals(0, Drift.place(ages, 1), 1e-12);
        assertEquals(2, Drift.place(ages, 30), 1e-12);
        assertTrue(Drift.place(ages, 14) > 1 && Drift.place(ages, 14) < 2);
        assertTrue(Drift.place(ages, 1000) > 3);
        double before = -99;
        for (double days = 0.1; days < 3000; days *= 1.3) {
            assertTrue(Drift.place(ages, days) > before, "further right with age: " + days);
            before = Drift.place(ages, days);
        }
    }
}
