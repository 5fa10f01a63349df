package org.flexwright.workbench.calculate;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.CalculationRuns;
import org.flexwright.core.naming.Names;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.project.ProjectService;

/** Keeps what went in and what came out in a trial, refusals too. */
final class KeepBlock {

    private final ProjectService projects;
    private final Calculation<?, ?> calculation;
    private final Notice notice;
    private final Composite pane;
    private final TrialInputs taken;
    private final PickBox<Trial> trial;
    private final Button keep;
    private final Prose said;
    private CalculationResult result;

    KeepBlock(Composite parent, Kit kit, ProjectService projects, Calculation<?, ?> calculation, TrialInputs taken) {
        this.taken = taken;
        this.projects = projects;
        this.calculation = calculation;
        notice = new Notice(parent, kit, 1);
        pane = kit.pane(parent, 1, new Spacing(3, 2, 2, 1), Ink.PANEL);
        pane.setLayoutData(Grid.wide());
        Composite line = Flow.pane(pane, kit, Ink.PANEL);
        line.setLayoutData(Grid.wide());
        trial = new PickBox<>(line, kit, "Trial to keep it in", null, Names::tab);
        kit.action(line, "&Take inputs from it", this::take).setToolTipText("Inputs that stand in its steps under the same name; a kept calculation goes stale when they change");
        keep = kit.action(line, "&Keep in this trial", this::keep);
        keep.setToolTipText("Stores inputs, results, version and time in the trial; it is never calculated again by itself");
        said = Prose.quiet(pane, kit, "");
        said.setLayoutData(Grid.wide());
        projectChanged();
    }

    /** The last result. */
    void take(CalculationResult last) {
        result = last;
        keep.setEnabled(trial.chosen() != null);
    }

    void projectChanged() {
        List<Trial> trials = projects.session().filter(session -> !session.readOnly()).map(session -> List.copyOf(session.project().getTrials()).reversed())
                .orElse(List.of());
        Trial before = trial.chosen();
        trial.show(trials, before != null && trials.contains(before) ? before : trials.isEmpty() ? null : trials.getFirst());
        ((GridData) pane.getLayoutData()).exclude = trials.isEmpty();
        pane.setVisible(!trials.isEmpty());
        keep.setEnabled(result != null && trial.chosen() != null);
    }

    private void take() {
        if (trial.chosen() != null) {
            int count = taken.take(trial.chosen());
            said.setWords(count == 0 ? "Nothing in the steps of " + trial.chosen().getCode() + " is called like an input here."
                    : count + (count == 1 ? " input" : " inputs") + " taken from " + trial.chosen().getCode());
            ScrollPane.reflowAround(pane);
        }
    }

    private void keep() {
        Optional<ProjectSession> session = projects.session();
        Trial into = trial.chosen();
        if (session.isPresent() && into != null && result != null) {
            boolean kept = new Doing(session.get(), notice::say).run(() -> CalculationRuns.keep(session.get(), into, calculation, result, taken.places()));
            if (kept) {
                said.setWords("✓ kept in " + into.getCode() + "; it stands under Outcome");
                ScrollPane.reflowAround(pane);
            }
        }
    }
}
