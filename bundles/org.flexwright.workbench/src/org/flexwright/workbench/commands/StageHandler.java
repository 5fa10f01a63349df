package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.Stages;
import org.flexwright.workbench.project.ProjectService;

/** Goes to a stage. */
public final class StageHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        Stages.go(window, Stage.valueOf(event.getParameter("org.flexwright.workbench.stage.name")));
    }
}
