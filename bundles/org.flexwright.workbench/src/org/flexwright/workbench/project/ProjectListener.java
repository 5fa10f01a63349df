package org.flexwright.workbench.project;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;

/** Hears of the window's project, on the screen's thread. */
public interface ProjectListener {
    /** A project was opened. */
    default void opened() {
    }

    /** The project was closed; there is none now. */
    default void closed() {
    }

    /** Things of the project changed. */
    default void changed(Set<EObject> touched) {
    }

    /** The project was saved. */
    default void saved() {
    }

    /** The findings were computed again. */
    default void findingsChanged() {
    }
}
