package org.flexwright.core.trial;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.session.Edit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;

/** Recipes: a plan frozen from a confirmed trial. A frozen one is never changed; freezing again makes the next version. */
public final class Recipes {
    private Recipes() {
    }

    /**
     * Freezes the plan of a trial.
     *
     * @param missing what still stands against it by its parts and their readings, in words; must be empty, and all steps confirmed
     * @param limits  acceptance limits in words
     */
    public static Recipe freeze(Edit edit, Trial from, String code, String who, String limits, List<String> missing) {
        List<String> all = new ArrayList<>(missing);
        for (Step step : from.getSteps()) {
            if (step.isUnconfirmed()) {
                all.add(Trials.words("recipe.unconfirmed", step.getTitle()));
            }
            if (step.getDetails() instanceof AnyType) {
                all.add(Trials.words("recipe.absent", step.getTitle()));
            }
        }
        if (!all.isEmpty()) {
            throw PlanException.of("recipe.missing", from.getCode(), String.join("; ", all));
        }
        if (code == null || code.isBlank()) {
            throw PlanException.of("recipe.code");
        }
        if (who == null || who.isBlank()) {
            throw PlanException.of("who.empty");
        }
        Recipe recipe = ModelFactory.eINSTANCE.createRecipe();
        recipe.setCode(code.strip());
        recipe.setVersion(1 + edit.project().getRecipes().stream().filter(r -> recipe.getCode().equalsIgnoreCase(r.getCode()))
                .mapToInt(Recipe::getVersion).max().orElse(0));
        recipe.setFrozenAt(edit.now());
        recipe.setFrozenBy(who.strip());
        recipe.setLimits(limits);
        recipe.setFrom(from);
        recipe.setPlan(plan(edit, from));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__RECIPES, recipe);
        return recipe;
    }

    private static Trial plan(Edit edit, Trial from) {
        Trial plan = ModelFactory.eINSTANCE.createTrial();
        plan.setCode(from.getCode());
        plan.setTitle(from.getTitle());
        plan.setIdea(from.getIdea());
        plan.setRoute(from.getRoute());
        from.getSteps().forEach(step -> {
            var copy = StepPlans.copy(edit, step, from.getCode());
            copy.setUnconfirmed(false);
            plan.getSteps().add(copy);
        });
        return plan;
    }
}
