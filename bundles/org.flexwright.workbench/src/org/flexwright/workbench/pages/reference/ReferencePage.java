package org.flexwright.workbench.pages.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.model.Knowledge;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.ReferencePart;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Dropping;
import org.flexwright.workbench.pages.common.MeasurementRow;
import org.flexwright.workbench.pages.common.Photos;

/** The reference part: its condition, and what is known of it, kept apart by how well. */
final class ReferencePage extends BlockPage {

    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.SPECIMEN__CODE, ModelPackage.Literals.REFERENCE_PART__NAME,
            ModelPackage.Literals.REFERENCE_PART__CONDITION, ModelPackage.Literals.REFERENCE_PART__AGE_YEARS, ModelPackage.Literals.SPECIMEN__THICKNESS,
            ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final ReferencePart part;
    private final FormPane form;
    private final FindingStrips findings;
    private final Block measured;
    private final Block estimated;
    private final Block unknown;
    private final Photos photos;
    private List<Object> shown = List.of();

    ReferencePage(Composite parent, PageContext context) {
        super(parent, context);
        part = (ReferencePart) context.subject();
        Block block = new Block(body(), kit(), "The part as it is", 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), part, FIELDS);
        form = new FormPane(block.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        findings = new FindingStrips(body(), context);
        measured = new Block(body(), kit(), "Measured", 1, new Spacing(0, 0, 0, 3));
        estimated = new Block(body(), kit(), "Estimated", 1, new Spacing(0, 0, 0, 3));
        unknown = new Block(body(), kit(), "Unknown", 1, new Spacing(0, 0, 0, 3));
        if (writable()) {
            new KnownBlock(body(), context, part, doing());
        }
        Block pictures = new Block(body(), kit(), "Photos", 1, Spacing.FIELDS);
        if (writable()) {
            pictures.action("Attac&h a photo…", () -> Dropping.choose(body(), context, part));
        }
        photos = new Photos(pictures.body(), kit(), context.session());
        photos.setLayoutData(Grid.wide());
        Dropping.on(control(), context, part);
        show();
        findings.show();
        settle();
    }

    private static Knowledge known(Measurement measurement) {
        return measurement.getKnowledge() == null ? Knowledge.MEASURED : measurement.getKnowledge();
    }

    private void show() {
        photos.show(part.getPhotos());
        List<Object> now = new ArrayList<>();
        for (Measurement m : part.getMeasurements()) {
            now.add(m);
            now.add(known(m));
            m.getReadings().forEach(r -> now.add(r.getValue() + " " + r.getYes() + " " + r.getLeftOut()));
        }
        if (now.equals(shown) && measured.body().getChildren().length > 0) {
            return;
        }
        shown = now;
        fill(measured, Knowledge.MEASURED, "Nothing was measured on it yet. Read it in a session: what is measured outweighs what is remembered.");
        fill(estimated, Knowledge.ESTIMATED, "Nothing is estimated.");
        fill(unknown, Knowledge.UNKNOWN, "Nothing was written down as unknown. Saying so keeps a guess from becoming a fact.");
        settle();
    }

    private void fill(Block block, Knowledge knowledge, String none) {
        Composite body = block.emptied();
        List<Measurement> those = part.getMeasurements().stream().filter(m -> known(m) == knowledge).toList();
        if (those.isEmpty()) {
            Prose.quiet(body, kit(), none).setLayoutData(Grid.wide());
        }
        those.forEach(m -> new MeasurementRow(body, context(), m, doing()).setLayoutData(Grid.wide()));
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
