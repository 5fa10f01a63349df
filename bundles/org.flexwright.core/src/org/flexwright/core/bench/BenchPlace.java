package org.flexwright.core.bench;

import java.util.Objects;

/**
 * One screen of the bench view: a step, or a part of a long one.
 *
 * @param key      stable within the trial: {@code 2/use/0}; {@code end} after the last step
 * @param stepId   id of the step; empty at the end
 * @param step     place of the step from 0; the number of steps at the end
 * @param part     which part of the step
 * @param use      place of the material within the step from 0, for {@link Part#USE}; else -1
 * @param title    a few words
 * @param standing whether it is behind, here or ahead
 */
public record BenchPlace(String key, String stepId, int step, Part part, int use, String title, Standing standing) {

    /** Part of a step. */
    public enum Part {
        /** Its cautions, to be acknowledged. */
        CAUTIONS,
        /** What must be so before it begins: go, hold or dump. */
        GATE,
        /** One material to weigh. */
        USE,
        /** Doing it, and how it went. */
        WORK,
        /** All steps are behind. */
        END
    }

    /** Where a screen stands. */
    public enum Standing {
        /** Done, or left out. */
        BEHIND,
        /** The one to do now. */
        HERE,
        /** Not yet. */
        AHEAD
    }

    public BenchPlace {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(stepId, "stepId");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(standing, "standing");
    }

    BenchPlace standing(Standing now) {
        return new BenchPlace(key, stepId, step, part, use, title, now);
    }
}
