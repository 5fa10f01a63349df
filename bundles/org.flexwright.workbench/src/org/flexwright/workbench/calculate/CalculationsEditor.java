package org.flexwright.workbench.calculate;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.flexwright.workbench.OnlyInput;
import org.flexwright.workbench.UnsavedEditor;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;

/** The calculations in the window. */
public final class CalculationsEditor extends UnsavedEditor {

    /** Id of this editor. */
    public static final String ID = "org.flexwright.workbench.calculations";

    private static final OnlyInput INPUT = new OnlyInput("Calculations", "Every calculation the plugins bring");

    private final ProjectListener watcher = new ProjectListener() {
        @Override
        public void opened() {
            pane.projectChanged();
        }

        @Override
        public void closed() {
            pane.projectChanged();
        }

        @Override
        public void changed(java.util.Set<org.eclipse.emf.ecore.EObject> touched) {
            pane.projectChanged();
        }
    };
    private ProjectService projects;
    private CalculationsPane pane;

    /** Shows the calculations, at the one with that id unless it is null. */
    public static void show(IWorkbenchWindow window, String calculation) {
        try {
            if (window.getActivePage().openEditor(INPUT, ID) instanceof CalculationsEditor editor && calculation != null) {
                editor.pane.choose(calculation);
            }
        } catch (PartInitException e) {
            ILog.get().error("The calculations cannot be shown.", e);
        }
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        super.init(site, input);
        projects = site.getService(ProjectService.class);
    }

    @Override
    public void createPartControl(Composite parent) {
        pane = new CalculationsPane(parent, getSite().getService(Kit.class), projects);
        projects.addListener(watcher);
    }

    @Override
    public void dispose() {
        if (projects != null) {
            projects.removeListener(watcher);
        }
        super.dispose();
    }

    @Override
    public void setFocus() {
        pane.setFocus();
    }
}
