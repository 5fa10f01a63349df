package org.flexwright.workbench.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.view.Comparison;
import org.flexwright.core.view.Comparison.Cell;
import org.flexwright.core.view.Comparison.Column;
import org.flexwright.core.view.Comparison.Row;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Mark;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.StripCanvas;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.MeasurementRow;
import org.flexwright.workbench.pages.common.Notice;
import org.flexwright.workbench.pages.common.Settling;

/** What stands behind a cell: why the verdict is what it is, every reading, and what was learned from the trial. */
final class BehindCell extends Composite {

    private static final List<FieldDescriptor> LEARNED = Stream.of(ModelPackage.Literals.TRIAL__CONCLUSION).map(FieldDescriptors::of).toList();

    private final PageContext context;
    private final Kit kit;
    private final Runnable close;
    private final ScrollPane pane;
    private List<Object> shown = List.of();

    /** Nothing yet; {@code close} takes it away. */
    BehindCell(Composite parent, PageContext context, Runnable close) {
        super(parent, SWT.NONE);
        this.context = context;
        this.kit = context.kit();
        this.close = close;
        setLayout(new FillLayout());
        pane = new ScrollPane(this, kit, 1, new Spacing(6, 3, 3, 3));
    }

    /** Shows what is behind the cell that is looked at. */
    void show(CompareState state) {
        Comparison all = state.shown();
        boolean cell = state.row() >= 0 && state.column() >= 0;
        List<Object> now = cell ? List.of(all.rows().get(state.row()), all.columns().get(state.column()), all.cell(state.row(), state.column()), readings(all, state))
                : List.of();
        if (now.equals(shown) && pane.body().getChildren().length > 0) {
            return;
        }
        shown = now;
        for (Control old : pane.body().getChildren()) {
            old.dispose();
        }
        if (cell) {
            fill(all.rows().get(state.row()), all.columns().get(state.column()), all.cell(state.row(), state.column()));
        }
        pane.reflow();
        Settling.later(kit, pane);
    }

    private List<Object> readings(Comparison all, CompareState state) {
        List<Object> now = new ArrayList<>();
        measurements(all.rows().get(state.row()), all.columns().get(state.column())).forEach(m -> {
            now.add(m);
            m.getReadings().forEach(r -> now.add(r.getValue() + " " + r.getYes() + " " + r.getLeftOut()));
        });
        return now;
    }

    private List<Measurement> measurements(Row target, Column column) {
        if (target.property() == null) {
            return List.of();
        }
        List<? extends Specimen> pieces = context.projects().find(column.id()).map(thing -> thing instanceof Trial trial ? trial.getParts()
                : thing instanceof Specimen piece ? List.of(piece) : List.<Specimen>of()).orElse(List.of());
        return pieces.stream().flatMap(piece -> piece.getMeasurements().stream())
                .filter(m -> m.getKey() != null && target.property().id().equals(m.getKey().getProperty())).toList();
    }

    private void fill(Row target, Column column, Cell cell) {
        Composite body = pane.body();
        Composite head = kit.pane(body, 4, new Spacing(0, 0, 4, 0));
        head.setLayoutData(Grid.wide());
        kit.heading(head, column.code() + "  " + target.title());
        Ink ink = cell.judgement() == null ? Ink.QUIET : Mark.of(cell.judgement().verdict()).ink();
        kit.label(head, cell.value() + "   " + cell.word(), ink, Role.HEADING).setLayoutData(Grid.wide());
        context.projects().find(column.id()).ifPresent(thing -> kit.action(head, "Open " + column.code(), () -> context.open(thing))
                .setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false)));
        kit.action(head, "C&lose", close).setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        Notice notice = new Notice(body, kit, 1);
        if (cell.judgement() != null) {
            Prose.text(body, kit, cell.judgement().reason().text()).setLayoutData(Grid.wide());
            cell.judgement().notes().forEach(note -> Prose.quiet(body, kit, note.text()).setLayoutData(Grid.wide()));
        }
        if (cell.strip() != null) {
            StripCanvas strip = new StripCanvas(body, kit);
            strip.show(cell.strip(), ink, column.code() + " " + target.title() + ": " + cell.value() + ", " + cell.word());
            strip.setLayoutData(Grid.wide());
        }
        Doing doing = new Doing(context.session(), notice::say);
        Block readings = new Block(body, kit, "Readings", 1, new Spacing(0, 0, 0, 2));
        List<Measurement> all = measurements(target, column);
        if (all.isEmpty()) {
            Prose.quiet(readings.body(), kit, "Nothing was read for this target.").setLayoutData(Grid.wide());
        }
        for (Measurement m : all) {
            Composite row = kit.pane(readings.body(), 2, Spacing.FIELDS);
            row.setLayoutData(Grid.wide());
            String code = m.eContainer() instanceof Specimen piece ? (piece.getCode() == null ? "" : piece.getCode()) + (piece.isFailed() ? " ✕" : "") : "";
            var label = kit.label(row, code, Ink.INK, Role.STRONG);
            label.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
            kit.chars(label, 6);
            new MeasurementRow(row, context, m, doing).setLayoutData(Grid.wide());
        }
        context.projects().find(column.id()).filter(Trial.class::isInstance).ifPresent(trial -> learned(body, (Trial) trial));
    }

    private void learned(Composite body, Trial trial) {
        Block block = new Block(body, kit, "What was learned from " + trial.getCode(), 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), trial, LEARNED);
        FormPane form = new FormPane(block.body(), kit, Bindings.of(model, context.session().readOnly()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
    }
}
