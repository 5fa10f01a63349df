package org.flexwright.workbench.pages.common;

import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.workbench.kit.FieldBinding;

/**
 * A field without its label, where the headings of a row and a column say the same.
 *
 * @param bound the field
 */
public record Unlabelled(FieldBinding bound) implements FieldBinding {

    @Override
    public FieldDescriptor field() {
        FieldDescriptor f = bound.field();
        return new FieldDescriptor(f.name(), "", f.type(), f.kind(), f.unit(), f.min(), f.max(), f.minOpen(), f.def(), f.optional(), f.help(),
                f.choices(), f.columns(), f.role(), f.of(), f.limit());
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
        return switch (bound.field().type()) {
            case QUANTITY, INTEGER -> bound.origin();
            default -> ""; // of words there is little to say and no room for it
        };
    }

    @Override
    public boolean readOnly() {
        return bound.readOnly();
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
