package org.flexwright.core.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;

import org.flexwright.core.bench.BenchPlace.Part;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.PlanException;
import org.flexwright.model.GateWord;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.NoteKind;
import org.flexwright.model.Origin;
import org.flexwright.core.field.Provenances;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.TrialState;
import org.flexwright.model.BenchNote;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench view of a process nobody heard of: screens, taps, gate and clock come from its descriptions alone. */
class BenchTest {
    @TempDir
    Path temp;

    private static final byte[] PNG = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");
    /** The parts of a JPEG of 2 by 3 pixels in their order; what it shows does not matter here. */
    private final Toy toy = new Toy();
    private ProjectSession session;

    @BeforeEach
    void open() {
        session = toy.project(temp.resolve("Toy.flexwright"));
    }

    @AfterEach
    void close() {
        session.close();
    }

    private void tap(String key, String value) {
        toy.tap(session, key, value);
    }

    private void weighBoth() {
        tap("weigh", "20");
        toy.clock.on(Duration.ofMinutes(1));
        tap("weigh", "10");
    }

    @Test
    void everyScreenOfAForeignProcessIsThere() {
        assertEquals(List.of("0/use/0", "0/use/1", "0/work", "1/work", "2/cautions", "2/gate", "2/work", "end"),
                toy.bench.places(Toy.trial(session), toy.clock.now).stream().map(BenchPlace::key).toList());
        BenchScreen screen = toy.view(session);
        assertEquals("Weigh A", screen.title());
        assertEquals("Add 20 g of A.", screen.sentence());
        assertEquals("20", screen.figure("toAdd").orElseThrow().number());
        assertEquals("g", screen.figure("toAdd").orElseThrow().unit());
        assertFalse(screen.figure("toAdd").orElseThrow().origin().isBlank());
        assertEquals(BenchTap.Rank.MAIN, screen.tap("weigh").orElseThrow().rank());
        assertEquals("Weigh B", screen.next());
        assertEquals(BenchClock.State.WAITING, screen.clock().state());
    }

    @Test
    void theSecondComponentInTheCupStartsTheClock() {
        tap("weigh", "20");
        assertNull(Toy.trial(session).getContactAt());
        assertEquals(TrialState.MAKING, Toy.trial(session).getState());
        toy.clock.on(Duration.ofMinutes(2));
        tap("weigh", "10");
        assertEquals(toy.clock.now, Toy.trial(session).getContactAt());
        toy.clock.on(Duration.ofSeconds(252));
        assertEquals("4:12", toy.view(session).clock().text());
    }

    @Test
    void theSecondOfTwoWeighingsOfOneComponentIsNoContact() {
        tap("weigh", "15");
        assertEquals("5", toy.view(session).figure("toAdd").orElseThrow().number());
        tap("weigh", "5");
        assertNull(Toy.trial(session).getContactAt());
        assertEquals("0/use/1", toy.view(session).place().key());
    }

    @Test
    void whatIsOfferedAndNothingElseCanBeDone() {
        assertThrows(PlanException.class, () -> tap("finish", ""));
        assertThrows(PlanException.class, () -> tap("weigh", "-2"));
        assertThrows(PlanException.class, () -> tap("weigh", "nan"));
        assertThrows(PlanException.class, () -> tap("weigh", ""));
        assertThrows(PlanException.class, () -> tap("weigh", "20 ml"));
        assertEquals(StepState.PLANNED, Toy.trial(session).getSteps().getFirst().getState(), "nothing is changed by what is refused");
    }

    @Test
    void aFieldIsATapAndThePlanIsOffered() {
        weighBoth();
        tap("finish", "");
        tap("start", "");
        BenchScreen screen = toy.view(session);
        assertEquals("3 min", screen.tap("field/minutes").orElseThrow().offered());
        assertEquals(List.of("yes", "no"), screen.tap("field/smooth").orElseThrow().choices().stream().map(BenchTap.Choice::value).toList());
        tap("asPlanned/minutes", "");
        Step stir = Toy.trial(session).getSteps().get(1);
        assertEquals(3.0, stir.getDetails().eGet(toy.stirring.getEStructuralFeature("minutes")));
        tap("field/minutes", "0.05 h");
        assertEquals(3.0, (Double) stir.getDetails().eGet(toy.stirring.getEStructuralFeature("minutes")), 1e-12);
        assertEquals(Origin.MEASURED, Provenances.origin(stir.getDetails(), toy.stirring.getEStructuralFeature("minutes")));
        assertThrows(PlanException.class, () -> tap("field/minutes", "-1"));
        tap("field/smooth", "no");
        assertEquals(false, stir.getDetails().eGet(toy.stirring.getEStructuralFeature("smooth")));
    }

    private void upToTheGate() {
        weighBoth();
        tap("finish", "");
        tap("start", "");
        tap("finish", "");
        tap("ack", "");
        assertEquals(Part.GATE, toy.view(session).place().part());
    }

    @Test
    void notKnownIsNotMet() {
        upToTheGate();
        BenchGate gate = toy.view(session).gate();
        assertEquals(List.of("smooth", "time"), gate.against().stream().map(GatePoint::name).toList());
        assertEquals(List.of(GatePoint.State.UNKNOWN, GatePoint.State.UNKNOWN), gate.against().stream().map(GatePoint::state).toList());
        assertThrows(PlanException.class, () -> tap("go", ""), "against a point needs a reason");
        assertEquals(StepState.PLANNED, Toy.trial(session).getSteps().get(2).getState());
        tap("ask/smooth", "yes");
        assertEquals(List.of("time"), toy.view(session).gate().against().stream().map(GatePoint::name).toList());
        tap("go", "tried ten times");
        var decision = Toy.trial(session).getDecisions().getFirst();
        assertEquals(GateWord.GO, decision.getWord());
        assertEquals("tried ten times", decision.getReason());
        assertEquals(1, decision.getOpen().size());
        assertTrue(decision.getOpen().getFirst().startsWith("Working time left: "));
        assertEquals(StepState.RUNNING, Toy.trial(session).getSteps().get(2).getState(), "go begins the step");
    }

