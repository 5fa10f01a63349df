package org.flexwright.workbench.kit;

import org.flexwright.core.field.FieldDescriptor;

/** What a field on the screen shows and writes, whatever stands behind it. All calls on the screen's thread. */
public interface FieldBinding {
    /** What the field is. */
    FieldDescriptor field();

    /** Its text as a person would type it; empty when nothing was entered. */
    String text();

    /** Takes what a person typed so far. */
    void type(String text);

    /** What is wrong with what was typed, one sentence; empty when nothing is. */
    String problem();

    /** The value read back with its unit; empty when nothing was entered or it was not understood. */
    String understood();

    /** The field is left: its text may become what was understood. */
    default void settle() {
    }

    /** Where the value came from, in a word; empty when that says nothing. */
    default String origin() {
        return "";
    }

    /** True when it is only shown. */
    default boolean readOnly() {
        return false;
    }

    /** Calls back after a change from anywhere. */
    void addListener(Runnable listener);

    /** Ends the calls. */
    void removeListener(Runnable listener);
}
