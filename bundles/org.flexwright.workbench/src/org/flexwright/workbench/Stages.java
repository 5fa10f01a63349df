package org.flexwright.workbench;

import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.WorkbenchException;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.pages.SubjectEditors;
import org.flexwright.workbench.project.ProjectService;

import org.eclipse.emf.ecore.EObject;

/** Goes from one stage of the work to another and brings up what is worked on there. */
public final class Stages {

    private Stages() {
    }

    /** Shows a stage's perspective and turns to the page of the open thing that belongs there, or opens what does. */
    public static void go(IWorkbenchWindow window, Stage stage) {
        try {
            window.getWorkbench().showPerspective(stage.perspective(), window);
        } catch (WorkbenchException e) {
            ILog.get().error("The perspective " + stage.word() + " cannot be shown.", e);
            return;
        }
        ProjectService projects = window.getService(ProjectService.class);
        projects.session().ifPresent(session -> turn(window, stage, session.project()));
    }

    private static void turn(IWorkbenchWindow window, Stage stage, Project project) {
        IEditorPart active = window.getActivePage().getActiveEditor();
        if (active instanceof SubjectEditor editor && editor.show(stage)) {
            return;
        }
        if (SubjectEditors.open(window, home(stage, project)) instanceof SubjectEditor opened) {
            opened.show(stage);
        }
    }

    /** What a maker most likely works on at a stage. */
    private static EObject home(Stage stage, Project project) {
        return switch (stage) {
            case PLAN, DECIDE -> project;
            case MAKE -> trial(project);
            case MEASURE -> {
                Session last = project.getSessions().isEmpty() ? null : project.getSessions().getLast();
                yield last == null ? trial(project) : last;
            }
        };
    }

    private static EObject trial(Project project) {
        Trial last = null;
        for (Trial trial : project.getTrials()) {
            if (last == null || trial.getState() == TrialState.MAKING || last.getState() != TrialState.MAKING) {
                last = trial;
            }
        }
        return last == null ? project : last;
    }
}
