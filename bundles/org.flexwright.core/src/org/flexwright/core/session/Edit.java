package org.flexwright.core.session;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.model.Project;

/**
 * The only way to change a project: handed to the work of {@link ProjectSession#execute}. What is set through it can be undone and is in
 * the journal. Objects that are not yet in the project may be filled directly before they are added and until the work ends.
 */
public interface Edit {
    /** The project being edited. */
    Project project();

    /** The moment of this edit: the same all through one edit. */
    Instant now();

    /** Who edits, as given when the project was opened; may be empty. */
    String who();

    /** Sets a feature; {@code null} empties it. A feature with many values takes a {@code List}, which becomes its whole content. */
    void set(EObject owner, EStructuralFeature feature, Object value);

    /** Adds a value at the end of a feature with many values. A contained object must not be in the project yet; it is given an id if it needs one. */
    void add(EObject owner, EStructuralFeature feature, Object value);

    /** Adds a value at a place, {@code 0 <= index <= size}. */
    void add(EObject owner, EStructuralFeature feature, int index, Object value);

    /** Takes an object with all it contains out of the project; references from elsewhere to any of it are emptied. */
    void remove(EObject child);

    /** Takes one value out of a feature with many values; a contained object goes as with {@link #remove(EObject)}. */
    void remove(EObject owner, EStructuralFeature feature, Object value);

    /** Moves a value of a feature with many values to another place of it. */
    void move(EObject owner, EStructuralFeature feature, Object value, int index);

    /** A new identifier, unique in the project. */
    String newId();
}
