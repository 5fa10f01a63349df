package org.flexwright.core.label;

import java.util.Optional;

/** What a label is stuck on. The letter stands in the code for ever. */
public enum LabelKind {
    /** A trial, which is also one pot of a batch. */
    TRIAL('T'),
    /** A part or test piece of a trial. */
    PART('P'),
    /** A lot of a material. */
    LOT('L'),
    /** A batch of parts made by a recipe. */
    BATCH('B'),
    /** A version of a recipe. */
    RECIPE('R');

    private final char letter;

    LabelKind(char letter) {
        this.letter = letter;
    }

    /** Its letter in the code. */
    public char letter() {
        return letter;
    }

    static Optional<LabelKind> of(char letter) {
        for (LabelKind kind : values()) {
            if (kind.letter == letter) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
