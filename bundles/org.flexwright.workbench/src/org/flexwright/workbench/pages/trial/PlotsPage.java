package org.flexwright.workbench.pages.trial;

import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.find.Remark;
import org.flexwright.core.process.StepPlot;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Settling;

/** One of the curves a trial's steps offer, with what belongs to it below. */
final class PlotsPage implements EditorPage {

    /** The chart keeps this height, in lines of text, however much there is to say below it. */
    private static final int LINES = 16;

    private final PageContext context;
    private final Trial trial;
    private final Kit kit;
    private final ScrollPane root;
    private final PickBox<StepPlot> which;
    private final Composite stack;
    private final ChartPane chart;
    private final EmptyState none;
    private final Composite remarks;
    private List<StepPlot> plots = List.of();
    private String shown = "";

    PlotsPage(Composite parent, PageContext context) {
        this.context = context;
        this.trial = (Trial) context.subject();
        this.kit = context.kit();
        root = new ScrollPane(parent, kit, 1, Spacing.NONE);
        Composite edge = kit.pane(root.body(), 1, new Spacing(6, 3, 0, 0));
        edge.setLayoutData(Grid.wide());
        Composite bar = Flow.pane(edge, kit, Ink.PAPER);
        bar.setLayoutData(Grid.wide());
        kit.text(bar, "Curve");
        which = new PickBox<>(bar, kit, "Curve to draw", null, PlotsPage::words);
        which.whenChosen(this::draw);
        stack = kit.pane(root.body(), 1, Spacing.NONE);
        stack.setLayout(new StackLayout());
        GridData room = Grid.fill();
        stack.setLayoutData(room);
        kit.whenDressed(stack, () -> room.heightHint = LINES * kit.type().lineHeight(Role.BODY));
        chart = new ChartPane(stack, kit);
        none = new EmptyState(stack, kit, "Nothing can be drawn yet; what is missing stands below.", null, null);
        remarks = kit.pane(root.body(), 1, new Spacing(6, 3, 0, 2));
        remarks.setLayoutData(Grid.wide());
        refresh();
        Settling.keep(kit, root, root::reflow);
    }

    private static String words(StepPlot plot) {
        return plot.plot() == null ? plot.id() : plot.plot().title();
    }

    private void refresh() {
        List<StepPlot> now = context.registries().plots(trial);
        if (now.equals(plots) && !now.isEmpty()) {
            return;
        }
        plots = now;
        StepPlot at = plots.stream().filter(p -> p.id().equals(shown)).findFirst().orElse(plots.isEmpty() ? null : plots.getFirst());
        which.show(plots, at);
        draw(at);
    }

    private void draw(StepPlot plot) {
        shown = plot == null ? "" : plot.id();
        for (Control old : remarks.getChildren()) {
            old.dispose();
        }
        boolean drawn = plot != null && plot.plot() != null;
        if (drawn) {
            chart.show(plot.plot());
        }
        ((StackLayout) stack.getLayout()).topControl = drawn ? chart : none;
        if (plot != null) {
            for (Remark remark : plot.remarks()) {
                FindingStrip.of(remarks, kit, remark).setLayoutData(Grid.wide());
            }
        }
        root.reflow();
    }

    @Override
    public Control control() {
        return root;
    }

    @Override
    public void changed(Set<EObject> touched) {
        refresh();
    }

    @Override
    public void setFocus() {
        which.control().setFocus();
    }
}
