package org.flexwright.core.trial;

import java.time.LocalDate;
import java.time.ZoneOffset;

import org.flexwright.core.session.Edit;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelPackage;

/** Bottles, spools and cans of a material. */
public final class Lots {
    /** Where a day begins first: a day that has not begun there has begun nowhere. */
    private static final ZoneOffset FIRST = ZoneOffset.ofHours(14);

    private Lots() {
    }

    /** Adds a lot that is filled in. Throws PlanException when its code is missing or taken, or its days cannot be. */
    public static Lot add(Edit edit, MaterialGrade grade, Lot lot) {
        if (lot.getCode() == null || lot.getCode().isBlank()) {
            throw PlanException.of("lot.code", grade.getCode());
        }
        if (grade.getLots().stream().anyMatch(l -> lot.getCode().equalsIgnoreCase(l.getCode()))) {
            throw PlanException.of("lot.taken", grade.getCode(), lot.getCode());
        }
        notAhead(edit, "Opened", lot.getOpened());
        notAhead(edit, "Data sheet dated", lot.getSheetDate());
        edit.add(grade, ModelPackage.Literals.MATERIAL_GRADE__LOTS, lot);
        return lot;
    }

    private static void notAhead(Edit edit, String what, LocalDate day) {
        if (day != null && day.isAfter(edit.now().atOffset(FIRST).toLocalDate())) {
            throw PlanException.of("future.day", what, day);
        }
    }
}
