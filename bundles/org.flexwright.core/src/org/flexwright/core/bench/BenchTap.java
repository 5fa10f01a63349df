package org.flexwright.core.bench;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.field.FieldDescriptor;

/**
 * Something a gloved finger can do. {@link BenchTaps#tap} does it by its key and what was given.
 *
 * @param key     what to do: {@code start, finish, skip, contact, contactAgo, weigh, correct/1, field/minutes, ask/scraped, asPlanned/minutes, ack, go,
 *                hold, dump, note, odd, photo, room/roomC, made, undo}
 * @param label   a few words
 * @param kind    what it asks for
 * @param rank    how prominent it is
 * @param field   unit, bounds and help of what is given; null for a touch
 * @param choices what can be given with one touch: the words of a choice, yes and no, usual reasons; empty when anything within the field is
 * @param offered what the plan or the clock would say, as {@link #tap} takes it; empty when nothing
 * @param said    words for what is offered: "as the clock says, 3.2 min"; empty when nothing is
 */
public record BenchTap(String key, String label, Kind kind, Rank rank, FieldDescriptor field, List<Choice> choices, String offered, String said) {

    /** What a tap asks for. */
    public enum Kind {
        /** Nothing: one touch. */
        TOUCH,
        /** A number, by the number pad or the balance. */
        NUMBER,
        /** One of {@link BenchTap#choices()}: a choice, yes or no. */
        CHOICE,
        /** A reason: one of {@link BenchTap#choices()}, or own words. */
        REASON,
        /** Words; may be left empty and written later. */
        WORDS,
        /** A picture file. */
        PHOTO,
        /** Date and revision of the data sheet that was read, {@code 2026-01-15 4}. */
        SHEET
    }

    /** How prominent a tap is. */
    public enum Rank {
        /** The thing to do now. */
        MAIN,
        /** Also of this step. */
        SIDE,
        /** Always there, out of the way. */
        QUIET
    }

    /**
     * What one touch gives.
     *
     * @param value as {@link BenchTaps#tap} takes it
     * @param label words on it
     */
    public record Choice(String value, String label) {
        public Choice {
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(label, "label");
        }
    }

    public BenchTap {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(rank, "rank");
        Objects.requireNonNull(offered, "offered");
        Objects.requireNonNull(said, "said");
        choices = List.copyOf(choices);
    }

    static BenchTap touch(String key, String label, Rank rank) {
        return new BenchTap(key, label, Kind.TOUCH, rank, null, List.of(), "", "");
    }

    static BenchTap of(String key, String label, Kind kind, Rank rank, List<Choice> choices) {
        return new BenchTap(key, label, kind, rank, null, choices, "", "");
    }

    static BenchTap number(String key, String label, Rank rank, FieldDescriptor field) {
        return new BenchTap(key, label, Kind.NUMBER, rank, field, List.of(), "", "");
    }

    BenchTap offering(String value, String words) {
        return new BenchTap(key, label, kind, rank, field, choices, value, words);
    }
}
