package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.settings.LookDialog;

/** Size of text and theme. */
public final class PreferencesHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        new LookDialog(window.getShell(), window.getWorkbench()).open();
    }
}
