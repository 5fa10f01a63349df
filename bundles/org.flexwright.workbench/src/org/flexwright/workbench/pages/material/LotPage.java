package org.flexwright.workbench.pages.material;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.model.Lot;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.FindingStrips;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;

/** One bottle, spool or can: dates, amount, its own values, the trials it went into. */
final class LotPage extends BlockPage {

    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.LOT__CODE, ModelPackage.Literals.LOT__OPENED,
            ModelPackage.Literals.LOT__EXPIRES, ModelPackage.Literals.LOT__AMOUNT, ModelPackage.Literals.LOT__PRICE, ModelPackage.Literals.LOT__SHEET_DATE,
            ModelPackage.Literals.LOT__SHEET_REVISION, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final Lot lot;
    private final FormPane form;
    private final FindingStrips findings;
    private final ValuesBlock values;
    private final Prose used;

    LotPage(Composite parent, PageContext context) {
        super(parent, context);
        lot = (Lot) context.subject();
        Block block = new Block(body(), kit(), "Lot of " + Names.of(lot.eContainer()), 1, Spacing.FIELDS);
        block.action("Open the &material", () -> context.open(lot.eContainer()));
        FormModel model = FormModel.bound(context.session(), lot, FIELDS);
        form = new FormPane(block.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        findings = new FindingStrips(body(), context);
        values = new ValuesBlock(body(), context, lot, ModelPackage.Literals.LOT__VALUES, doing());
        Block where = new Block(body(), kit(), "Went into", 1, Spacing.FIELDS);
        used = Prose.text(where.body(), kit(), "");
        used.setLayoutData(Grid.wide());
        show();
        findings.show();
        settle();
    }

    private void show() {
        values.show();
        String trials = context().session().project().getTrials().stream().filter(this::uses).map(Trial::getCode).collect(Collectors.joining(", "));
        used.setWords(trials.isEmpty() ? "No trial has used it yet." : trials);
    }

    private boolean uses(Trial trial) {
        return trial.getSteps().stream().anyMatch(step -> step.getUses().stream().anyMatch(use -> use.getLot() == lot));
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
