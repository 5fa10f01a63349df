package org.flexwright.workbench.calculate;

import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.workbench.kit.FieldBinding;

/**
 * An input that says where it was taken from.
 *
 * @param bound the input
 * @param taken what was taken from a trial
 */
record InputBinding(FieldBinding bound, TrialInputs taken) implements FieldBinding {

    @Override
    public FieldDescriptor field() {
        return bound.field();
    }

    @Override
    public String text() {
        return bound.text();
    }

    @Override
    public void type(String text) {
        bound.type(text);
    }

    @Override
    public void settle() {
        bound.settle();
    }

    @Override
    public String understood() {
        return bound.understood();
    }

    @Override
    public String problem() {
        return bound.problem();
    }

    @Override
    public String origin() {
        return taken.origin(bound.field().name());
    }

    @Override
    public void addListener(Runnable listener) {
        bound.addListener(listener);
    }

    @Override
    public void removeListener(Runnable listener) {
        bound.removeListener(listener);
    }
}
