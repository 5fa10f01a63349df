package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.flexwright.core.bench.BenchClock;
import org.flexwright.core.bench.BenchMark;
import org.flexwright.core.bench.BenchPlace.Part;
import org.flexwright.core.bench.BenchScreen;
import org.flexwright.core.bench.BenchTap;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.find.Severity;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.mixing.WeighStep;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole pour by taps alone, with the step kinds of the product. */
class PourTest {
    private static final Instant START = Instant.parse("2026-05-20T23:55:00Z");

    @TempDir
    Path temp;
    private Instant now = START;
    private final Pour pour = new Pour(new Clock() {
        @Override
        public ZoneOffset getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    });

    private static Trial trial(ProjectSession session) {
        return Pour.last(session.project());
    }

    private BenchScreen screen(ProjectSession session) {
        return pour.bench.view(trial(session), now);
    }

    private void upTo(ProjectSession session, int from, int to) {
        for (int i = from; i < to; i++) {
            pour.tap(session, trial(session), Pour.TAPS.get(i));
        }
    }

    private static int first(String key, String given) {
        return Pour.TAPS.indexOf(new Pour.Tap(key, given));
    }

    @Test
    void everyTapLeavesItsTraceAndThePourEndsMade() {
        Set<String> seen = new LinkedHashSet<>();
        try (ProjectSession session = pour.create(temp.resolve("a.flexwright"))) {
            seen.add(Pour.seen(trial(session)));
            for (Pour.Tap tap : Pour.TAPS) {
                assertTrue(screen(session).taps().stream().filter(t -> t.rank() == BenchTap.Rank.MAIN).count() <= 2, "one thing to do now");
                now = now.plusSeconds(20);
                pour.tap(session, trial(session), tap);
                seen.add(Pour.seen(trial(session)));
            }
            assertEquals(Pour.TAPS.size() + 1, seen.size(), "each tap can be told from the others");
            assertEquals(TrialState.MADE, trial(session).getState());
            System.out.println("A whole pour: " + Pour.TAPS.size() + " touches, numbers of " + Pour.TAPS.stream().filter(t -> t.given().matches("[0-9.]+")).count()
                    + " of them from the number pad or the balance");
        }
    }

    @Test
    void twoGramsTooMuchOfAAreSeenAndMended() {
        try (ProjectSession session = pour.create(temp.resolve("a.flexwright"))) {
            upTo(session, 0, first("weigh", "24.88"));
            assertEquals("22.88", screen(session).figure("toAdd").orElseThrow().number());
            upTo(session, first("weigh", "24.88"), first("weigh", "21.57"));
            assertEquals("23.46", screen(session).figure("toAdd").orElseThrow().number(), "B follows the A that is in the cup");
            upTo(session, first("weigh", "21.57"), first("weigh", "1.89"));
            assertEquals("1.89", screen(session).figure("toAdd").orElseThrow().number());
            String check = screen(session).places().stream().filter(p -> p.key().equals("1/work")).findFirst().orElseThrow().key();
            BenchScreen wrong = pour.bench.view(trial(session), now, check);
            assertEquals("-8", wrong.figure("deviation").orElseThrow().number());
            assertEquals(Severity.STOP, wrong.figure("deviation").orElseThrow().severity());
            assertEquals(BenchTap.Rank.MAIN, wrong.tap("correct/1").orElseThrow().rank());
            upTo(session, first("weigh", "1.89"), first("weigh", "1.89") + 1);
            assertEquals(Part.WORK, screen(session).place().part());
            var weighings = Pour.step(trial(session), WeighStep.ID).getUses().get(1).getWeighings();
            assertEquals(List.of(false, true), weighings.stream().map(w -> w.isCorrection()).toList());
        }
    }

    @Test
    void theClockShowsFiveMinutesAfterTheProgramWasDeadForTwo() {
        Path folder = temp.resolve("a.flexwright");
        ProjectSession dying = pour.create(folder);
        upTo(dying, 0, first("weigh", "21.57") + 1);
        Instant contact = now;
        now = contact.plusSeconds(180);
        assertEquals("3:00", screen(dying).clock().text());
        upTo(dying, first("weigh", "1.89"), first("ack", "2026-01-15 4"));
        dying.close();
        now = contact.plusSeconds(300);
        try (ProjectSession session = pour.store().open(folder)) {
            assertEquals("5:00", screen(session).clock().text());
            assertEquals("Before you start: Mix", screen(session).title());
            assertEquals("5:00", pour.bench.cups(session.project(), now).getFirst().clock().text(), "past midnight, too");
        }
    }

    @Test
    void theGateSaysWhatStandsAgainstPouring() {
        try (ProjectSession session = pour.create(temp.resolve("a.flexwright"))) {
            upTo(session, 0, first("go", ""));
            assertTrue(screen(session).gate().met(), screen(session).gate().against().toString());
            assertEquals(List.of("dry", "warm", "ratio", "scraped", "time", "cautions", "stops"), screen(session).gate().points().stream().map(GatePoint::name).toList());
            now = trial(session).getContactAt().plus(Duration.ofMinutes(11));
            assertTrue(screen(session).gate().met(), "4 min left, 3.9 wanted");
            now = trial(session).getContactAt().plus(Duration.ofSeconds(11 * 60 + 10));
            assertEquals(List.of("time"), screen(session).gate().against().stream().map(GatePoint::name).toList(), "3 min 50 s left, 3.9 min wanted");
            BenchMark pourBy = screen(session).marks().stream().filter(m -> m.key().equals("pourBy")).findFirst().orElseThrow();
            assertEquals(BenchMark.State.DUE, pourBy.state());
            assertEquals("11:06", pourBy.text());
        }
    }

    @Test
    void theLeftoverCanBeLookedAtWhileThePartCures() {
        try (ProjectSession session = pour.create(temp.resolve("a.flexwright"))) {
            upTo(session, 0, first("field/celsius", "23"));
            assertEquals("Cure", screen(session).title().replaceFirst(".*: ", ""));
            pour.tap(session, trial(session), new Pour.Tap("ask/leftoverFirm", "yes"));
            upTo(session, first("field/celsius", "23"), first("ask/leftoverFirm", "yes"));
            assertTrue(screen(session).gate().met(), "nothing is asked twice");
        }
    }

    @Test
    void demouldingWaitsForTheLeftover() {
        try (ProjectSession session = pour.create(temp.resolve("a.flexwright"))) {
            upTo(session, 0, first("ask/leftoverFirm", "yes"));
            assertEquals(Part.GATE, screen(session).place().part());
            assertEquals(GatePoint.State.UNKNOWN, screen(session).gate().points().getFirst().state());
            pour.tap(session, trial(session), new Pour.Tap("ask/leftoverFirm", "no"));
            assertEquals(GatePoint.State.OPEN, screen(session).gate().points().getFirst().state());
            pour.tap(session, trial(session), new Pour.Tap("hold", "Waiting for the mix"));
            pour.tap(session, trial(session), new Pour.Tap("ask/leftoverFirm", "yes"));
            assertTrue(screen(session).gate().met());
            assertEquals(BenchClock.State.RUNNING, screen(session).clock().state());
        }
    }
}
