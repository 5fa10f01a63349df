package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.calc.CalculationRuns;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.Provenances;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.RunInput;
import org.flexwright.model.RunResult;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Moments;

/** Calculations kept in the trial as they were; one whose inputs changed since says so. */
final class RunsBlock {

    private final PageContext context;
    private final Kit kit;
    private final Trial trial;
    private final Doing doing;
    private final Block block;
    private List<Object> shown;

    RunsBlock(Composite parent, PageContext context, Trial trial, Doing doing) {
        this.context = context;
        this.kit = context.kit();
        this.trial = trial;
        this.doing = doing;
        block = new Block(parent, kit, "Kept calculations", 1, new Spacing(0, 0, 0, 3));
    }

    void show() {
        List<Object> now = new ArrayList<>();
        trial.getCalculations().forEach(run -> {
            now.add(run);
            now.add(stale(run));
        });
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        Composite body = block.emptied();
        if (trial.getCalculations().isEmpty()) {
            Prose.quiet(body, kit, "None yet. A calculation is kept in a trial with all its inputs and results from the view Calculations.")
                    .setLayoutData(Grid.wide());
        }
        trial.getCalculations().forEach(run -> row(body, run));
    }

    private Calculation<?, ?> calculation(CalculationRun run) {
        return context.registries().findCalculation(run.getCalculation()).orElse(null);
    }

    private List<String> stale(CalculationRun run) {
        return CalculationRuns.stale(context.session(), run, calculation(run));
    }

    private void row(Composite body, CalculationRun run) {
        Calculation<?, ?> known = calculation(run);
        String title = known == null ? run.getCalculation() : known.info().title();
        Composite row = kit.pane(body, 2, new Spacing(0, 0, 4, 0));
        row.setLayoutData(Grid.wide());
        Composite words = kit.pane(row, 1, Spacing.NONE);
        words.setLayoutData(Grid.wide());
        List<String> stale = stale(run);
        new Prose(words, kit, title + (stale.isEmpty() ? "" : "   ▲ stale"), stale.isEmpty() ? Ink.INK : Ink.CAUTION, Role.STRONG).setLayoutData(Grid.wide());
        if (!stale.isEmpty()) {
            new Prose(words, kit, String.join(" ", stale) + " It stands as it was; calculate again and keep the new one.", Ink.CAUTION, Role.BODY)
                    .setLayoutData(Grid.wide());
        }
        Prose.text(words, kit, run.getRefusal() == null ? results(run, known) : "■ refused: " + run.getRefusal()).setLayoutData(Grid.wide());
        Prose.quiet(words, kit, "with " + inputs(run, known)).setLayoutData(Grid.wide());
        Prose.quiet(words, kit, "calculated " + Moments.minute(run.getAt()) + ", version " + run.getVersion()).setLayoutData(Grid.wide());
        if (!context.session().readOnly()) {
            Button out = kit.action(row, "Take out", () -> doing.edit("take out a calculation", edit -> edit.remove(run)));
            Kit.name(out, "Take out " + title);
            out.setLayoutData(new GridData(SWT.END, SWT.BEGINNING, false, false));
        }
    }

    private static String label(List<FieldDescriptor> fields, String name) {
        return fields.stream().filter(f -> f.name().equals(name)).map(FieldDescriptor::label).findFirst().orElse(name);
    }

    private static String results(CalculationRun run, Calculation<?, ?> known) {
        List<FieldDescriptor> fields = known == null ? List.of() : CalculationRunner.results(known);
        return run.getResults().stream().filter(r -> r.getText() != null && !r.getText().isBlank()).map((RunResult r) -> label(fields, r.getName()) + " " + r.getText())
                .collect(Collectors.joining("; "));
    }

    private static String inputs(CalculationRun run, Calculation<?, ?> known) {
        List<FieldDescriptor> fields = known == null ? List.of() : CalculationRunner.inputs(known);
        return run.getInputs().stream().filter(i -> i.getText() != null).map((RunInput i) -> label(fields, i.getName()) + " " + i.getText() + unit(i)
                + (i.getOrigin() == null ? "" : " (" + Provenances.word(i.getOrigin()) + ")")).collect(Collectors.joining("; "));
    }

    /** The unit, unless it was typed. */
    private static String unit(RunInput input) {
        boolean bare = input.getValue() != null && input.getUnit() != null && input.getText().strip().matches("[-+0-9.,]+");
        return bare ? " " + Objects.requireNonNullElse(input.getUnit(), "") : "";
    }
}
