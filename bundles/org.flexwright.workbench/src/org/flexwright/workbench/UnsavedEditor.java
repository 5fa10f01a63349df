package org.flexwright.workbench;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.part.EditorPart;

/** An editor that has nothing of its own to save: what is kept in it stands in the project. */
public abstract class UnsavedEditor extends EditorPart {

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleToolTip(input.getToolTipText());
    }

    @Override
    public final void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("There is nothing to save: what is kept stands in the project.");
    }

    @Override
    public final void doSaveAs() {
        throw new UnsupportedOperationException("There is nothing to save: what is kept stands in the project.");
    }

    @Override
    public final boolean isDirty() {
        return false;
    }

    @Override
    public final boolean isSaveAsAllowed() {
        return false;
    }
}
