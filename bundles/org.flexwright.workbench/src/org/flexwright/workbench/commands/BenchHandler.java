package org.flexwright.workbench.commands;

import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.bench.BenchWindow;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.project.ProjectService;

/** Goes to the bench with the trial that is open or chosen, else with one that is being made, else with one that is planned. */
public final class BenchHandler extends WindowHandler {

    @Override
    boolean needsProject() {
        return true;
    }

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        projects.session().flatMap(session -> trial(window, session.project())).ifPresent(trial -> BenchWindow.open(window, trial));
    }

    private static Optional<Trial> trial(IWorkbenchWindow window, Project project) {
        IEditorPart active = window.getActivePage().getActiveEditor();
        Optional<Trial> open = active instanceof SubjectEditor editor ? trialOf(editor.subject()) : Optional.empty();
        Object chosen = window.getSelectionService().getSelection() instanceof IStructuredSelection selection ? selection.getFirstElement() : null;
        return open.or(() -> chosen instanceof EObject thing ? trialOf(thing) : Optional.empty()).or(() -> inState(project, TrialState.MAKING))
                .or(() -> inState(project, TrialState.PLANNED));
    }

    private static Optional<Trial> inState(Project project, TrialState state) {
        return project.getTrials().stream().filter(trial -> trial.getState() == state).findFirst();
    }

    private static Optional<Trial> trialOf(EObject thing) {
        for (EObject at = thing; at != null; at = at.eContainer()) {
            if (at instanceof Trial trial) {
                return Optional.of(trial);
            }
        }
        return Optional.empty();
    }
}
