package org.flexwright.workbench.pages;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/**
 * A thing of the open project as the input of an editor.
 *
 * @param address its stable address in the project
 * @param name    its name when it was opened
 */
public record SubjectInput(String address, String name) implements IEditorInput {

    @Override
    public boolean equals(Object other) {
        return other instanceof SubjectInput input && input.address.equals(address); // a thing keeps its editor when it is renamed
    }

    @Override
    public int hashCode() {
        return address.hashCode();
    }

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
        return name;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
