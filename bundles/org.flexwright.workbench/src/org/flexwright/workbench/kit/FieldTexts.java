package org.flexwright.workbench.kit;

import org.flexwright.core.field.Choice;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FieldUnits;

/** Words around a field. */
final class FieldTexts {

    private FieldTexts() {
    }

    /** The unit as it is shown beside the field. */
    static String unit(FieldDescriptor field) {
        return FieldUnits.unit(field.kind(), field.unit()).display();
    }

    /** What was understood, when it says more than what was typed: another unit, another decimal sign; else empty. */
    static String echo(FieldDescriptor field, String typed, String understood) {
        if (field.type() != FieldType.QUANTITY || typed.isBlank() || understood.isBlank()) {
            return "";
        }
        String plain = typed.strip();
        boolean same = understood.equals(plain) || understood.equals((plain + " " + unit(field)).strip());
        return same ? "" : "= " + understood;
    }

    /** Label of the choice that was typed as literal or label; empty when it is none. */
    static String choiceLabel(FieldDescriptor field, String typed) {
        for (Choice choice : field.choices()) {
            if (choice.label().equals(typed) || choice.literal().equals(typed)) {
                return choice.label();
            }
        }
        return "";
    }
}
