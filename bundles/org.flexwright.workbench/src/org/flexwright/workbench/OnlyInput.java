package org.flexwright.workbench;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/**
 * The input of an editor of which there is only one.
 *
 * @param name  its name on the tab
 * @param about what it is for, a few words
 */
public record OnlyInput(String name, String about) implements IEditorInput {

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
        return name;
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return about;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
