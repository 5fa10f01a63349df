package org.flexwright.core.bench;

import org.flexwright.core.process.RoleWords;
import org.flexwright.model.MaterialUse;

/** What a material is called on a screen that is read from two metres away. */
final class UseNames {
    private UseNames() {
    }

    /** A, B, or the grade's name, or its role. */
    static String of(MaterialUse use) {
        return switch (use.getRole()) {
            case COMPONENT_A -> "A";
            case COMPONENT_B -> "B";
            default -> use.getPremix() != null && use.getPremix().getCode() != null ? use.getPremix().getCode()
                    : use.getGrade() != null && use.getGrade().getName() != null ? use.getGrade().getName() : RoleWords.of(use.getRole());
        };
    }
}
