package org.flexwright.core.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

import org.flexwright.core.Source;
import org.flexwright.model.Step;

/**
 * A moment a step kind wants watched: the end of stirring, vacuum off, demould.
 *
 * @param name   stable name within the step kind, e.g. {@code vacuum}
 * @param label  words beside it
 * @param low    earliest
 * @param likely most likely, {@code low <= likely <= high}
 * @param high   latest
 * @param done   true when what it stands for has happened
 * @param source what the moment rests on
 */
public record StepMark(String name, String label, Instant low, Instant likely, Instant high, boolean done, Source source) {
    public StepMark {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(source, "source");
        if (low.isAfter(likely) || likely.isAfter(high)) {
            throw new IllegalArgumentException("A mark needs low <= likely <= high.");
        }
    }

    /** A moment without a band. */
    public static StepMark at(String name, String label, Instant moment, boolean done, Source source) {
        return new StepMark(name, label, moment, moment, moment, done, source);
    }

    /** When a step that was begun has run its planned minutes; null while it was not begun or nothing is planned. */
    public static StepMark end(String name, String label, Step step, Double minutes, Source source) {
        return step.getStartedAt() == null || minutes == null ? null : at(name, label, after(step.getStartedAt(), minutes), step.getEndedAt() != null, source);
    }

    /** A moment so many minutes after another. */
    public static Instant after(Instant from, double minutes) {
        return from.plus(Duration.ofMillis(Math.round(minutes * 60_000)));
    }

    /** Minutes a step took, or has taken so far; empty before it begins and while the clock stands before its start. */
    public static Optional<Double> minutes(Step step, Instant now) {
        Instant end = step.getEndedAt() == null ? now : step.getEndedAt();
        return step.getStartedAt() == null || end.isBefore(step.getStartedAt()) ? Optional.empty()
                : Optional.of(Duration.between(step.getStartedAt(), end).toMillis() / 60_000.0);
    }
}
