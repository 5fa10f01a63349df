package org.flexwright.workbench.pages.gauge;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.verdict.Doubts;
import org.flexwright.core.view.ControlDrift;
import org.flexwright.core.view.ControlDrift.Row;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.ModelPackage;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.ChartPane;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.Moments;

/** A control piece: its usual reading, and how it read over the sessions. */
final class ControlPage extends BlockPage {
    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.SPECIMEN__CODE, ModelPackage.Literals.SPECIMEN__THICKNESS,
            ModelPackage.Literals.SPECIMEN__MADE_AT, ModelPackage.Literals.CONTROL_PIECE__USUAL, ModelPackage.Literals.CONTROL_PIECE__USUAL_SPREAD,
            ModelPackage.Literals.CONTROL_PIECE__USUAL_FROM, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();
    private static final int MOST = 12;
    private static final int CHART = 64;

    private final ControlPiece piece;
    private final FindingStrips findings;
    private final FormPane form;
    private final Prose words;
    private final ChartPane chart;
    private final Listing<Row> sessions;

    ControlPage(Composite parent, PageContext context) {
        super(parent, context);
        piece = (ControlPiece) context.subject();
        findings = new FindingStrips(body(), context);
        Block block = new Block(body(), kit(), "Control piece", 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), piece, FIELDS);
        form = new FormPane(block.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        Block drift = new Block(body(), kit(), "How it read over the sessions", 1, Spacing.FIELDS);
        words = Prose.quiet(drift.body(), kit(), "");
        words.setLayoutData(Grid.wide());
        chart = new ChartPane(drift.body(), kit());
        GridData room = Grid.wide();
        room.heightHint = kit().grid().steps(CHART);
        chart.setLayoutData(room);
        sessions = new Listing<>(drift.body(), kit(), "Sessions in which it was read", MOST, List.of(
                Column.text("Session", 9, row -> row.session().getCode() == null ? "" : row.session().getCode()), Column.text("When", 17, row -> Moments.minute(row.session().getAt())),
                Column.number("Median", 10, row -> FieldText.digits(row.control().median())),
                Column.number("Smallest", 10, row -> FieldText.digits(row.low())), Column.number("Largest", 10, row -> FieldText.digits(row.high())),
                Column.number("Off by", 10, row -> FieldText.digits(row.control().difference())), Column.text("Allowed", 44, row -> row.control().allowed()),
                new Column<>("Doubt", 14, false, row -> row.control().off() ? Doubts.word() : "", row -> Ink.CAUTION)));
        sessions.control().setLayoutData(Grid.wide());
        sessions.whenOpened(row -> context.open(row.session()));
        show();
        findings.show();
        settle();
    }

    private void show() {
        Optional<ControlDrift> drift = ControlDrift.of(context().session().project(), piece, context().registries().properties());
        words.setWords(drift.map(d -> d.property().title() + ". A session in which it is off by more than is allowed is in doubt with all its readings; nothing is corrected.")
                .orElse("Read it at the start of each session: from the second session on, or with a usual reading entered above, it tells whether gauge, hand or room changed."));
        Grid.shown(chart, drift.isPresent());
        Grid.shown(sessions.control(), drift.isPresent());
        drift.ifPresent(d -> {
            chart.show(d.plot());
            sessions.show(d.rows());
        });
    }

    @Override
    protected void refresh() {
        show();
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        form.reveal(feature);
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }
}
