package org.flexwright.workbench.pages;

import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.flexwright.core.naming.Names;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.settings.RecentThing;
import org.flexwright.workbench.settings.Settings;

/** Opens things of the project in their editors. */
public final class SubjectEditors {

    private SubjectEditors() {
    }

    /** Opens a thing, or the nearest thing around it that has an editor of its own; null when there is none. */
    public static IEditorPart open(IWorkbenchWindow window, EObject thing) {
        ProjectService projects = window.getService(ProjectService.class);
        EObject subject = editable(window.getService(EditorPages.class), thing);
        projects.session().map(session -> session.project().getId()).ifPresent(project -> window.getService(Settings.class).looked(new RecentThing(project, projects.address(
                subject))));
        try {
            return window.getActivePage().openEditor(new SubjectInput(projects.address(subject), Names.tab(subject)), SubjectEditor.ID);
        } catch (PartInitException e) {
            ILog.get().error("The editor of " + Names.of(subject) + " cannot be opened.", e);
            return null;
        }
    }

    /** Opens a thing and brings a place in it into sight. */
    public static void reveal(IWorkbenchWindow window, EObject thing, String feature) {
        if (open(window, thing) instanceof SubjectEditor editor) {
            editor.reveal(thing, feature);
        }
    }

    /** The thing itself when pages accept it or it stands in a list of the project; else what contains it. */
    private static EObject editable(EditorPages pages, EObject thing) {
        for (EObject at = thing; at.eContainer() != null; at = at.eContainer()) {
            if (!pages.pagesFor(at).isEmpty() || at.eContainer() instanceof Project || at.eClass() == ModelPackage.Literals.LOT) {
                return at;
            }
        }
        return root(thing);
    }

    private static EObject root(EObject thing) {
        EObject at = thing;
        while (at.eContainer() != null) {
            at = at.eContainer();
        }
        return at;
    }
}
