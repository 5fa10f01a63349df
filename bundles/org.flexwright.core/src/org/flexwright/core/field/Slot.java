package org.flexwright.core.field;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What one field of a form holds: its text, what became of it, and the feature it stands for, if any. */
final class Slot {
    final FieldDescriptor field;
    final EObject owner;
    final EStructuralFeature feature;
    /** The feature's own description; its unit may be another one of the same kind. */
    final FieldDescriptor own;
    String text = "";
    String problem = "";
    String understood = "";
    Object value;
    /** The feature's value when the text was last taken from it or written to it. */
    Object seen;

    Slot(FieldDescriptor field) {
        this(field, null, null, null);
    }

    Slot(FieldDescriptor field, EObject owner, EStructuralFeature feature, FieldDescriptor own) {
        this.field = field;
        this.owner = owner;
        this.feature = feature;
        this.own = own;
    }

    boolean bound() {
        return owner != null;
    }

    /** Takes a text as typed. True when it was understood. */
    boolean take(String typed) {
        text = typed;
        switch (field.read(typed)) {
            case FieldInput.Read read -> {
                problem = "";
                understood = read.understood();
                value = read.value();
                return true;
            }
            case FieldInput.Rejected rejected -> {
                problem = rejected.sentence();
                understood = "";
                return false;
            }
        }
    }

    /** Shows a value that is known. */
    void show(Object known) {
        value = known;
        text = field.print(known);
        understood = text;
        problem = "";
    }

    /** Takes text and value from the feature. */
    void refresh() {
        seen = FeatureValues.get(owner, feature);
        show(FeatureValues.toField(own, field, seen));
    }
}
