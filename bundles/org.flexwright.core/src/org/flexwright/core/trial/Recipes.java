package org.flexwright.core.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.xml.type.AnyType;
import org.flexwright.core.session.Edit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;

/**
 * Recipes: a plan frozen from a confirmed trial, with everything it refers to. A frozen one is never changed: editing one makes a new trial with its plan, and freezing that
 * under the same code makes the next version.
 */
public final class Recipes {
    private Recipes() {
    }

    /**
     * Freezes the plan of a trial, with copies of all it refers to and of what was weighed and read, the frozen target sheet it met, and what changed against the version
     * before.
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
        Optional<Recipe> before = newest(edit.project(), recipe.getCode());
        recipe.setVersion(1 + before.map(Recipe::getVersion).orElse(0));
        recipe.setFrozenAt(edit.now());
        recipe.setFrozenBy(who.strip());
        recipe.setLimits(limits);
        recipe.setFrom(from);
        recipe.setPlan(plan(edit, from));
        TargetSheet sheet = TargetSheets.current(edit.project());
        recipe.setTargets(sheet == null || sheet.getFrozenAt() == null ? null : sheet);
        RecipeSnapshot.take(recipe, from, edit.project());
        before.ifPresent(older -> recipe.setChanges(String.join("\n", RecipeDifference.between(older, recipe))));
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__RECIPES, recipe);
        return recipe;
    }

    /** The newest version under a code, in any spelling of its case. */
    public static Optional<Recipe> newest(Project project, String code) {
        return versions(project, code).stream().reduce((older, newer) -> newer);
    }

    /** All versions under a code, the oldest first. */
    public static List<Recipe> versions(Project project, String code) {
        return project.getRecipes().stream().filter(r -> code != null && code.equalsIgnoreCase(r.getCode())).sorted(Comparator.comparingInt(Recipe::getVersion)).toList();
    }

    /**
     * A new trial with the plan of a recipe, to be changed or made again: with the materials and lots of today that bear the same codes. A material that is no longer in the
     * project comes back as it was frozen. Every step waits to be confirmed.
     *
     * @param code  code of the trial, or null for the next free one
     * @param title its title, or null for one that names the recipe
     */
    public static Trial edit(Edit edit, Recipe recipe, String code, String title) {
        if (recipe.getPlan() == null) {
            throw PlanException.of("recipe.planless", recipe.getCode(), recipe.getVersion());
        }
        Trial trial = Trials.copy(edit, recipe.getPlan(), code, title == null ? Trials.words("recipe.edited", recipe.getCode(), recipe.getVersion()) : title);
        edit.set(trial, ModelPackage.Literals.TRIAL__BASED_ON, recipe.getFrom());
        trial.setMould(recipe.getMould() == null ? null : edit.project().getMoulds().stream().filter(m -> m.getCode() != null && m.getCode().equalsIgnoreCase(recipe.getMould().getCode()))
                .findFirst().orElse(null));
        RecipeMaterials.today(edit, trial);
        return trial;
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
