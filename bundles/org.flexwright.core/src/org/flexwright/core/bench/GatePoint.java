package org.flexwright.core.bench;

import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.core.Source;

/**
 * One thing that must be so before a step that cannot be taken back, such as pouring. Not known is not met.
 *
 * @param name     stable name within the step kind, e.g. {@code ratio}
 * @param title    a few words: what must be so
 * @param state    whether it is
 * @param when     before the step that says so begins, or before a later step uses what it made
 * @param sentence how it stands, with the figures it rests on
 * @param source   what the demand rests on
 * @param answer   feature of the step's details that answers it, so that it can be answered at the gate; empty when none does
 */
public record GatePoint(String name, String title, State state, When when, Message sentence, Source source, String answer) {

    /** Whether a point is met. */
    public enum State {
        /** It is so. */
        MET,
        /** It is not so. */
        OPEN,
        /** Nothing tells; counts as not met. */
        UNKNOWN
    }

    /** When a point is asked for. */
    public enum When {
        /** Before the step that says so begins. */
        BEFORE,
        /** After that step, before the next one that has a gate. */
        AFTER
    }

    public GatePoint {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(when, "when");
        Objects.requireNonNull(sentence, "sentence");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(answer, "answer");
    }

    /** A point to be met before its own step begins; such a step has a gate. */
    public static GatePoint before(String name, String title, State state, Message sentence, Source source) {
        return new GatePoint(name, title, state, When.BEFORE, sentence, source, "");
    }

    /** A point on what a step made, to be met before the next step that has a gate. */
    public static GatePoint after(String name, String title, State state, Message sentence, Source source) {
        return new GatePoint(name, title, state, When.AFTER, sentence, source, "");
    }

    /** The same point, answered by a feature of the details. */
    public GatePoint answeredBy(String feature) {
        return new GatePoint(name, title, state, when, sentence, source, feature);
    }

    /** The state of a yes-or-no answer. */
    public static State of(Boolean answer) {
        return answer == null ? State.UNKNOWN : answer ? State.MET : State.OPEN;
    }
}
