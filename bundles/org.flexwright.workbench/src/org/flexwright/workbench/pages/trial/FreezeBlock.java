package org.flexwright.workbench.pages.trial;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.trial.Recipes;
import org.flexwright.core.verdict.RecipeGate;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Moments;

/** Makes the trial's plan a recipe, or says what is missing for that. */
final class FreezeBlock {

    private final PageContext context;
    private final Kit kit;
    private final Trial trial;
    private final Doing doing;
    private final Block block;
    private List<Object> shown;
    private Text code;
    private Text who;
    private Text limits;

    FreezeBlock(Composite parent, PageContext context, Trial trial, Doing doing) {
        this.context = context;
        this.kit = context.kit();
        this.trial = trial;
        this.doing = doing;
        block = new Block(parent, kit, "Recipe", 2, Spacing.FIELDS);
    }

    void show() {
        List<Recipe> made = context.session().project().getRecipes().stream().filter(recipe -> recipe.getFrom() == trial).toList();
        List<String> missing = RecipeGate.missing(context.session().project(), trial, context.registries().properties());
        List<Object> now = List.of(made, missing);
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Composite body = block.emptied();
        for (Recipe recipe : made) {
            Prose.text(body, kit, recipe.getCode() + " version " + recipe.getVersion() + ", frozen " + Moments.minute(recipe.getFrozenAt()) + " by "
                    + recipe.getFrozenBy()).setLayoutData(Grid.wide());
            kit.action(body, "Open " + recipe.getCode(), () -> context.open(recipe));
        }
        if (!missing.isEmpty()) {
            Prose.quiet(body, kit, "A recipe is the frozen plan of a trial that proved itself. Still missing:").setLayoutData(Grid.wide(2));
            missing.forEach(one -> Prose.text(body, kit, "○ " + one).setLayoutData(Grid.wide(2)));
        } else if (!context.session().readOnly()) {
            ask(body);
        }
    }

    private void ask(Composite body) {
        Prose.quiet(body, kit, "Nothing is missing: the plan can be frozen as a recipe, which is then never changed; freezing again makes the next version.")
                .setLayoutData(Grid.wide(2));
        code = line(body, "Code of the recipe", 12, false);
        who = line(body, "Who signs it", 24, false);
        limits = line(body, "Acceptance limits in words", 52, true);
        kit.text(body, "");
        kit.action(body, "&Freeze as a recipe", this::freeze).setLayoutData(Grid.natural());
    }

    private Text line(Composite body, String words, int chars, boolean wide) {
        kit.text(body, words).setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        Text text = kit.field(body, words, SWT.SINGLE);
        text.setLayoutData(new GridData(wide ? SWT.FILL : SWT.BEGINNING, SWT.CENTER, wide, false));
        kit.chars(text, chars);
        return text;
    }

    private void freeze() {
        String name = code.getText();
        String person = who.getText();
        String words = limits.getText();
        Recipe[] made = new Recipe[1];
        if (doing.edit("freeze a recipe", edit -> made[0] = Recipes.freeze(edit, trial, name, person, words,
                RecipeGate.missing(edit.project(), trial, context.registries().properties())))) {
            context.open(made[0]);
        }
    }
}
