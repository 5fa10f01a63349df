package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;

import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.pages.common.Moments;

/** Steps in words. */
final class StepWords {

    private StepWords() {
    }

    /** The state of a step; a step without one is planned. */
    static StepState state(Step step) {
        return step.getState() == null ? StepState.PLANNED : step.getState();
    }

    /** Shape and word of where a step stands. */
    static Mark mark(Step step) {
        return switch (state(step)) {
            case PLANNED -> new Mark("○", "planned", Ink.QUIET);
            case RUNNING -> new Mark("●", "running", Ink.ACCENT);
            case DONE -> new Mark("✓", "done", Ink.IN);
            case SKIPPED -> new Mark("–", "left out", Ink.QUIET);
        };
    }

    /** The step's title, never empty. */
    static String title(Step step) {
        return step.getTitle() == null || step.getTitle().isBlank() ? step.getKind() : step.getTitle();
    }

    /** When the step is or was, counted from contact: what happened where it is known, else what is planned; empty when neither is. */
    static String when(Step step, TimeLine.Line line) {
        if (!line.actualStart().isEmpty()) {
            return line.actualStart();
        }
        return step.getStartedAt() == null ? line.plannedStart() : Moments.clock(step.getStartedAt());
    }

    /** State, planned and real length in a line. */
    static String line(Step step, TimeLine.Line line) {
        List<String> words = new ArrayList<>();
        words.add(mark(step).word() + (line.taken().isEmpty() ? "" : " " + line.taken()));
        if (!line.planned().isEmpty()) {
            words.add((line.taken().isEmpty() ? "" : "of ") + line.planned() + " planned");
        }
        if (line.late()) {
            words.add("late");
        }
        if (step.isUnconfirmed()) {
            words.add("copied, not confirmed");
        }
        return String.join(", ", words);
    }

    /** The line of a step in its trial's time line. */
    static TimeLine.Line of(Step step, TimeLine all) {
        return all.lines().get(((org.flexwright.model.Trial) step.eContainer()).getSteps().indexOf(step));
    }
}
