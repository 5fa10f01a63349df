package org.flexwright.core.field;

/** Hears of changes of a form's fields, on the model thread. */
@FunctionalInterface
public interface FormListener {
    /** Text, value or problem of the field changed. */
    void changed(String field);
}
