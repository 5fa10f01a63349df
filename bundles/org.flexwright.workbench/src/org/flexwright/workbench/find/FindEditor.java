package org.flexwright.workbench.find;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.flexwright.workbench.OnlyInput;
import org.flexwright.workbench.UnsavedEditor;

/** The search in the window. */
public final class FindEditor extends UnsavedEditor {

    /** Id of this editor. */
    public static final String ID = "org.flexwright.workbench.find";

    private static final OnlyInput INPUT = new OnlyInput("Find", "Search over everything in the project");

    private FindPane pane;

    /** Shows the search with its field ready to be typed in. */
    public static void show(IWorkbenchWindow window) {
        try {
            if (window.getActivePage().openEditor(INPUT, ID) instanceof FindEditor editor) {
                editor.pane.ready();
            }
        } catch (PartInitException e) {
            ILog.get().error("The search cannot be shown.", e);
        }
    }

    @Override
    public void createPartControl(Composite parent) {
        pane = new FindPane(parent, getSite().getWorkbenchWindow());
    }

    @Override
    public void setFocus() {
        pane.setFocus();
    }
}
