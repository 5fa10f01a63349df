package org.flexwright.core.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * A mark on the clock: by when, or from when to when, something is to happen.
 *
 * @param key    stable within the trial: {@code working}, {@code pourBy}, {@code 3/vacuum}
 * @param label  words beside it
 * @param low    earliest
 * @param likely most likely
 * @param high   latest; all three alike for a mark without a band
 * @param text   on the trial's clock, with its band: {@code 12:00 (10:00 to 14:00)}; the moment itself before contact is known
 * @param until  time to the earliest moment, negative after it
 * @param state  where it stands
 * @param word   the state in one word
 * @param shape  the state as a sign
 * @param source what it rests on, in words
 */
public record BenchMark(String key, String label, Instant low, Instant likely, Instant high, String text, Duration until, State state, String word, String shape,
        String source) {

    /** Where a mark stands. */
    public enum State {
        /** Ahead. */
        COMING("\u25cb"),
        /** In a minute or less. */
        SOON("\u25d4"),
        /** Inside its band: it may be any moment. */
        WITHIN("\u25d1"),
        /** Now: a mark without a band that passed less than half a minute ago. */
        DUE("\u25cf"),
        /** Past. */
        OVER("\u25b2"),
        /** What it stands for has happened. */
        DONE("\u2713");

        private final String shape;

        State(String shape) {
            this.shape = shape;
        }

        /** A sign that reads without colour. */
        public String shape() {
            return shape;
        }
    }

    public BenchMark {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(source, "source");
    }

    /** True while it calls for something: soon, within its band, due or over. */
    public boolean calls() {
        return state != State.COMING && state != State.DONE;
    }
}
