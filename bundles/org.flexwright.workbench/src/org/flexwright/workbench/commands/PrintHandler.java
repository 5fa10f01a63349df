package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.handover.Asking;
import org.flexwright.workbench.handover.HandOver;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;

/** Writes a document about the thing that is chosen in the tree or open in the editor. */
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
        projects.session().ifPresent(session -> {
            HandOver printed = printed(thing(window), session, projects);
            if (printed == null) {
                Trouble.tell(window.getShell(), "Nothing to print", nothing());
            } else {
                Asking.write(window.getShell(), printed);
            }
        });
    }

    private static EObject thing(IWorkbenchWindow window) {
        if (window.getSelectionService().getSelection() instanceof IStructuredSelection selection && selection.getFirstElement() instanceof EObject chosen) {
            return chosen;
        }
        IEditorPart active = window.getActivePage().getActiveEditor();
        return active instanceof SubjectEditor editor ? editor.subject() : null;
    }
}
