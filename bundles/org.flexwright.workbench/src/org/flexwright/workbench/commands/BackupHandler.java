package org.flexwright.workbench.commands;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.workbench.exchange.Exchange;
import org.flexwright.workbench.project.ProjectService;

/** Asks for a file and makes an archive of the open project. */
public final class BackupHandler extends WindowHandler {

    @Override
    boolean needsProject() {
        return true;
    }

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        if (projects.session().isEmpty()) {
            return;
        }
        Path folder = projects.session().get().folder();
        FileDialog dialog = new FileDialog(window.getShell(), SWT.SAVE);
        dialog.setText("Back up the project");
        dialog.setFilterPath(folder.getParent().toString());
        dialog.setFilterExtensions(new String[] {"*.zip"});
        dialog.setFileName(folder.getFileName().toString().replace(ProjectStore.SUFFIX, "") + "-" + DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").format(
                LocalDateTime.now()) + ".zip");
        String chosen = dialog.open();
        if (chosen != null) {
            new Exchange(window.getShell(), projects).backup(Path.of(chosen));
        }
    }
}
