package org.flexwright.workbench.find;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;

/** The search in the window. */
public final class FindEditor extends EditorPart {

    /** Id of this editor. */
    public static final String ID = "org.flexwright.workbench.find";

    private FindPane pane;

    /** Shows the search with its field ready to be typed in. */
    public static void show(IWorkbenchWindow window) {
        try {
            if (window.getActivePage().openEditor(new FindInput(), ID) instanceof FindEditor editor) {
                editor.pane.ready();
            }
        } catch (PartInitException e) {
            ILog.get().error("The search cannot be shown.", e);
        }
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleToolTip(input.getToolTipText());
    }

    @Override
    public void createPartControl(Composite parent) {
        pane = new FindPane(parent, getSite().getWorkbenchWindow());
    }

    @Override
    public void setFocus() {
        pane.setFocus();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("There is nothing to save: a saved search stands in the project.");
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("There is nothing to save: a saved search stands in the project.");
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
