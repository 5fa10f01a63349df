package org.flexwright.workbench.calculate;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** The input of the calculations: there is only one. */
record CalculationsInput() implements IEditorInput {

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
        return "Calculations";
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return "Every calculation the plugins bring";
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
