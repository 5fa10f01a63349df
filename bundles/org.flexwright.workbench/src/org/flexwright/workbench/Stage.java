package org.flexwright.workbench;

import java.util.Locale;
import java.util.Optional;

/** What a maker is doing; each has its perspective. */
public enum Stage {
    /** Need, reference part, target sheet, materials, routes, new trial. */
    PLAN("Plan", "Need, reference part, targets, materials, new trial"),
    /** One trial's steps. */
    MAKE("Make", "One trial's steps, weighing, timers"),
    /** Sessions, readings, curves, photos. */
    MEASURE("Measure", "Sessions, readings, curves, photos"),
    /** Side by side, what changed, what next. */
    DECIDE("Decide", "Side by side, what changed, what next");

    private final String word;
    private final String hint;

    Stage(String word, String hint) {
        this.word = word;
        this.hint = hint;
    }

    /** The word on the screen. */
    public String word() {
        return word;
    }

    /** What is done here, a few words. */
    public String hint() {
        return hint;
    }

    /** Id of its perspective. */
    public String perspective() {
        return "org.flexwright.workbench." + name().toLowerCase(Locale.ROOT);
    }

    /** The stage of a perspective, or empty when it is none of ours. */
    public static Optional<Stage> of(String perspective) {
        for (Stage stage : values()) {
            if (stage.perspective().equals(perspective)) {
                return Optional.of(stage);
            }
        }
        return Optional.empty();
    }
}
