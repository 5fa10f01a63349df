package org.flexwright.core.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;

import org.flexwright.core.Source;
import org.flexwright.core.bench.BenchClock.State;
import org.flexwright.model.BenchNote;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.junit.jupiter.api.Test;

/** The clock of a cup goes by the wall and never says nonsense; marks say where they stand in a word, a sign and a sound. */
class BenchClockTest {
    private static final Instant CONTACT = Instant.parse("2026-03-28T23:58:00Z");
    private final Trial trial = ModelFactory.eINSTANCE.createTrial();

    private BenchClock after(long seconds) {
        return BenchClock.of(trial, CONTACT.plusSeconds(seconds));
    }

    private void made() {
        trial.setState(TrialState.MAKING);
        trial.setContactAt(CONTACT);
    }

    @Test
    void beforeContactItWaits() {
        BenchClock clock = BenchClock.of(trial, CONTACT);
        assertEquals(State.WAITING, clock.state());
        assertNull(clock.elapsed());
        assertEquals("\u2013", clock.text());
    }

    @Test
    void midnightAndTheZoneOfTheComputerChangeNothing() {
        made();
        TimeZone before = TimeZone.getDefault();
        try {
            for (String zone : List.of("Europe/Berlin", "America/New_York", "Asia/Kathmandu", "UTC")) {
                TimeZone.setDefault(TimeZone.getTimeZone(zone));
                assertEquals("4:12", after(252).text(), zone);
                // one hour and two minutes on: summer time begins in Berlin at 01:00 UTC
                assertEquals("62:00", after(3720).text(), zone);
            }
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @Test
    void aClockPutBackShowsWhatHasPassedAtLeast() {
        made();
        BenchNote note = ModelFactory.eINSTANCE.createBenchNote();
        note.setAt(CONTACT.plusSeconds(300));
        trial.getNotes().add(note);
        BenchClock clock = after(120);
        assertEquals(State.AT_LEAST, clock.state());
        assertEquals("5:00", clock.text());
        assertTrue(clock.sentence().contains("3:00"), clock.sentence());
        assertEquals(State.RUNNING, after(301).state());
        assertEquals("5:01", after(301).text());
    }

    @Test
    void contactAheadOfTheClockIsSaidAndNotShownAsANumber() {
        made();
        BenchClock clock = after(-90);
        assertEquals(State.AHEAD, clock.state());
        assertNull(clock.elapsed());
        assertEquals("\u2013", clock.text());
        assertTrue(clock.sentence().contains("1:30"), clock.sentence());
        assertFalse(after(0).elapsed().isNegative());
    }

    @Test
    void aCupThatEndedStops() {
        made();
        trial.setState(TrialState.DISCARDED);
        Step step = ModelFactory.eINSTANCE.createStep();
        step.setStartedAt(CONTACT.plusSeconds(60));
        step.setEndedAt(CONTACT.plusSeconds(200));
        trial.getSteps().add(step);
        assertEquals(State.STOPPED, after(9999).state());
        assertEquals("3:20", after(9999).text());
    }

    @Test
    void neverNegativeWhateverStandsInTheRecord() {
        made();
        for (int contact = -500; contact <= 500; contact += 50) {
            for (int started = -500; started <= 500; started += 50) {
                trial.getSteps().clear();
                Step step = ModelFactory.eINSTANCE.createStep();
                step.setState(StepState.RUNNING);
                step.setStartedAt(CONTACT.plusSeconds(started));
                trial.getSteps().add(step);
                trial.setContactAt(CONTACT.plusSeconds(contact));
                BenchClock clock = BenchClock.of(trial, CONTACT);
                assertTrue(clock.elapsed() == null || !clock.elapsed().isNegative(), clock.toString());
                assertFalse(clock.text().contains("\u2212"), clock.toString());
            }
        }
    }

    @Test
    void jumpsOfTheWallClockAreNoticed() {
        Toy.Hands wall = new Toy.Hands();
        long[] nanos = {0};
        ClockWatch watch = new ClockWatch(wall, () -> nanos[0]);
        wall.on(Duration.ofSeconds(60));
        nanos[0] += 60_000_000_000L;
        assertEquals(Optional.empty(), watch.look());
        wall.on(Duration.ofMinutes(-10));
        nanos[0] += 1_000_000_000L;
        assertTrue(watch.look().orElseThrow().contains("back by 10:0"));
        wall.on(Duration.ofMinutes(42));
        nanos[0] += 1_000_000_000L;
        assertTrue(watch.look().orElseThrow().contains("slept"));
        wall.on(Duration.ofMillis(500));
        assertEquals(Optional.empty(), watch.look());
    }

    private static BenchMark.State state(StepMark mark, long seconds) {
        return Marks.state(mark, CONTACT.plusSeconds(seconds));
    }

    @Test
    void aMarkWithABandMayBeAnyMomentInsideIt() {
        StepMark band = new StepMark("m", "m", CONTACT.plusSeconds(600), CONTACT.plusSeconds(700), CONTACT.plusSeconds(900), false, Source.commonPractice());
        assertEquals(BenchMark.State.COMING, state(band, 539));
        assertEquals(BenchMark.State.SOON, state(band, 540));
        assertEquals(BenchMark.State.WITHIN, state(band, 600));
        assertEquals(BenchMark.State.WITHIN, state(band, 900));
        assertEquals(BenchMark.State.OVER, state(band, 901));
        StepMark point = StepMark.at("m", "m", CONTACT.plusSeconds(600), false, Source.commonPractice());
        assertEquals(BenchMark.State.SOON, state(point, 599));
        assertEquals(BenchMark.State.DUE, state(point, 600));
        assertEquals(BenchMark.State.DUE, state(point, 630));
        assertEquals(BenchMark.State.OVER, state(point, 631));
        assertEquals(BenchMark.State.DONE, state(StepMark.at("m", "m", CONTACT, true, Source.commonPractice()), 5000));
    }

    private static BenchMark mark(String key, BenchMark.State state) {
        return new BenchMark(key, key, CONTACT, CONTACT, CONTACT, "", Duration.ZERO, state, "", state.shape(), "");
    }

    @Test
    void theMostUrgentChangeSoundsAndReopeningIsQuiet() {
        List<BenchMark> before = List.of(mark("a", BenchMark.State.COMING), mark("b", BenchMark.State.SOON));
        assertEquals(BenchSound.NONE, BenchSound.between(before, before));
        assertEquals(BenchSound.SOON, BenchSound.between(before, List.of(mark("a", BenchMark.State.SOON))));
        assertEquals(BenchSound.DUE, BenchSound.between(before, List.of(mark("a", BenchMark.State.SOON), mark("b", BenchMark.State.WITHIN))));
        assertEquals(BenchSound.OVER, BenchSound.between(before, List.of(mark("b", BenchMark.State.OVER))));
        assertEquals(BenchSound.NONE, BenchSound.between(before, List.of(mark("b", BenchMark.State.DONE))));
        assertEquals(BenchSound.NONE, BenchSound.between(List.of(), List.of(mark("b", BenchMark.State.OVER))));
    }

    @Test
    void statesHaveSignsOfTheirOwn() {
        assertEquals(BenchMark.State.values().length, java.util.Arrays.stream(BenchMark.State.values()).map(BenchMark.State::shape).distinct().count());
    }
}
