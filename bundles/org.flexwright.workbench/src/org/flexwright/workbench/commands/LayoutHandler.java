package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.project.ProjectService;

/** Puts the views back where they were at first. */
public final class LayoutHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        window.getActivePage().resetPerspective();
    }
}
