package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;

import java.nio.file.Path;

/** Asks for a project's folder and opens it. */
public final class OpenProjectHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        DirectoryDialog dialog = new DirectoryDialog(window.getShell());
        dialog.setText("Open a project");
        dialog.setMessage("Choose a project's folder; its name ends in .flexwright.");
        String chosen = dialog.open();
        if (chosen != null) {
            Trouble.guard(window.getShell(), "Not opened", () -> projects.open(Path.of(chosen)));
        }
    }
}
