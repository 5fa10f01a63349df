package org.flexwright.workbench.commands;

import java.nio.file.Path;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.model.Entry;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.project.Attaching;
import org.flexwright.workbench.project.ProjectService;

/** Asks for files and copies them into the project, to the thing chosen in the tree or open in the editor. */
public final class AttachHandler extends WindowHandler {

    @Override
    boolean needsProject() {
        return true;
    }

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        if (projects.session().isEmpty()) {
            return;
        }
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText("Attach files");
        dialog.setFilterNames(new String[] {"All files", "Photos", "Curves"});
        dialog.setFilterExtensions(new String[] {"*", "*.png;*.jpg;*.jpeg", "*.csv;*.tsv;*.txt"});
        if (dialog.open() != null) {
            for (String name : dialog.getFileNames()) {
                Attaching.attach(window.getShell(), projects, Path.of(dialog.getFilterPath(), name), owner(window));
            }
        }
    }

    private static Entry owner(IWorkbenchWindow window) {
        if (window.getSelectionService().getSelection() instanceof IStructuredSelection selection
                && selection.getFirstElement() instanceof Entry entry) {
            return entry;
        }
        IEditorPart active = window.getActivePage().getActiveEditor();
        return active instanceof SubjectEditor editor && editor.subject() instanceof Entry entry ? entry : null;
    }
}
