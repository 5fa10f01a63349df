package org.flexwright.core.trial;

import java.util.List;
import java.util.Objects;

import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.RoleWords;
import org.flexwright.core.session.Edit;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Premix;
import org.flexwright.model.Project;
import org.flexwright.model.Weighing;

/**
 * Blends that are stirred, rested or dried before they are weighed like one material. What goes into one is written down as weighed: a blend
 * with an amount missing would be counted wrongly in every cup it goes into, so it is refused.
 */
public final class Premixes {

    private Premixes() {
    }

    /**
     * Adds a premix that is filled in: at least two ingredients, each with a grade and a weighed amount above zero. An empty code becomes
     * the next free one, an empty moment becomes now. Throws PlanException for anything else, naming the ingredient.
     */
    public static Premix add(Edit edit, Premix premix) {
        Project project = edit.project();
        List<String> taken = project.getPremixes().stream().map(Premix::getCode).filter(Objects::nonNull).toList();
        String free = Codes.next("X", 1, taken);
        String code = premix.getCode() == null ? free : Codes.free(premix.getCode(), taken, "premix.taken", free);
        if (premix.getIngredients().size() < 2) {
            throw PlanException.of("premix.few", code);
        }
        if (premix.getMadeAt() != null && premix.getMadeAt().isAfter(edit.now())) {
            throw PlanException.of("future", "Premix " + code, premix.getMadeAt());
        }
        premix.getIngredients().forEach(ingredient -> check(ingredient, code));
        premix.setCode(code);
        if (premix.getMadeAt() == null) {
            premix.setMadeAt(edit.now());
        }
        edit.add(project, ModelPackage.Literals.PROJECT__PREMIXES, premix);
        return premix;
    }

    private static void check(MaterialUse ingredient, String code) {
        if (ingredient.getPremix() != null) {
            throw PlanException.of("premix.nested", code);
        }
        String role = RoleWords.of(ingredient.getRole());
        if (ingredient.getGrade() == null) {
            throw PlanException.of("premix.material", code, role);
        }
        Double grams = Mixtures.grams(ingredient);
        if (grams == null || !(grams > 0)) {
            throw PlanException.of("premix.amount", code, ingredient.getGrade().getName() == null ? role : ingredient.getGrade().getName());
        }
    }

    /** An ingredient as it was weighed, to be put into a premix that is being made; grams as for {@link Weighings#net}. */
    public static MaterialUse ingredient(Edit edit, MaterialUse filled, double grams) {
        Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
        weighing.setNet(Weighings.net(null, null, grams));
        weighing.setAt(edit.now());
        filled.getWeighings().add(weighing);
        return filled;
    }
}
