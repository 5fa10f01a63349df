package org.flexwright.workbench.pages.trial;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.trial.TargetSheets;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.verdict.Judgement;
import org.flexwright.core.verdict.Limits;
import org.flexwright.core.verdict.PartBudget;
import org.flexwright.core.verdict.PartValue;
import org.flexwright.core.verdict.PartValues;
import org.flexwright.core.verdict.Verdicts;
import org.flexwright.core.view.Budgets;
import org.flexwright.core.view.Lanes;
import org.flexwright.model.Project;
import org.flexwright.model.Target;
import org.flexwright.model.TargetSheet;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.BarsPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.LanesPane;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;

/** For a target: every reading on one scale with the reference beside it, the verdict and what would settle it, and what makes each part's value unsure. */
final class SurePage extends BlockPage {

    private final Trial trial;
    private final Project project;
    private final PickBox<Target> targets;
    private final Block all;
    private final Prose verdict;
    private final LanesPane lanes;
    private final Composite helps;
    private final Block one;
    private final PickBox<PartValue> parts;
    private final BarsPane bars;
    private final Composite said;
    private Target target;
    private String part = "";

    SurePage(Composite parent, PageContext context) {
        super(parent, context);
        trial = (Trial) context.subject();
        project = context.session().project();
        Composite bar = Flow.pane(body(), kit(), Ink.PAPER);
        bar.setLayoutData(Grid.wide());
        kit().text(bar, "Target");
        targets = new PickBox<>(bar, kit(), "Target to look at", null, this::words);
        targets.whenChosen(chosen -> {
            target = chosen;
            show();
            reflow();
        });
        all = new Block(body(), kit(), "Readings", 1, Spacing.FIELDS);
        verdict = new Prose(all.body(), kit(), "", Ink.INK, Role.STRONG);
        verdict.setLayoutData(Grid.wide());
        lanes = new LanesPane(all.body(), kit());
        lanes.setLayoutData(Grid.wide());
        helps = kit().pane(all.body(), 1, Spacing.FIELDS);
        helps.setLayoutData(Grid.wide());
        one = new Block(body(), kit(), "One part", 1, Spacing.FIELDS);
        Composite pick = Flow.pane(one.body(), kit(), Ink.PAPER);
        pick.setLayoutData(Grid.wide());
        kit().text(pick, "Part");
        parts = new PickBox<>(pick, kit(), "Part to look at", null, PartValue::part);
        parts.whenChosen(chosen -> {
            part = chosen.partId();
            budget(chosen);
            reflow();
        });
        bars = new BarsPane(one.body(), kit());
        bars.setLayoutData(Grid.wide());
        said = kit().pane(one.body(), 1, Spacing.FIELDS);
        said.setLayoutData(Grid.wide());
        show();
        settle();
    }

    private Optional<PropertyDef> property(Target of) {
        return of.getKey() == null || of.getKey().getProperty() == null ? Optional.empty() : context().registries().findProperty(of.getKey().getProperty());
    }

    private String words(Target of) {
        String spot = of.getKey().getSpot() == null ? "" : ", " + of.getKey().getSpot();
        return property(of).map(def -> def.title() + spot + ": " + Limits.text(of, def)).orElse("");
    }

    /** Targets whose property is a number that a plugin here knows. */
    private List<Target> offered() {
        TargetSheet sheet = TargetSheets.current(project);
        return sheet == null ? List.of() : sheet.getTargets().stream().filter(t -> property(t).filter(def -> !def.yesNo()).isPresent()).toList();
    }

    private void show() {
        List<Target> offered = offered();
        if (!offered.contains(target)) {
            target = offered.stream().filter(t -> !PartValues.of(trial, t.getKey(), property(t).orElseThrow()).isEmpty()).findFirst().orElse(offered.isEmpty() ? null : offered.get(0));
        }
        targets.show(offered, target);
        one.setShown(false);
        clear(helps);
        if (target == null) {
            lanes.show(null, Ink.QUIET);
            verdict.setWords("There is no target with a number yet: the target sheet holds them.", Ink.INK);
            return;
        }
        PropertyDef def = property(target).orElseThrow();
        List<PartValue> values = PartValues.of(trial, target.getKey(), def);
        List<PartValue> reference = PartValues.ofReference(project, target.getKey(), def);
        Judgement judgement = Doubts.of(project, context().registries().properties()).on(Verdicts.judge(target, def, values, null, reference), values);
        Ink ink = Mark.of(judgement.verdict()).ink();
        verdict.setWords(judgement.verdict().text() + ": " + judgement.reason().text(), ink);
        judgement.notes().forEach(note -> Prose.quiet(helps, kit(), note.text()).setLayoutData(Grid.wide()));
        Optional<Lanes> shown = Lanes.of(target, def, values, judgement, reference);
        lanes.show(shown.orElse(null), ink);
        if (shown.isPresent()) {
            Prose.quiet(helps, kit(), "Block: target. Short strokes: readings. Dot: a part, the median of its readings; line: how sure that is, 95 %. Diamond: reference part. Cross: aside.")
                    .setLayoutData(Grid.wide());
        }
        List<PartValue> pickable = values.stream().filter(v -> v.hasNumber() && v.readings() > 0).toList();
        PartValue chosen = pickable.stream().filter(v -> v.partId().equals(part)).findFirst().orElse(pickable.isEmpty() ? null : pickable.get(0));
        one.setShown(chosen != null);
        if (chosen != null) {
            parts.show(pickable, chosen);
            budget(chosen);
        }
    }

    private void budget(PartValue of) {
        clear(said);
        Optional<PartBudget> budget = PartBudget.of(of, property(target).orElseThrow());
        if (budget.isEmpty()) {
            bars.show(null);
            one.setTitle("One part");
            Prose.text(said, kit(), of.part() + " is known as a bound only: there is no value to be sure of.").setLayoutData(Grid.wide());
            return;
        }
        var drawn = Budgets.bars(budget.get());
        one.setTitle(drawn.title());
        bars.show(drawn);
        Budgets.sentences(budget.get()).forEach(sentence -> Prose.text(said, kit(), sentence).setLayoutData(Grid.wide()));
        Prose.quiet(said, kit(), "About this part alone, not about how parts differ. [" + PartBudget.SOURCE.display() + "]").setLayoutData(Grid.wide());
    }

    private static void clear(Composite pane) {
        for (var child : pane.getChildren()) {
            child.dispose();
        }
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void setFocus() {
        targets.control().setFocus();
    }
}
