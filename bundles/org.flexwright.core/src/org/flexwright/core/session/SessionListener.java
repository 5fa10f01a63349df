package org.flexwright.core.session;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;

/** Hears of changes to a project, on the model thread. */
public interface SessionListener {
    /**
     * An edit was made, undone or redone.
     *
     * @param touched objects with a changed feature, and objects that came or went
     */
    void changed(Set<EObject> touched);

    /** The project was saved; {@link ProjectSession#dirty()} has become false. */
    default void saved() {
    }
}
