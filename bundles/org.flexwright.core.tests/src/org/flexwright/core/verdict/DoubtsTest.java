package org.flexwright.core.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.verdict.ControlReading.Basis;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DoubtsTest {
    private static final PropertyCatalogue PROPERTIES = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(Bench.HARDNESS, Bench.FORCE);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };

    private final Project project = ModelFactory.eINSTANCE.createProject();
    private final ControlPiece control = ModelFactory.eINSTANCE.createControlPiece();
    private final Instrument gauge = ModelFactory.eINSTANCE.createInstrument();

    @BeforeEach
    void begin() {
        control.setCode("K1");
        gauge.setUnit("Shore A");
        gauge.setResolution(0.5);
        project.getControlPieces().add(control);
    }

    private Session session(PropertyDef property, double... values) {
        Session session = ModelFactory.eINSTANCE.createSession();
        session.setCode("S" + (project.getSessions().size() + 1));
        session.setAt(Instant.EPOCH.plusSeconds(project.getSessions().size() * 86_400L));
        session.setControlPiece(control);
        project.getSessions().add(session);
        Measurement read = Bench.read(Bench.part(Bench.trial(), "x"), property, values);
        read.setSession(session);
        read.setInstrument(gauge);
        control.getMeasurements().add(read);
        return session;
    }

    private ControlReading read(Session session, PropertyDef property) {
        return ControlReading.of(session, property).orElseThrow();
    }

    @Test
    void theSpreadThatWasEnteredCountsBeforeAnyOther() {
        control.setUsual(50.0);
        control.setUsualSpread(1.0);
        control.setUsualFrom("certificate");
        Session first = session(Bench.HARDNESS, 52, 52, 52);
        assertEquals(Basis.ENTERED, read(first, Bench.HARDNESS).basis());
        assertFalse(read(first, Bench.HARDNESS).off(), "twice the spread is not more than it");
        Session second = session(Bench.HARDNESS, 52.5, 52.5, 53);
        assertTrue(read(second, Bench.HARDNESS).off());
        assertEquals("control piece K1 read 52.5 Shore A, 2.5 Shore A above its usual 50 Shore A; allowed: ± 2 Shore A, twice its usual spread of 1 Shore A (certificate)",
                read(second, Bench.HARDNESS).sentence());
        control.setUsualSpread(4.0);
        assertFalse(read(session(Bench.HARDNESS, 54), Bench.HARDNESS).off(), "a wide spread that was entered allows more than 3 points");
    }

    @Test
    void whatWasEnteredHoldsForThePropertyReadFirstAlone() {
        control.setUsual(50.0);
        control.setUsualSpread(1.0);
        Session session = session(Bench.HARDNESS, 50);
        Measurement force = Bench.read(Bench.part(Bench.trial(), "x"), Bench.FORCE, 12);
        force.setSession(session);
        control.getMeasurements().add(force);
        assertTrue(ControlReading.of(session, Bench.FORCE).isEmpty(), "12 N is not 38 below 50");
    }

    /** Five others at 50, 50.5, 50, 50.5, 50: s = 0.273861, t(0.975; 4) = 2.776445, times √(6/5): 0.832934. */
    @Test
    void fiveOtherSessionsSayWhatToExpectOfOneMore() {
        for (double median : new double[] {50, 50.5, 50, 50.5, 50}) {
            session(Bench.HARDNESS, median);
        }
        ControlReading near = read(session(Bench.HARDNESS, 50.5), Bench.HARDNESS);
        assertEquals(Basis.SESSIONS, near.basis());
        assertEquals(0.832934, near.limit(), 1e-6);
        assertFalse(near.off());
        ControlReading far = read(session(Bench.HARDNESS, 52), Bench.HARDNESS);
        assertTrue(far.off(), "2 points off, where sessions agree to half a point");
        assertTrue(far.allowed().startsWith("± 0.8 Shore A, what 6 other sessions"), far.allowed());
    }

    @Test
    void sessionsThatReadAlikeDoNotMakeTheGaugeFinerAndScatteredOnesDoNotAllowMoreThanThreePoints() {
        for (int i = 0; i < 6; i++) {
            session(Bench.HARDNESS, 50);
        }
        assertFalse(read(session(Bench.HARDNESS, 50.5), Bench.HARDNESS).off(), "one step of the gauge");
        assertTrue(read(session(Bench.HARDNESS, 51), Bench.HARDNESS).off());
        project.getSessions().clear();
        control.getMeasurements().clear();
        for (double median : new double[] {45, 55, 46, 54, 50, 50}) {
            session(Bench.HARDNESS, median);
        }
        ControlReading third = read(session(Bench.HARDNESS, 53), Bench.HARDNESS);
        assertEquals(Basis.POINTS, third.basis());
        assertTrue(third.off());
    }

    @Test
    void withoutASpreadOnlyHardnessHasALimit() {
        session(Bench.FORCE, 12);
        session(Bench.FORCE, 12);
        ControlReading force = read(session(Bench.FORCE, 24), Bench.FORCE);
        assertEquals(Basis.NONE, force.basis());
        assertFalse(force.off());
    }

    @Test
    void otherConditionsAreNotCompared() {
        session(Bench.HARDNESS, 50);
        Session later = session(Bench.HARDNESS, 44);
        control.getMeasurements().get(1).getKey().setDwell(15.0);
        assertTrue(ControlReading.of(later, Bench.HARDNESS).isEmpty(), "after 15 s it reads lower: that is no drift");
    }

    @Test
    void everyPartReadInADoubtfulSessionIsNamedAndNoNumberChanges() {
        session(Bench.HARDNESS, 50);
        Session off = session(Bench.HARDNESS, 46);
        Trial trial = Bench.parts(Bench.HARDNESS, 42, 42, 43);
        project.getTrials().add(trial);
        Part second = trial.getParts().get(1);
        second.getMeasurements().get(0).setSession(off);
        Doubts doubts = Doubts.of(project, PROPERTIES);
        List<PartValue> parts = PartValues.of(trial, Bench.key(Bench.HARDNESS), Bench.HARDNESS);
        Judgement plain = Verdicts.judge(Bench.nominal(42, 3), Bench.HARDNESS, parts);
        Judgement judged = doubts.on(plain, parts);
        assertEquals(plain.interval(), judged.interval());
        assertEquals(plain.verdict(), judged.verdict());
        assertEquals("2 read in session S2 and so in doubt: control piece K1 read 46 Shore A, 4 Shore A below its usual 50 Shore A; allowed: less than 3 points, common "
                + "practice while too few sessions show its own spread.", judged.notes().get(0).text());
        assertEquals(Doubts.word(), doubts.word(second.getMeasurements().get(0)));
        assertEquals("", doubts.word(trial.getParts().get(0).getMeasurements().get(0)));
        assertTrue(Doubts.sentence(second.getMeasurements().get(0), PROPERTIES).orElseThrow().startsWith("In doubt, session S2: "));
        assertTrue(Doubts.of((Session) null, PROPERTIES).isEmpty());
    }
}
