package org.flexwright.core.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.Message;
import org.flexwright.model.Project;

/** A project that is open. All calls on the model thread. */
public final class ProjectSession implements AutoCloseable {

    ProjectSession() {
    }

    /** The project; changed through {@link #execute} alone. */
    public Project project() {
        throw new UnsupportedOperationException();
    }

    /** The project's folder. */
    public Path folder() {
        throw new UnsupportedOperationException();
    }

    /** True when nothing can be changed or saved. */
    public boolean readOnly() {
        throw new UnsupportedOperationException();
    }

    /** Why nothing can be changed, one sentence; empty when it can. */
    public String readOnlyReason() {
        throw new UnsupportedOperationException();
    }

    /** What there was to say on opening: edits that came back, a damaged journal, absent plugins. */
    public List<Message> notices() {
        throw new UnsupportedOperationException();
    }

    /**
     * Makes one edit that can be undone by its name. It is in the journal on disk before this returns. When the work throws, everything
     * is as before and the exception goes on.
     */
    public void execute(String name, Consumer<Edit> work) {
        throw new UnsupportedOperationException();
    }

    /** As {@link #execute}; when the step to be undone next was made with an equal key, both become one step. */
    public void merge(String name, Object mergeKey, Consumer<Edit> work) {
        throw new UnsupportedOperationException();
    }

    /** True when there is a step to undo. */
    public boolean canUndo() {
        throw new UnsupportedOperationException();
    }

    /** True when there is a step to redo. */
    public boolean canRedo() {
        throw new UnsupportedOperationException();
    }

    /** Name of the step to undo, empty when there is none. */
    public String undoName() {
        throw new UnsupportedOperationException();
    }

    /** Name of the step to redo, empty when there is none. */
    public String redoName() {
        throw new UnsupportedOperationException();
    }

    /** Undoes the last step; nothing when there is none. */
    public void undo() {
        throw new UnsupportedOperationException();
    }

    /** Makes the last undone step again; nothing when there is none. */
    public void redo() {
        throw new UnsupportedOperationException();
    }

    /** True when there are edits the saved file does not hold (they are in the journal). */
    public boolean dirty() {
        throw new UnsupportedOperationException();
    }

    /** Saves; throws {@link StoreException} and leaves the saved file as it was when it cannot. */
    public void save() {
        throw new UnsupportedOperationException();
    }

    /** Adds a listener. */
    public void addListener(SessionListener listener) {
        throw new UnsupportedOperationException();
    }

    /** Takes a listener away. */
    public void removeListener(SessionListener listener) {
        throw new UnsupportedOperationException();
    }

    /** Plugins that wrote details into this project and are not here. */
    public List<MissingPlugin> missingPlugins() {
        throw new UnsupportedOperationException();
    }

    /** Stable address of an object of the project: its id, or the id of what contains it and the way from there. */
    public String address(EObject object) {
        throw new UnsupportedOperationException();
    }

    /** The object at an address. */
    public Optional<EObject> find(String address) {
        throw new UnsupportedOperationException();
    }

    /** Ends the session and gives the lock back. Edits not saved stay in the journal and come back on the next opening. */
    @Override
    public void close() {
        throw new UnsupportedOperationException();
    }
}
