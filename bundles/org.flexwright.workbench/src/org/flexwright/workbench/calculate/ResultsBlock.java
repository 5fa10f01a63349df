package org.flexwright.workbench.calculate;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationResult;
import org.flexwright.core.calc.Refusal;
import org.flexwright.core.calc.ResultValue;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.Rows;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;

/** Results with band, origin and source; a refusal stands where they would. */
final class ResultsBlock {

    private static final int MOST_ROWS = 40;

    private final Kit kit;
    private final Calculation<?, ?> calculation;
    private final Consumer<String> goTo;
    private final Composite body;

    ResultsBlock(Composite parent, Kit kit, Calculation<?, ?> calculation, Consumer<String> goTo) {
        this.kit = kit;
        this.calculation = calculation;
        this.goTo = goTo;
        Composite pane = kit.pane(parent, 1, new Spacing(0, 0, 0, 2));
        pane.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        kit.label(pane, "Results", Ink.INK, Role.STRONG);
        kit.hairline(pane);
        body = kit.pane(pane, 1, new Spacing(0, 0, 0, 3));
        body.setLayoutData(Grid.wide());
        Kit.name(body, "Results");
    }

    void show(CalculationResult result) {
        for (Control old : body.getChildren()) {
            old.dispose();
        }
        if (result.done()) {
            result.results().values().forEach(this::result);
            result.findings().forEach(remark -> FindingStrip.of(body, kit, remark).setLayoutData(Grid.wide()));
            Prose.quiet(body, kit, "calculated; rests on: " + calculation.info().source().display()).setLayoutData(Grid.wide());
            Prose.quiet(body, kit, "Holds for: " + calculation.info().validity()).setLayoutData(Grid.wide());
        } else {
            refusal(result, result.refused());
        }
    }

    private void refusal(CalculationResult result, Refusal refusal) {
        boolean missing = result.inputs().get(refusal.input()) != null && result.inputs().get(refusal.input()).typed().isBlank();
        Composite pane = kit.pane(body, 1, new Spacing(3, 3, 0, 1), Ink.PANEL);
        pane.setLayoutData(Grid.wide());
        new Prose(pane, kit, missing ? "○ No result yet" : "■ No result", missing ? Ink.QUIET : Ink.STOP, Role.STRONG).setLayoutData(Grid.wide());
        Prose.text(pane, kit, refusal.why()).setLayoutData(Grid.wide());
        Prose.text(pane, kit, refusal.remedy()).setLayoutData(Grid.wide());
        Kit.name(pane, "No result: " + refusal.why() + " " + refusal.remedy());
        String input = refusal.input();
        if (result.inputs().containsKey(input)) {
            kit.action(pane, "Go to " + result.inputs().get(input).field().label(), () -> goTo.accept(input)).setLayoutData(Grid.natural());
        }
    }

    private void result(ResultValue value) {
        if (value.text().isBlank()) {
            return; // the calculation left it out
        }
        FieldDescriptor field = value.field();
        Composite row = kit.pane(body, 1, new Spacing(0, 0, 0, 0));
        row.setLayoutData(Grid.wide());
        Kit.name(row, field.label() + ": " + value.text());
        kit.quiet(row, field.label()).setLayoutData(Grid.wide());
        if (field.type() == FieldType.TABLE && value.value() instanceof List<?> rows) {
            table(row, field, rows);
        } else {
            boolean number = value.likely() != null;
            Prose text = new Prose(row, kit, value.text(), Ink.INK, number ? Role.FIGURE : Role.STRONG);
            text.setLayoutData(Grid.wide());
        }
        String source = value.source().equals(calculation.info().source()) ? "" : "rests on: " + value.source().display();
        String help = field.help();
        String words = help.isBlank() ? source : source.isEmpty() ? help : help + "  " + source;
        if (!words.isBlank()) {
            Prose.quiet(row, kit, words).setLayoutData(Grid.wide());
        }
    }

    private void table(Composite row, FieldDescriptor field, List<?> rows) {
        Composite table = kit.pane(row, field.columns().size(), new Spacing(0, 1, 4, 1));
        table.setLayoutData(Grid.wide());
        for (FieldDescriptor column : field.columns()) {
            cell(table, column.label() + (column.unit().isEmpty() ? "" : ", " + unit(column)), column, Ink.QUIET);
        }
        rows.stream().limit(MOST_ROWS).forEach(one -> {
            var cells = Rows.cells(field.columns(), one);
            field.columns().forEach(column -> cell(table, bare(column, FieldText.show(column, cells.get(column.name()))), column, Ink.INK));
        });
        if (rows.size() > MOST_ROWS) {
            Prose.quiet(row, kit, "and " + (rows.size() - MOST_ROWS) + " more rows").setLayoutData(Grid.wide());
        }
    }

    private static String unit(FieldDescriptor column) {
        return org.flexwright.core.field.FieldUnits.unit(column.kind(), column.unit()).display();
    }

    private static String bare(FieldDescriptor column, String printed) {
        String unit = column.unit().isEmpty() ? "" : " " + unit(column);
        return !unit.isEmpty() && printed.endsWith(unit) ? printed.substring(0, printed.length() - unit.length()) : printed;
    }

    private void cell(Composite table, String words, FieldDescriptor column, Ink ink) {
        boolean number = column.type() == FieldType.QUANTITY || column.type() == FieldType.INTEGER;
        kit.label(table, words, ink, Role.BODY).setLayoutData(new GridData(number ? SWT.END : SWT.FILL, SWT.CENTER, !number, false));
    }
}