    @Test
    void holdingAndDumpingNeedAReason() {
        upToTheGate();
        assertThrows(PlanException.class, () -> tap("hold", " "));
        tap("hold", "Waiting for the mould");
        assertEquals(Part.GATE, toy.view(session).place().part());
        assertThrows(PlanException.class, () -> tap("dump", ""));
        tap("dump", "Spilled");
        assertEquals(TrialState.DISCARDED, Toy.trial(session).getState());
        assertEquals("Spilled", Toy.trial(session).getStateReason());
        assertEquals(BenchClock.State.STOPPED, toy.view(session).clock().state());
        assertTrue(toy.view(session).tap("go").isEmpty());
        assertTrue(toy.bench.cups(session.project(), toy.clock.now).isEmpty());
        session.undo();
        assertEquals(TrialState.MAKING, Toy.trial(session).getState());
    }

    @Test
    void theEndOfPouringCountsACast() {
        Mould mould = ModelFactory.eINSTANCE.createMould();
        mould.setCode("M1");
        mould.setCavities(3);
        session.execute("Mould", edit -> {
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__MOULDS, mould);
            edit.set(Toy.trial(session), ModelPackage.Literals.TRIAL__MOULD, mould);
        });
        upToTheGate();
        tap("go", "as ever");
        tap("finish", "");
        assertEquals(1, mould.getCasts().size());
        assertEquals(3, mould.getCasts().getFirst().getParts());
        tap("made", "");
        assertEquals(TrialState.MADE, Toy.trial(session).getState());
        assertNotNull(Toy.trial(session).getMadeAt());
    }

    @Test
    void notesAreOneTouchAndSortedLater() {
        tap("odd", "");
        assertEquals(NoteKind.ODD, Toy.trial(session).getNotes().getFirst().getKind());
        assertEquals(1, toy.view(session).notices().size());
        assertThrows(PlanException.class, () -> session.execute("Sort", edit -> BenchTaps.sort(edit, Toy.trial(session).getNotes().getFirst(), " ")));
        session.execute("Sort", edit -> BenchTaps.sort(edit, Toy.trial(session).getNotes().getFirst(), "a hair in the cup"));
        assertEquals("a hair in the cup", Toy.trial(session).getNotes().getFirst().getSortedAs());
        assertTrue(toy.view(session).notices().isEmpty());
    }

    @Test
    void undoIsATap() {
        tap("weigh", "20");
        tap("undo", "");
        assertNull(Toy.weighed(session, 0));
        assertEquals(TrialState.PLANNED, Toy.trial(session).getState());
        tap("undo", "");
        assertTrue(session.project().getTrials().isEmpty());
    }

    @Test
    void theRoomIsAskedOnceASession() {
        assertTrue(toy.view(session).tap("room/roomC").isPresent());
        tap("room/roomC", "21");
        assertTrue(toy.view(session).tap("room/roomC").isEmpty());
        weighBoth();
        tap("finish", "");
        assertTrue(toy.view(session).tap("room/roomC").isEmpty(), "the next step is of the same session");
        tap("start", "");
        assertEquals(1, session.project().getSessions().size());
        assertEquals(21.0, Toy.trial(session).getSteps().get(1).getSession().getRoomC());
    }

    @Test
    void aStepLeftOutNeedsAReasonAndIsBehind() {
        weighBoth();
        tap("finish", "");
        assertThrows(PlanException.class, () -> tap("skip", ""));
        tap("skip", "Not needed here");
        assertEquals(StepState.SKIPPED, Toy.trial(session).getSteps().get(1).getState());
        assertEquals("2/cautions", toy.view(session).place().key());
    }

    @Test
    void oneCanLookBackAndAhead() {
        weighBoth();
        BenchScreen back = toy.bench.view(Toy.trial(session), toy.clock.now, "0/use/0");
        assertEquals("A is in.", back.sentence());
        assertEquals("0/use/1", back.after().orElseThrow().key());
        BenchTaps.tap(session, toy.bench, Toy.trial(session), toy.clock.now, "0/use/0", "weigh", "0.5");
        assertEquals(20.5, Toy.weighed(session, 0));
        assertEquals(toy.view(session).place(), toy.bench.view(Toy.trial(session), toy.clock.now, "no such place").place());
    }

    @Test
    void aPictureThatWasOnlyNotedGetsItsFileLater() throws java.io.IOException {
        session.execute("noted", edit -> BenchTaps.note(edit, Toy.trial(session), Toy.trial(session).getSteps().getFirst(), NoteKind.PHOTO, "", null));
        BenchNote note = Toy.trial(session).getNotes().getFirst();
        Path wrong = java.nio.file.Files.writeString(temp.resolve("x.png"), "no picture");
        assertThrows(PlanException.class, () -> BenchTaps.attach(session, Toy.trial(session), note, wrong));
        assertNull(note.getAttachment(), "nothing is attached by half");
        Path file = java.nio.file.Files.write(temp.resolve("cup.png"), PNG);
        BenchTaps.attach(session, Toy.trial(session), note, file);
        assertEquals("cup.png", note.getAttachment().getFileName());
        session.undo();
        assertNull(note.getAttachment());
    }
}
