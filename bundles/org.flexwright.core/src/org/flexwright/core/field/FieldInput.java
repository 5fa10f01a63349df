package org.flexwright.core.field;

import java.util.Objects;

/** What became of something typed into a field. */
public sealed interface FieldInput {

    /**
     * It was understood.
     *
     * @param value      the value as {@link FieldType} says, or null when an optional field was left empty
     * @param understood the value read back with its unit; empty when nothing was typed
     */
    record Read(Object value, String understood) implements FieldInput {
        public Read {
            Objects.requireNonNull(understood, "understood");
        }
    }

    /**
     * It was not accepted.
     *
     * @param sentence one sentence: what, where, what is allowed
     */
    record Rejected(String sentence) implements FieldInput {
        public Rejected {
            Objects.requireNonNull(sentence, "sentence");
        }
    }
}
