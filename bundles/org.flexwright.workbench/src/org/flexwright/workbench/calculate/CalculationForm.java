package org.flexwright.workbench.calculate;

import java.util.Map;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.FormModel;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Settling;
import org.flexwright.workbench.project.ProjectService;

/** One calculation: its inputs with unit, range and help; its results as one types; its manual page on F1. */
final class CalculationForm extends Composite {

    private static final int NARROW = 90;

    private final Kit kit;
    private final Calculation<?, ?> calculation;
    private final FormModel inputs;
    private final ScrollPane pane;
    private final Composite both;
    private final FormPane form;
    private final ResultsBlock results;
    private final KeepBlock keep;
    private final KeepReading reading;
    private final Composite about;
    private final Button aboutButton;
    private final Job job;
    private final Display display = getDisplay();
    private volatile Map<String, String> asked = Map.of();

    CalculationForm(Composite parent, Kit kit, ProjectService projects, Calculation<?, ?> calculation) {
        super(parent, SWT.NONE);
        this.kit = kit;
        this.calculation = calculation;
        setLayout(new FillLayout());
        pane = new ScrollPane(this, kit, 1, new Spacing(6, 4, 4, 3));
        Composite head = kit.pane(pane.body(), 2, new Spacing(0, 0, 4, 2));
        head.setLayoutData(Grid.wide());
        kit.heading(head, calculation.info().title()).setLayoutData(Grid.wide());
        aboutButton = kit.action(head, "A&bout (F1)", this::turnAbout);
        aboutButton.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        Prose.text(head, kit, calculation.info().summary()).setLayoutData(Grid.wide(2));
        about = kit.pane(pane.body(), 1, new Spacing(4, 3, 0, 2), Ink.PANEL);
        about.setLayoutData(Grid.wide());
        hideAbout(true);
        both = kit.pane(pane.body(), 2, new Spacing(0, 0, 8, 4));
        both.setLayoutData(Grid.wide());
        inputs = FormModel.scratch(CalculationRunner.inputs(calculation));
        Composite left = kit.pane(both, 1, new Spacing(0, 0, 0, 2));
        left.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        kit.label(left, "Inputs", Ink.INK, Role.STRONG);
        kit.hairline(left);
        TrialInputs taken = new TrialInputs(inputs);
        form = new FormPane(left, kit, Bindings.of(inputs, false).stream().map(input -> new InputBinding(input, taken)).toList());
        form.setLayoutData(Grid.wide());
        results = new ResultsBlock(both, kit, calculation, this::focus);
        keep = new KeepBlock(pane.body(), kit, projects, calculation, taken);
        reading = new KeepReading(pane.body(), kit, projects, calculation, taken);
        inputs.addListener(name -> calculate());
        job = new RunJob();
        addListener(SWT.Dispose, event -> {
            job.cancel();
            inputs.close();
        });
        addListener(SWT.Resize, event -> fold());
        pane.addListener(SWT.Help, event -> turnAbout());
        addListener(SWT.Help, event -> turnAbout());
        kit.whenDressed(this, this::fold);
        calculate();
        pane.reflow();
        Settling.later(kit, pane);
    }

    Calculation<?, ?> calculation() {
        return calculation;
    }

    private void fold() {
        boolean narrow = getClientArea().width < kit.type().chars(Role.BODY, NARROW);
        GridLayout layout = (GridLayout) both.getLayout();
        int columns = narrow ? 1 : 2;
        if (layout.numColumns != columns) {
            layout.numColumns = columns;
            layout.makeColumnsEqualWidth = columns > 1;
            pane.reflow();
        } else {
            layout.makeColumnsEqualWidth = columns > 1;
        }
    }

    private void focus(String input) {
        form.reveal(input);
    }

    /** Calculates away from the screen's thread, what was typed last winning. */
    private void calculate() {
        asked = inputs.typed();
        job.cancel();
        job.schedule();
    }

    private void take(Map<String, String> typed, CalculationResult result) {
        if (!isDisposed() && typed.equals(asked)) {
            results.show(result);
            keep.take(result);
            reading.take(result);
            pane.reflow();
        }
    }

    private final class RunJob extends Job {
        RunJob() {
            super("Calculating");
            setSystem(true);
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Map<String, String> typed = asked;
            CalculationResult result = CalculationRunner.run(calculation, typed);
            if (!monitor.isCanceled() && !display.isDisposed()) {
                display.asyncExec(() -> take(typed, result));
            }
            return Status.OK_STATUS;
        }
    }

    private void turnAbout() {
        boolean show = ((GridData) about.getLayoutData()).exclude;
        if (show && about.getChildren().length == 0) {
            new ManualPage(about, kit, calculation);
        }
        hideAbout(!show);
        pane.reflow();
        if (show) {
            pane.reveal(about);
        }
    }

    private void hideAbout(boolean hide) {
        ((GridData) about.getLayoutData()).exclude = hide;
        about.setVisible(!hide);
    }

    void projectChanged() {
        keep.projectChanged();
        reading.projectChanged();
    }

    @Override
    public boolean setFocus() {
        return !form.isDisposed() && form.setFocus();
    }
}
