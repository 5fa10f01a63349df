package org.flexwright.workbench.pages.trial;

import java.time.Instant;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PlatformUI;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.workbench.bench.BenchWindow;
import org.flexwright.workbench.kit.EmptyState;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Moments;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Settling;

/** The time line at the left, the chosen step at the right; where there is little room the time line becomes one field above. */
final class StepsPage implements EditorPage {

    private static final int TICK = 1000;
    private static final int RAIL = 34;
    private static final int NARROW = 96;

    private final PageContext context;
    private final Trial trial;
    private final Kit kit;
    private final Composite root;
    private Composite left;
    private Label clock;
    private StepRail rail;
    private Composite pick;
    private PickBox<Step> picked;
    private Composite right;
    private StepForm form;
    private Control empty;
    private Step shown;

    StepsPage(Composite parent, PageContext context) {
        this.context = context;
        this.trial = (Trial) context.subject();
        this.kit = context.kit();
        root = kit.pane(parent, 2, Spacing.NONE);
        makeRail();
        makePick();
        right = kit.pane(root, 1, Spacing.NONE);
        right.setLayoutData(Grid.fill());
        root.addListener(SWT.Resize, event -> fold());
        Settling.keep(kit, root, this::fold);
        refresh();
        choose(first());
        tick();
    }

    private void makeRail() {
        left = kit.pane(root, 1, Spacing.NONE, Ink.PANEL);
        left.setLayoutData(new GridData(SWT.BEGINNING, SWT.FILL, false, true));
        Composite head = kit.pane(left, 1, new Spacing(3, 3, 0, 0), Ink.PANEL);
        head.setLayoutData(Grid.wide());
        kit.quiet(head, "time from contact, min:s").setLayoutData(Grid.wide());
        clock = kit.label(head, "", Ink.INK, Role.FIGURE);
        clock.setLayoutData(Grid.wide());
        kit.action(head, "At the &bench", this::bench).setToolTipText("One step a screen, large, by touch (Ctrl+B)");
        ScrollPane scroller = new ScrollPane(left, kit, 1, Spacing.NONE);
        scroller.setLayoutData(Grid.fill());
        kit.dress(scroller.body(), Ink.INK, Ink.PANEL, Role.BODY);
        kit.dress(scroller.body().getParent(), Ink.INK, Ink.PANEL, Role.BODY);
        rail = new StepRail(scroller.body(), kit, this::choose);
        rail.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    }

    private void makePick() {
        pick = kit.pane(root, 3, new Spacing(4, 2, 2, 0), Ink.PANEL);
        pick.setLayoutData(Grid.wide(2));
        kit.text(pick, "Step");
        picked = new PickBox<>(pick, kit, "Step", null, step -> trial.getSteps().indexOf(step) + 1 + "  " + StepWords.title(step) + "  "
                + StepWords.mark(step).text());
        picked.control().setLayoutData(Grid.wide());
        picked.whenChosen(this::choose);
        kit.action(pick, "At the &bench", this::bench);
    }

    private void bench() {
        BenchWindow.open(PlatformUI.getWorkbench().getActiveWorkbenchWindow(), trial);
    }

    private void fold() {
        boolean narrow = root.getClientArea().width < kit.type().chars(Role.BODY, NARROW);
        ((GridLayout) root.getLayout()).numColumns = narrow ? 1 : 2;
        show(left, !narrow && !trial.getSteps().isEmpty());
        show(pick, narrow && !trial.getSteps().isEmpty());
        ((GridData) pick.getLayoutData()).horizontalSpan = narrow ? 1 : 2;
        ((GridData) left.getLayoutData()).widthHint = kit.type().chars(Role.BODY, RAIL);
        root.layout(true, true);
    }

    private static void show(Control control, boolean shown) {
        ((GridData) control.getLayoutData()).exclude = !shown;
        control.setVisible(shown);
    }

    /** The step that is running, else the first that is not done. */
    private Step first() {
        return trial.getSteps().stream().filter(step -> StepWords.state(step) == StepState.RUNNING).findFirst()
                .or(() -> trial.getSteps().stream().filter(step -> StepWords.state(step) == StepState.PLANNED).findFirst())
                .or(() -> trial.getSteps().stream().findFirst()).orElse(null);
    }

    private void choose(Step step) {
        shown = step;
        rail.select(step);
        picked.show(trial.getSteps(), step);
        if (step == null) {
            if (form != null) {
                form.dispose();
                form = null;
            }
            if (empty == null) {
                empty = emptyPane();
                empty.setLayoutData(Grid.fill());
            }
        } else {
            if (empty != null) {
                empty.dispose();
                empty = null;
            }
            if (form == null) {
                form = new StepForm(right, context, this::choose);
                form.setLayoutData(Grid.fill());
            }
            form.show(step);
        }
        right.layout();
    }

    /** What goes here, and the one thing that fills it. */
    private Composite emptyPane() {
        Composite pane = kit.pane(right, 1, new Spacing(6, 4, 4, 4));
        EmptyState words = new EmptyState(pane, kit, "The steps of this trial stand here: what is meant beside what happened.", null, null);
        words.setLayoutData(Grid.wide());
        if (!context.session().readOnly()) {
            Notice notice = new Notice(pane, kit, 1);
            new StepOrder(pane, context, null, new Doing(context.session(), notice::say), this::choose);
        }
        return pane;
    }

    private void refresh() {
        rail.show(trial);
        picked.show(trial.getSteps(), shown);
        showClock();
    }

    private void showClock() {
        TimeLine times = TimeLine.of(trial, Instant.now());
        boolean runs = times.contact() != null && trial.getSteps().stream().anyMatch(step -> StepWords.state(step) == StepState.RUNNING);
        String words = times.contact() == null ? "not yet" : runs ? times.clock() : "0:00 was " + Moments.minute(times.contact());
        kit.dress(clock, runs ? Ink.INK : Ink.QUIET, null, runs ? Role.FIGURE : Role.BODY);
        if (!words.equals(clock.getText())) {
            clock.setText(words);
            clock.requestLayout();
        }
    }

    private void tick() {
        root.getDisplay().timerExec(TICK, () -> {
            if (!root.isDisposed()) {
                if (root.isVisible()) {
                    showClock();
                    rail.refresh();
                }
                tick();
            }
        });
    }

    @Override
    public Control control() {
        return root;
    }

    @Override
    public void changed(Set<EObject> touched) {
        refresh();
        if (shown != null && shown.eContainer() != trial) {
            choose(first());
        } else if (shown == null) {
            choose(first());
        } else {
            form.changed(touched);
        }
        if (touched.contains(trial)) {
            fold();
        }
    }

    @Override
    public void findingsChanged() {
        if (form != null) {
            form.findingsChanged();
        }
    }

    @Override
    public void reveal(EObject object, String feature) {
        trial.getSteps().stream().filter(step -> EcoreUtil.isAncestor(step, object)).findFirst().ifPresent(step -> {
            choose(step);
            form.reveal(feature);
        });
    }

    @Override
    public void setFocus() {
        if (form == null || !form.setFocus()) {
            root.setFocus();
        }
    }
}
