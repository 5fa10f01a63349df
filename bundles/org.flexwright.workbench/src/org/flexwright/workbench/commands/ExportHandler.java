package org.flexwright.workbench.commands;

import java.nio.file.Path;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.exchange.Exchange;
import org.flexwright.workbench.project.ProjectService;

/** Asks for a file and writes the whole project into it, as tables or as JSON. */
public final class ExportHandler extends WindowHandler {

    @Override
    boolean needsProject() {
        return true;
    }

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.SAVE);
        dialog.setText("Export the project");
        dialog.setFilterNames(new String[] {"Tables in a zip file", "JSON"});
        dialog.setFilterExtensions(new String[] {"*.zip", "*.json"});
        dialog.setFileName("tables.zip");
        String chosen = dialog.open();
        if (chosen != null && projects.session().isPresent()) {
            new Exchange(window.getShell(), projects).export(Path.of(chosen));
        }
    }
}
