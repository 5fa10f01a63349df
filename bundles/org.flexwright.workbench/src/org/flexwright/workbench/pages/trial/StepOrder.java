package org.flexwright.workbench.pages.trial;

import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;

/** The order of the steps: one more of any kind before or after the chosen one, the chosen one earlier, later or out. Undo takes each back. */
final class StepOrder implements StepPart {

    private enum Where {
        AFTER("after this step"), BEFORE("before this step");

        private final String words;

        Where(String words) {
            this.words = words;
        }
    }

    private final PageContext page;
    private final Trial trial;
    private final Step step;
    private final Doing doing;
    private final Consumer<Step> choose;
    private final PickBox<StepKind> kind;
    private final PickBox<Where> where;
    private final Button earlier;
    private final Button later;

    /**
     * For a trial that can be changed.
     *
     * @param step   the chosen step; null in a trial without steps
     * @param choose shows a step
     */
    StepOrder(Composite parent, PageContext page, Step step, Doing doing, Consumer<Step> choose) {
        this.page = page;
        this.trial = (Trial) page.subject();
        this.step = step;
        this.doing = doing;
        this.choose = choose;
        Kit kit = page.kit();
        Block block = new Block(parent, kit, step == null ? "The first step" : "Order of the steps", 1, Spacing.FIELDS);
        Composite adding = Flow.pane(block.body(), kit, Ink.PAPER);
        adding.setLayoutData(Grid.wide());
        kind = new PickBox<>(adding, kit, "Kind of the new step", "choose what is done", StepKind::title);
        List<StepKind> kinds = page.registries().stepKinds().stream().sorted(Comparator.comparing(StepKind::title)).toList();
        kind.show(kinds, null);
        kind.whenChosen(chosen -> kind.control().setToolTipText(chosen == null ? null : chosen.summary()));
        where = step == null ? null : new PickBox<>(adding, kit, "Where the new step goes", null, w -> w.words);
        if (where != null) {
            where.show(List.of(Where.values()), Where.AFTER);
        }
        kit.action(adding, "&Insert the step", this::insert);
        if (step == null) {
            earlier = null;
            later = null;
            return;
        }
        Composite moving = Flow.pane(block.body(), kit, Ink.PAPER);
        moving.setLayoutData(Grid.wide());
        earlier = kit.action(moving, "Move this step &earlier", () -> move(-1));
        later = kit.action(moving, "Move this step &later", () -> move(1));
        kit.action(moving, "&Remove this step", this::remove);
        refresh();
    }

    @Override
    public void refresh() {
        if (step != null && !earlier.isDisposed()) {
            int at = trial.getSteps().indexOf(step);
            earlier.setEnabled(at > 0);
            later.setEnabled(at < trial.getSteps().size() - 1);
        }
    }

    private void insert() {
        StepKind chosen = kind.chosen();
        if (chosen == null) {
            doing.say("Choose what is done in the new step first.");
            kind.control().setFocus();
            return;
        }
        int at = step == null ? trial.getSteps().size() : trial.getSteps().indexOf(step) + (where.chosen() == Where.BEFORE ? 0 : 1);
        Step[] made = new Step[1];
        if (doing.edit("insert " + chosen.title().toLowerCase(java.util.Locale.ROOT), edit -> made[0] = Trials.addStep(edit, trial, chosen, at))) {
            choose.accept(made[0]);
        }
    }

    private void move(int by) {
        doing.edit("move " + name(), edit -> Trials.moveStep(edit, step, by));
    }

    private void remove() {
        doing.edit("remove " + name(), edit -> Trials.removeStep(edit, step));
    }

    private String name() {
        return StepWords.title(step).toLowerCase(java.util.Locale.ROOT);
    }
}
