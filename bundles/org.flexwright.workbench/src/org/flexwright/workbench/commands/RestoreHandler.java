package org.flexwright.workbench.commands;

import java.nio.file.Path;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.workbench.exchange.Exchange;
import org.flexwright.workbench.project.ProjectService;

/** Asks for an archive and for a new folder, and puts the project there. */
public final class RestoreHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        FileDialog archive = new FileDialog(window.getShell(), SWT.OPEN);
        archive.setText("Restore from a backup");
        archive.setFilterExtensions(new String[] {"*.zip"});
        String from = archive.open();
        if (from == null) {
            return;
        }
        FileDialog folder = new FileDialog(window.getShell(), SWT.SAVE);
        folder.setText("New folder for the restored project");
        folder.setFilterPath(Path.of(from).toAbsolutePath().getParent().toString());
        folder.setFileName("restored" + ProjectStore.SUFFIX);
        String to = folder.open();
        if (to != null) {
            new Exchange(window.getShell(), projects).restore(Path.of(from), Path.of(to.endsWith(ProjectStore.SUFFIX) ? to : to + ProjectStore.SUFFIX));
        }
    }
}
