package org.flexwright.core.session;

import java.nio.file.Path;
import java.util.List;

/** Makes, opens and restores projects on disk. One a program. */
public final class ProjectStore {

    /** File name ending of a project's folder. */
    public static final String SUFFIX = ".flexwright";

    private final StoreContext context;

    /** A store that works with what the context gives. */
    public ProjectStore(StoreContext context) {
        this.context = context;
    }

    /** Makes a new project; the folder's name ends in {@link #SUFFIX} and nothing is there yet. */
    public ProjectSession create(Path folder, String title) {
        throw new UnsupportedOperationException(context.who());
    }

    /** Opens a project for editing; read-only when it cannot be written, was written by a newer program or is open elsewhere. */
    public ProjectSession open(Path folder) {
        throw new UnsupportedOperationException();
    }

    /** Opens a project to look at; makes no file and takes no lock. */
    public ProjectSession openReadOnly(Path folder) {
        throw new UnsupportedOperationException();
    }

    /** Earlier saved states, newest first. */
    public List<KeptVersion> kept(Path folder) {
        throw new UnsupportedOperationException();
    }

    /** Makes an earlier state the project's state; the present one, with its unsaved edits, is kept first. The project must not be open. */
    public void restore(Path folder, KeptVersion version) {
        throw new UnsupportedOperationException();
    }
}
