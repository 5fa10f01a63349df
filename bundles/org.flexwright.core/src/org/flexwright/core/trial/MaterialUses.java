package org.flexwright.core.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.flexwright.core.field.Provenances;
import org.flexwright.core.process.GramsOfParts;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.PartRole;
import org.flexwright.model.Premix;
import org.flexwright.model.Step;

/** The materials of a step: which one each is, and how much of it is meant. What was weighed is not touched. */
public final class MaterialUses {

    private MaterialUses() {
    }

    /** Adds a material with that role at the end of a step. */
    public static MaterialUse add(Edit edit, Step step, PartRole role) {
        MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
        use.setRole(role);
        edit.add(step, ModelPackage.Literals.STEP__USES, use);
        return use;
    }

    /** Chooses a grade and one of its lots, or no lot. Throws PlanException when the lot is of another grade. */
    public static void choose(Edit edit, MaterialUse use, MaterialGrade grade, Lot lot) {
        if (lot != null && lot.eContainer() != grade) {
            throw PlanException.of("use.lot", lot.getCode(), grade == null ? "" : grade.getCode());
        }
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__PREMIX, null);
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__GRADE, grade);
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__LOT, lot);
    }

    /** Chooses a premix in place of a grade; it counts as its ingredients from now on. */
    public static void choose(Edit edit, MaterialUse use, Premix premix) {
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__GRADE, null);
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__LOT, null);
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__PREMIX, premix);
        edit.set(use, ModelPackage.Literals.MATERIAL_USE__ROLE, PartRole.PREMIX);
    }

    /** Plans the grams that follow from the parts, to hundredths as a balance shows them, less than a gram to three digits. Throws PlanException when none follow. */
    public static void plan(Edit edit, Step step, GramsOfParts parts) {
        if (parts.problem() != null) {
            throw new PlanException(parts.problem());
        }
        for (int i = 0; i < step.getUses().size(); i++) {
            double grams = parts.grams().get(i);
            if (!Double.isNaN(grams)) {
                MaterialUse use = step.getUses().get(i);
                edit.set(use, ModelPackage.Literals.MATERIAL_USE__PLANNED, rounded(grams));
                Provenances.keep(edit, use, ModelPackage.Literals.MATERIAL_USE__PLANNED, Origin.CALCULATED, parts.source().display(), null);
            }
        }
    }

    /** Grams as a bench balance shows them: two places, under one gram three figures. */
    public static double rounded(double grams) {
        int places = grams > 0 && grams < 1 ? 2 - (int) Math.floor(Math.log10(grams)) : 2;
        return BigDecimal.valueOf(grams).setScale(places, RoundingMode.HALF_UP).doubleValue();
    }
}
