package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.about.AboutDialog;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectService;

/** Says what the program is. */
public final class AboutHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        new AboutDialog(window.getShell(), window.getService(Kit.class), projects.registries()).open();
    }
}
