package org.flexwright.workbench.pages.material;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FormModel;
import org.flexwright.model.Lot;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.workbench.kit.Bindings;
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

/** A product: what it is, its values, its lots. */
final class MaterialPage extends BlockPage {

    private static final int MOST = 10;
    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.MATERIAL_GRADE__CODE, ModelPackage.Literals.MATERIAL_GRADE__NAME,
            ModelPackage.Literals.MATERIAL_GRADE__FAMILY, ModelPackage.Literals.MATERIAL_GRADE__ROLE, ModelPackage.Literals.MATERIAL_GRADE__HAZARDS,
            ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final MaterialGrade grade;
    private final FormPane form;
    private final FindingStrips findings;
    private final ValuesBlock values;
    private final Prose none;
    private final Listing<Lot> lots;

    MaterialPage(Composite parent, PageContext context) {
        super(parent, context);
        grade = (MaterialGrade) context.subject();
        Block block = new Block(body(), kit(), "Material", 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), grade, FIELDS);
        form = new FormPane(block.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        findings = new FindingStrips(body(), context);
        values = new ValuesBlock(body(), context, grade, ModelPackage.Literals.MATERIAL_GRADE__VALUES, doing());
        Block stock = new Block(body(), kit(), "Lots", 1, Spacing.FIELDS);
        if (writable()) {
            stock.action("Add a &lot", this::add);
        }
        none = Prose.quiet(stock.body(), kit(), "No lot yet. Trials name the bottle or spool they used, so that a change of lot is not mistaken for a lesson.");
        none.setLayoutData(Grid.wide());
        lots = new Listing<>(stock.body(), kit(), "Lots of the material", MOST, List.of(
                Column.text("Lot", 12, lot -> Objects.requireNonNullElse(lot.getCode(), "–")),
                Column.text("Opened", 11, lot -> day(lot.getOpened())),
                new Column<>("Expires", 20, false, MaterialPage::expires, lot -> expired(lot) ? Ink.OUT : Ink.INK),
                Column.number("Bought, g", 11, lot -> lot.getAmount() == null ? "" : FieldText.digits(lot.getAmount())),
                Column.number("Price, EUR", 11, lot -> lot.getPrice() == null ? "" : FieldText.fixed(lot.getPrice(), 2)),
                Column.text("Data sheet", 18, MaterialPage::sheet)));
        lots.control().setLayoutData(Grid.wide());
        lots.whenOpened(lot -> context.open(lot));
        if (writable()) {
            kit().action(stock.body(), "&Open the lot", () -> {
                if (lots.chosen() != null) {
                    context.open(lots.chosen());
                }
            }).setLayoutData(Grid.natural());
        }
        show();
        findings.show();
        settle();
    }

    private static String day(LocalDate day) {
        return day == null ? "" : day.toString();
    }

    private static boolean expired(Lot lot) {
        return lot.getExpires() != null && lot.getExpires().isBefore(LocalDate.now());
    }

    private static String expires(Lot lot) {
        return day(lot.getExpires()) + (expired(lot) ? "  ▲ expired" : "");
    }

    private static String sheet(Lot lot) {
        return day(lot.getSheetDate()) + (lot.getSheetRevision() == null ? "" : " rev. " + lot.getSheetRevision());
    }

    private void add() {
        Lot lot = ModelFactory.eINSTANCE.createLot();
        if (doing().edit("add a lot", edit -> edit.add(grade, ModelPackage.Literals.MATERIAL_GRADE__LOTS, lot))) {
            context().open(lot);
        }
    }

    private void show() {
        values.show();
        boolean empty = grade.getLots().isEmpty();
        ((GridData) none.getLayoutData()).exclude = !empty;
        none.setVisible(empty);
        ((GridData) lots.control().getLayoutData()).exclude = empty;
        lots.control().setVisible(!empty);
        lots.show(grade.getLots());
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
