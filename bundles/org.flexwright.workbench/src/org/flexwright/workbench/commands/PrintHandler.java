package org.flexwright.workbench.commands;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.handover.HandOver;
import org.flexwright.workbench.handover.Printing;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;

/** Asks for a folder, writes a document into it and opens it. */
abstract class PrintHandler extends WindowHandler {

    @Override
    final boolean needsProject() {
        return true;
    }

    /** What is printed of a thing, or null. */
    abstract HandOver printed(EObject thing, ProjectSession session, ProjectService projects);

    /** What is said when there is nothing to print. */
    abstract String nothing();

    @Override
    final void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        projects.session().ifPresent(session -> print(window, projects, session));
    }

    private void print(IWorkbenchWindow window, ProjectService projects, ProjectSession session) {
        HandOver printed = printed(thing(window), session, projects);
        if (printed == null) {
            Trouble.tell(window.getShell(), "Nothing to print", nothing());
            return;
        }
        DirectoryDialog dialog = new DirectoryDialog(window.getShell(), SWT.SAVE);
        dialog.setText("Where to write " + printed.name());
        dialog.setMessage("Two files are written there, one for the screen and one for paper.");
        String folder = dialog.open();
        if (folder != null) {
            new Printing(window.getShell().getDisplay(), printed.document(), Path.of(folder), printed.name(), outcome(window.getShell())).schedule();
        }
    }

    private static Printing.Outcome outcome(Shell shell) {
        return new Printing.Outcome() {
            @Override
            public void written(List<Path> files) {
                Program.launch(files.getLast().toString());
            }

            @Override
            public void failed(String sentence) {
                if (!shell.isDisposed()) {
                    Trouble.tell(shell, "Not written", sentence);
                }
            }
        };
    }

    private static EObject thing(IWorkbenchWindow window) {
        if (window.getSelectionService().getSelection() instanceof IStructuredSelection selection && selection.getFirstElement() instanceof EObject chosen) {
            return chosen;
        }
        IEditorPart active = window.getActivePage().getActiveEditor();
        return active instanceof SubjectEditor editor ? editor.subject() : null;
    }
}
