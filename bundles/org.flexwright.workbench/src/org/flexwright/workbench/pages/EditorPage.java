package org.flexwright.workbench.pages;

import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Control;

/** A page of an editor. All calls on the screen's thread. */
public interface EditorPage {
    /** The page's one control. */
    Control control();

    /** Something in the project changed; called only while the page exists, also when it is behind another. */
    default void changed(Set<EObject> touched) {
    }

    /** The findings were computed again. */
    default void findingsChanged() {
    }

    /** Brings a place into sight: an object within the subject (or the subject) and a feature of it, or empty. */
    default void reveal(EObject object, String feature) {
    }

    /** Puts the focus where work goes on. */
    default void setFocus() {
        control().setFocus();
    }
}
