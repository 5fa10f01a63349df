package org.flexwright.workbench.project;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.Verdict;
import org.flexwright.core.view.Comparison;
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
            case MADE -> judged(trial, projects);
        };
    }

    private static TrialMark judged(Trial trial, ProjectService projects) {
        Comparison all = projects.comparison();
        for (int column = 0; column < all.columns().size(); column++) {
            if (all.columns().get(column).id().equals(trial.getId()) && !all.rows().isEmpty()) {
                return new TrialMark(Mark.of(worst(all, column)), all.columns().get(column).summary());
            }
        }
        return new TrialMark(new Mark("–", "made", Ink.QUIET), "made");
    }

    /** One target missed is a miss, one that cannot be told leaves the whole open; a trial is in only where every target is. */
    private static Verdict worst(Comparison all, int column) {
        List<Verdict> verdicts = all.cells().stream().map(row -> row.get(column).judgement()).filter(Objects::nonNull).map(Judgement::verdict).toList();
        for (Verdict verdict : List.of(Verdict.FAILED_PART, Verdict.ABOVE, Verdict.BELOW, Verdict.NOT_COMPARABLE, Verdict.CANNOT_TELL)) {
            if (verdicts.contains(verdict)) {
                return verdict;
            }
        }
        return verdicts.isEmpty() || verdicts.contains(Verdict.NOT_MEASURED) ? Verdict.NOT_MEASURED : Verdict.IN;
    }
}
