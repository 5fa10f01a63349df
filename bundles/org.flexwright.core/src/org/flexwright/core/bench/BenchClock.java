package org.flexwright.core.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.stream.Stream;

import org.flexwright.core.view.TimeLine;
import org.flexwright.model.BenchNote;
import org.flexwright.model.Decision;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.model.Weighing;

/**
 * The clock of one cup: wall time since the first contact of its components. Made anew from the moment of contact each time it is looked
 * at, so nothing that happens to the program changes it.
 *
 * @param state    how it runs
 * @param contact  moment of first contact; null before it
 * @param elapsed  time since then; null before contact and while contact lies ahead of the computer's clock
 * @param text     as shown large, {@code 4:12}; a dash when nothing can be said
 * @param sentence what there is to say about it; empty when all is as it should be
 */
public record BenchClock(State state, Instant contact, Duration elapsed, String text, String sentence) {
    /** Clocks of one computer read one after the other may differ by this much, ms. */
    private static final long JITTER = 1000;

    /** How a clock runs. */
    public enum State {
        /** Before first contact. */
        WAITING,
        /** Counting. */
        RUNNING,
        /** The cup is made, failed or discarded; it shows how long that took when that is known. */
        STOPPED,
        /** The computer's clock is behind what it said before: shown is what has passed at least. */
        AT_LEAST,
        /** First contact lies ahead of the computer's clock: nothing can be said. */
        AHEAD
    }

    public BenchClock {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(sentence, "sentence");
    }

    /** The clock of a trial at that moment. */
    public static BenchClock of(Trial trial, Instant now) {
        Instant contact = TimeLine.contactOf(trial);
        if (contact == null) {
            return new BenchClock(State.WAITING, null, null, "\u2013", Say.CLOCK_WAITING.text());
        }
        Instant last = latest(trial, contact);
        if (trial.getState() == TrialState.MADE || trial.getState() == TrialState.FAILED || trial.getState() == TrialState.DISCARDED) {
            Instant end = trial.getMadeAt() == null || trial.getMadeAt().isBefore(contact) ? last : trial.getMadeAt();
            return shown(State.STOPPED, contact, Duration.between(contact, end), Say.CLOCK_STOPPED.text());
        }
        if (now.isBefore(last.minusMillis(JITTER))) {
            String behind = length(Duration.between(now, last));
            return last.equals(contact) ? new BenchClock(State.AHEAD, contact, null, "\u2013", Say.CLOCK_AHEAD.text(behind))
                    : shown(State.AT_LEAST, contact, Duration.between(contact, last), Say.CLOCK_BACK.text(behind));
        }
        Duration elapsed = now.isBefore(contact) ? Duration.ZERO : Duration.between(contact, now);
        return shown(State.RUNNING, contact, elapsed, "");
    }

    private static BenchClock shown(State state, Instant contact, Duration elapsed, String sentence) {
        return new BenchClock(state, contact, elapsed, TimeLine.clock(minutes(elapsed)), sentence);
    }

    /** The latest moment written down in the trial, contact at least: the present cannot be before it. */
    private static Instant latest(Trial trial, Instant contact) {
        Stream<Instant> steps = trial.getSteps().stream().flatMap(s -> Stream.of(s.getStartedAt(), s.getEndedAt()));
        Stream<Instant> weighings = trial.getSteps().stream().map(Step::getUses).flatMap(u -> u.stream()).flatMap(u -> u.getWeighings().stream()).map(Weighing::getAt);
        Stream<Instant> words = Stream.concat(trial.getNotes().stream().map(BenchNote::getAt), trial.getDecisions().stream().map(Decision::getAt));
        return Stream.concat(Stream.concat(steps, weighings), words).filter(Objects::nonNull).filter(contact::isBefore).max(Instant::compareTo).orElse(contact);
    }

    static double minutes(Duration duration) {
        return duration.toMillis() / 60_000.0;
    }

    /** A length as words read it: {@code 3:05}, {@code 16 h}. */
    static String length(Duration duration) {
        return TimeLine.clock(Math.abs(minutes(duration)));
    }
}
