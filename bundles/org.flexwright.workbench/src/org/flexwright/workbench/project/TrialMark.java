package org.flexwright.workbench.project;

import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;

/**
 * How a trial stands, in a shape and few words.
 *
 * @param mark  the shape and its colour
 * @param words e.g. "in 3 of 4"
 */
public record TrialMark(Mark mark, String words) {

    /** The mark of a trial against the newest target sheet. */
    public static TrialMark of(Trial trial, ProjectService projects) {
        TrialState state = trial.getState() == null ? TrialState.PLANNED : trial.getState();
        return switch (state) {
            case PLANNED -> new TrialMark(new Mark("○", "planned", Ink.QUIET), "planned");
            case MAKING -> new TrialMark(new Mark("◔", "being made", Ink.ACCENT), "being made");
            case FAILED -> new TrialMark(new Mark("✕", "failed", Ink.OUT), "failed");
            case DISCARDED -> new TrialMark(new Mark("✕", "discarded", Ink.QUIET), "discarded");
            case MADE -> new TrialMark(new Mark("–", "made", Ink.QUIET), "made");
        };
    }
}
