package org.flexwright.workbench.commands;

import java.nio.file.Path;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.exchange.ImportDialog;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectService;

/** Asks for tables, shows what they would change, and takes them in when that is confirmed. */
public final class ImportHandler extends WindowHandler {

    @Override
    boolean needsProject() {
        return true;
    }

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN);
        dialog.setText("Import tables: a zip file, one table, or tables.csv for its whole folder");
        dialog.setFilterNames(new String[] {"Tables"});
        dialog.setFilterExtensions(new String[] {"*.zip;*.csv"});
        String chosen = dialog.open();
        if (chosen != null && projects.session().isPresent()) {
            Path place = Path.of(chosen);
            new ImportDialog(window.getShell(), window.getService(Kit.class), projects, place.endsWith("tables.csv") ? place.getParent() : place).open();
        }
    }
}
