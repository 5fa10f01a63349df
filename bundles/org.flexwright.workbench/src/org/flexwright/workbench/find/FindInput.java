package org.flexwright.workbench.find;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** The input of the search: there is only one. */
record FindInput() implements IEditorInput {

    @Override
    public boolean exists() {
        return false; // keeps it out of lists of files used before
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return "Find";
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return "Search over everything in the project";
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
