package org.flexwright.workbench.pages.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.find.Finding;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FindingStrip;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.MeasurementRow;

/** One piece: what it is, and every reading on it. */
final class PartBlock {

    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.SPECIMEN__CODE, ModelPackage.Literals.SPECIMEN__PIECE_KIND,
            ModelPackage.Literals.SPECIMEN__THICKNESS, ModelPackage.Literals.SPECIMEN__MADE_AT, ModelPackage.Literals.SPECIMEN__FAILED,
            ModelPackage.Literals.SPECIMEN__FAIL_REASON, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final PageContext context;
    private final Doing doing;
    private final Block readings;
    private final Block block;
    private Part part;
    private FormModel model;
    private FormPane form;
    private Composite strips;
    private List<Object> shown = List.of();
    private List<Finding> found;

    PartBlock(Composite parent, PageContext context, Doing doing) {
        this.context = context;
        this.doing = doing;
        readings = new Block(parent, context.kit(), "Readings", 1, new Spacing(0, 0, 0, 3));
        block = new Block(parent, context.kit(), "Part", 1, Spacing.FIELDS);
        block.addDisposeListener(event -> close());
    }

    private void close() {
        if (model != null) {
            model.close();
            model = null;
        }
    }

    Part part() {
        return part;
    }

    /** Shows a piece; null: none. */
    void show(Part next) {
        if (next != part) {
            part = next;
            close();
            Composite body = block.emptied();
            if (part != null) {
                model = FormModel.bound(context.session(), part, FIELDS);
                form = new FormPane(body, context.kit(), Bindings.of(model, context.session().readOnly()));
                form.setLayoutData(Grid.wide());
            }
        }
        refresh();
    }

    /** Shows what the piece is now. */
    void refresh() {
        block.setShown(part != null);
        readings.setShown(part != null);
        if (part == null) {
            return;
        }
        String code = part.getCode() == null ? "piece without a code" : part.getCode();
        block.setTitle("Piece " + code);
        readings.setTitle("Readings on " + code);
        List<Finding> findings = context.projects().findings(part);
        List<Object> now = new ArrayList<>();
        now.add(part);
        for (Measurement m : part.getMeasurements()) {
            now.add(m);
            now.addAll(m.getReadings());
            m.getReadings().forEach(r -> now.add(r.getValue() + " " + r.getYes() + " " + r.getLeftOut()));
            now.add(Objects.requireNonNullElse(m.getSession(), ""));
            now.add(String.valueOf(m.getKey()));
        }
        if (!now.equals(shown)) {
            shown = now;
            found = null;
            fill();
        }
        if (!findings.equals(found)) {
            found = findings;
            tell(findings);
        }
    }

    /** Findings come and go while somebody types below them: the rows stay. */
    private void tell(List<Finding> findings) {
        for (Control old : strips.getChildren()) {
            old.dispose();
        }
        findings.forEach(finding -> FindingStrip.of(strips, context.kit(), finding).setLayoutData(Grid.wide()));
        ((GridData) strips.getLayoutData()).exclude = findings.isEmpty();
        strips.setVisible(!findings.isEmpty());
        ScrollPane.reflowAround(strips);
    }

    private void fill() {
        Composite body = readings.emptied();
        strips = context.kit().pane(body, 1, Spacing.TIGHT);
        strips.setLayoutData(Grid.wide());
        if (part.getMeasurements().isEmpty()) {
            Prose.quiet(body, context.kit(), "Nothing was read on it yet.").setLayoutData(Grid.wide());
        }
        part.getMeasurements().forEach(m -> new MeasurementRow(body, context, m, doing).setLayoutData(Grid.wide()));
    }

    void setFocus() {
        if (form != null) {
            form.setFocus();
        }
    }
}
