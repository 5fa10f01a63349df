package org.flexwright.workbench.overview;

import java.time.Instant;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.ageing.AgeingCheck;
import org.flexwright.core.ageing.AgeingPlans;
import org.flexwright.core.ageing.AgeingState;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.verdict.AgeSpan;
import org.flexwright.model.Project;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;

/**
 * What most likely comes next in a project.
 *
 * @param sentence what is missing or waiting
 * @param action   words of the button
 * @param kind     what the button does
 * @param thing    what it opens, for {@link Kind#OPEN}
 */
record NextStep(String sentence, String action, Kind kind, EObject thing) {

    /** What the button does. */
    enum Kind {
        ADD_NEED, ADD_REFERENCE, ADD_TARGETS, NEW_TRIAL, OPEN, COMPARE
    }

    /** What comes next now: a reading of an ageing plan that is due cannot wait, but for a trial that is being made. */
    static NextStep of(Project project, PropertyCatalogue properties, Instant now) {
        List<AgeingCheck> due = AgeingPlans.open(project, properties, now).stream().filter(c -> c.state() == AgeingState.DUE).toList();
        if (due.isEmpty() || project.getTrials().stream().anyMatch(t -> t.getState() == TrialState.MAKING)) {
            return of(project);
        }
        AgeingCheck first = due.getFirst();
        String pieces = String.join(", ", due.stream().filter(c -> c.point() == first.point()).map(c -> Names.piece(c.piece())).toList());
        return new NextStep("To be read now, at an age of " + AgeSpan.textOfDays(first.point().getDays()) + ", give or take " + AgeSpan.textOfDays(AgeingPlans
                .give(first.point())) + ": " + pieces + " (" + Names.of(first.plan()) + ").", "Open the plan", Kind.OPEN, first.plan());
    }

    static NextStep of(Project project) {
        if (project.getNeeds().isEmpty()) {
            return new NextStep("Nothing says yet what the part must do.", "Add a need", Kind.ADD_NEED, null);
        }
        if (project.getReferenceParts().isEmpty() && project.getTargetSheets().isEmpty()) {
            return new NextStep("If there is a part to re-create, describe and measure it; targets follow from it.", "Add a reference part",
                    Kind.ADD_REFERENCE, null);
        }
        if (project.getTargetSheets().isEmpty()) {
            return new NextStep("Needs in words cannot be measured: turn them into targets with limits.", "Add a target sheet", Kind.ADD_TARGETS, null);
        }
        TargetSheet sheet = project.getTargetSheets().getLast();
        if (sheet.getTargets().isEmpty()) {
            return new NextStep("The newest target sheet has no target yet.", "Open it", Kind.OPEN, sheet);
        }
        if (project.getTrials().isEmpty()) {
            return new NextStep("There are targets and no trial yet.", "New trial…", Kind.NEW_TRIAL, null);
        }
        return trials(project);
    }

    private static NextStep trials(Project project) {
        for (Trial trial : project.getTrials()) {
            if (trial.getState() == TrialState.MAKING) {
                return new NextStep("Trial " + trial.getCode() + " is being made.", "Go on with it", Kind.OPEN, trial);
            }
        }
        for (Trial trial : project.getTrials()) {
            if (trial.getState() == TrialState.PLANNED) {
                return new NextStep("Trial " + trial.getCode() + " is planned and waits to be made.", "Open it", Kind.OPEN, trial);
            }
        }
        Trial last = project.getTrials().getLast();
        if (last.getState() == TrialState.MADE && (last.getConclusion() == null || last.getConclusion().isBlank())) {
            return new NextStep("Trial " + last.getCode() + " was made and has no conclusion yet.", "Open it", Kind.OPEN, last);
        }
        return new NextStep("Every trial is made and concluded: compare them, then decide.", "Side by side", Kind.COMPARE, null);
    }
}
