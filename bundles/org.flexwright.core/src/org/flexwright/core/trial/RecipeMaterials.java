package org.flexwright.core.trial;

import java.util.List;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Premix;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;

/** Leads a trial that was copied from a recipe back to the materials, lots and blends of today. */
final class RecipeMaterials {
    private final Edit edit;

    private RecipeMaterials(Edit edit) {
        this.edit = edit;
    }

    /** The trial was added in this edit. */
    static void today(Edit edit, Trial trial) {
        RecipeMaterials materials = new RecipeMaterials(edit);
        trial.getSteps().forEach(step -> step.getUses().forEach(materials::today));
    }

    private void today(MaterialUse use) {
        use.setGrade(live(use.getGrade()));
        use.setLot(live(use.getLot()));
        use.setPremix(live(use.getPremix()));
    }

    private MaterialGrade live(MaterialGrade frozen) {
        return live(frozen, edit.project().getGrades(), MaterialGrade::getCode, edit.project(), ModelPackage.Literals.PROJECT__GRADES);
    }

    private Lot live(Lot frozen) {
        MaterialGrade grade = frozen == null ? null : live((MaterialGrade) frozen.eContainer());
        return grade == null ? null : live(frozen, grade.getLots(), Lot::getCode, grade, ModelPackage.Literals.MATERIAL_GRADE__LOTS);
    }

    private Premix live(Premix frozen) {
        Premix premix = live(frozen, edit.project().getPremixes(), Premix::getCode, edit.project(), ModelPackage.Literals.PROJECT__PREMIXES);
        if (premix != null && premix != frozen) {
            premix.getIngredients().stream().filter(use -> isFrozen(use.getGrade())).forEach(this::today);
        }
        return premix;
    }

    /** The same object when it is no copy, else the one of that code, else a copy put back. */
    private <T extends EObject> T live(T object, List<T> today, Function<T, String> code, EObject owner, EReference feature) {
        if (!isFrozen(object)) {
            return object;
        }
        return today.stream().filter(one -> code.apply(one) != null && code.apply(one).equalsIgnoreCase(code.apply(object))).findFirst().orElseGet(() -> {
            T back = EcoreUtil.copy(object);
            RecipeSnapshot.forgetIds(back);
            edit.add(owner, feature, back);
            return back;
        });
    }

    private static boolean isFrozen(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof Recipe) {
                return true;
            }
        }
        return false;
    }
}
