package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.project.ProjectService;

/** Closes the project; edits not saved stay in its journal. */
public final class CloseProjectHandler extends WindowHandler {

    @Override
    boolean needsProject() {
        return true;
    }

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        projects.close();
    }
}
