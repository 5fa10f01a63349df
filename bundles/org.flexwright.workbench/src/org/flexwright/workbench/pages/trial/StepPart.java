package org.flexwright.workbench.pages.trial;

/** A part of a step's form. */
interface StepPart {
    /** Shows the step as it is now. */
    void refresh();

    /** The findings were computed again. */
    default void findingsChanged() {
    }

    /** Takes the focus when work goes on here; false when it does not. */
    default boolean takeFocus() {
        return false;
    }
}
