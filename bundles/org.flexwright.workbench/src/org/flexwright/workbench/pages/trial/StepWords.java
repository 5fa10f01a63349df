package org.flexwright.workbench.pages.trial;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.field.FieldText;
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
    static String when(Step step, Optional<Instant> contact) {
        if (step.getStartedAt() != null && contact.isPresent()) {
            return Moments.fromContact(Moments.minutes(contact.get(), step.getStartedAt()));
        }
        if (step.getStartedAt() != null) {
            return Moments.clock(step.getStartedAt());
        }
        return step.getPlannedStart() == null ? "" : Moments.fromContact(step.getPlannedStart());
    }

    /** State, planned and real length in a line. */
    static String line(Step step, Instant now) {
        List<String> words = new ArrayList<>();
        words.add(mark(step).word());
        Instant end = state(step) == StepState.RUNNING ? now : step.getEndedAt();
        if (step.getStartedAt() != null && end != null && end.isAfter(step.getStartedAt())) {
            words.add(Moments.fromContact(Moments.minutes(step.getStartedAt(), end)));
        }
        if (step.getPlannedDuration() != null) {
            words.add((words.size() > 1 ? "of " : "") + FieldText.digits(step.getPlannedDuration()) + " min planned");
        }
        if (step.isUnconfirmed()) {
            words.add("copied, not confirmed");
        }
        return String.join(", ", words);
    }
}
