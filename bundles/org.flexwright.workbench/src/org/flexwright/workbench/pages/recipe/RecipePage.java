package org.flexwright.workbench.pages.recipe;

import java.util.List;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.process.CardLine;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.StepCard;
import org.flexwright.core.trial.RecipeDifference;
import org.flexwright.core.trial.Recipes;
import org.flexwright.model.Recipe;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.handover.Asking;
import org.flexwright.workbench.handover.HandOver;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.batch.MakeBlock;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Moments;

/** A frozen plan, only read: its limits, every step with its planned values, and making it again. */
final class RecipePage extends BlockPage {

    private final Recipe recipe;

    RecipePage(Composite parent, PageContext context) {
        super(parent, context);
        recipe = (Recipe) context.subject();
        Block head = new Block(body(), kit(), recipe.getCode() + ", version " + recipe.getVersion(), 2, Spacing.FIELDS);
        if (writable() && recipe.getPlan() != null) {
            head.action("&Edit as new trial", this::again).setToolTipText("A new trial with this plan; frozen under the same code it becomes the next version");
        }
        if (recipe.getFrom() != null) {
            head.action("Open " + recipe.getFrom().getCode(), () -> context.open(recipe.getFrom()));
        }
        if (recipe.getPlan() != null) {
            head.action("&Hand-over pack\u2026", () -> Asking.write(body().getShell(), HandOver.pack(recipe, context.session(), context.registries())))
                    .setToolTipText("Everything another person needs to make it again, as one HTML file and one PDF");
        }
        line(head.body(), "Frozen", Moments.minute(recipe.getFrozenAt()) + " by " + recipe.getFrozenBy() + "; it is never changed");
        String route = recipe.getPlan() == null || recipe.getPlan().getRoute() == null ? "" : context.registries().findProcessKind(recipe.getPlan().getRoute())
                .map(ProcessKind::title).orElse(recipe.getPlan().getRoute());
        line(head.body(), "Route", route);
        line(head.body(), "Acceptance limits", recipe.getLimits());
        versions();
        if (recipe.getPlan() != null) {
            new MakeBlock(body(), context, recipe, doing(), this::settle);
            recipe.getPlan().getSteps().forEach(this::step);
        }
        settle();
    }

    @Override
    protected void refresh() {
        // a frozen plan does not change
    }

    private void line(Composite body, String label, String words) {
        if (words != null && !words.isBlank()) {
            kit().quiet(body, label).setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
            Prose.text(body, kit(), words).setLayoutData(Grid.wide());
        }
    }

    /** The other versions, and what changed from the one before to this one. */
    private void versions() {
        List<Recipe> all = Recipes.versions(context().session().project(), recipe.getCode());
        if (all.size() < 2) {
            return;
        }
        Block block = new Block(body(), kit(), "Versions", 1, Spacing.FIELDS);
        int place = all.indexOf(recipe);
        all.stream().filter(other -> other != recipe).forEach(other -> block.action("Open v" + other.getVersion(), () -> context().open(other)));
        if (place > 0) {
            List<String> changes = RecipeDifference.between(all.get(place - 1), recipe);
            Prose.quiet(block.body(), kit(), "Against version " + all.get(place - 1).getVersion() + (changes.isEmpty() ? ": no difference." : ":")).setLayoutData(Grid.wide());
            changes.forEach(change -> Prose.text(block.body(), kit(), change).setLayoutData(Grid.wide()));
        } else {
            Prose.quiet(block.body(), kit(), "The first version; there are newer ones.").setLayoutData(Grid.wide());
        }
    }

    private void step(Step step) {
        int number = recipe.getPlan().getSteps().indexOf(step) + 1;
        Block block = new Block(body(), kit(), number + "  " + (step.getTitle() == null ? step.getKind() : step.getTitle()), 2, new Spacing(0, 0, 4, 1));
        List<CardLine> lines = StepCard.lines(step, context().registries().findStepKind(step.getKind()).orElse(null)).stream()
                .filter(line -> !line.planned().isEmpty() || !line.actual().isEmpty()).toList();
        if (lines.isEmpty()) {
            Prose.quiet(block.body(), kit(), "No values are planned for it.").setLayoutData(Grid.wide(2));
        }
        for (CardLine line : lines) {
            var label = kit().quiet(block.body(), line.label());
            label.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
            kit().chars(label, 40);
            new Prose(block.body(), kit(), line.planned().isEmpty() ? line.actual() : line.planned(), Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        }
        if (step.getNote() != null && !step.getNote().isBlank()) {
            Prose.text(block.body(), kit(), step.getNote()).setLayoutData(Grid.wide(2));
        }
    }

    private void again() {
        Trial[] made = new Trial[1];
        if (doing().edit("edit " + recipe.getCode() + " as a new trial", edit -> made[0] = Recipes.edit(edit, recipe, null, null))) {
            context().open(made[0]);
        }
    }
}
