package org.flexwright.workbench.decide;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.PlotModel;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.ChartFiles;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Settling;

/** One target over all trials: value and interval of each against the target band, each route with its own marker. */
final class PlotPage implements EditorPage {

    private final PageContext context;
    private final Kit kit;
    private final Composite root;
    private final EmptyState empty;
    private final Composite full;
    private final PickBox<Integer> target;
    private final Composite stack;
    private final EmptyState nothing;
    private final ChartPane chart;
    private Comparison comparison;
    private String targetId = "";

    PlotPage(Composite parent, PageContext context) {
        this.context = context;
        this.kit = context.kit();
        root = kit.pane(parent, 1, Spacing.NONE);
        root.setLayout(new StackLayout());
        empty = new EmptyState(root, kit, "A target over all trials is drawn here. It takes a target sheet with a target, and a trial.", null, null);
        full = kit.pane(root, 1, Spacing.NONE);
        Composite edge = kit.pane(full, 1, new Spacing(6, 3, 0, 0));
        edge.setLayoutData(Grid.wide());
        Composite bar = Flow.pane(edge, kit, Ink.PAPER);
        bar.setLayoutData(Grid.wide());
        kit.text(bar, "Target");
        target = new PickBox<>(bar, kit, "Target to draw", null, row -> comparison.rows().get(row).title() + ", " + comparison.rows().get(row).limits());
        target.whenChosen(this::draw);
        Notice notice = new Notice(full, kit, 1);
        stack = kit.pane(full, 1, Spacing.NONE);
        stack.setLayout(new StackLayout());
        stack.setLayoutData(Grid.fill());
        nothing = new EmptyState(stack, kit, "No trial has a number for this target yet.", null, null);
        chart = new ChartPane(stack, kit);
        ChartFiles.actions(bar, kit, context, chart, notice::say);
        compare();
        Settling.keep(kit, root, () -> { });
    }

    private void compare() {
        comparison = Comparison.of(context.session().project(), context.registries());
        boolean none = comparison.rows().isEmpty();
        ((StackLayout) root.getLayout()).topControl = none ? empty : full;
        if (!none) {
            List<Integer> rows = IntStream.range(0, comparison.rows().size()).boxed().toList();
            int at = rows.stream().filter(row -> comparison.rows().get(row).targetId().equals(targetId)).findFirst().orElse(0);
            target.show(rows, at);
            draw(at);
        }
        root.layout();
    }

    private void draw(Integer row) {
        targetId = comparison.rows().get(row).targetId();
        Optional<PlotModel> plot = comparison.plot(row);
        plot.ifPresent(chart::show);
        ((StackLayout) stack.getLayout()).topControl = plot.isPresent() ? chart : nothing;
        stack.layout();
    }

    @Override
    public Control control() {
        return root;
    }

    @Override
    public void changed(Set<EObject> touched) {
        compare();
    }

    @Override
    public void setFocus() {
        if (((StackLayout) root.getLayout()).topControl == full) {
            target.control().setFocus();
        } else {
            root.setFocus();
        }
    }
}
