package org.flexwright.workbench.pages.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.batch.StockLine;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FormModel;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;

/** The shelf: lots on hand, reserved by open batches, expired, and what to buy; and what an hour and a cup count. */
final class StockPage extends BlockPage {
    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.PROJECT__HOURLY_RATE, ModelPackage.Literals.PROJECT__CUP_PRICE).map(FieldDescriptors::of)
            .toList();

    private final Project project;
    private final Listing<StockLine> lots;
    private final Block buy;

    StockPage(Composite parent, PageContext context) {
        super(parent, context);
        project = (Project) context.subject();
        Block shelf = new Block(body(), kit(), "On the shelf", 1, Spacing.FIELDS);
        lots = new Listing<>(shelf.body(), kit(), "Lots on the shelf", 20, List.of(Column.text("Material", 36, line -> line.grade().getName() == null ? line.grade().getCode() : line
                .grade().getName()), Column.text("Lot", 10, line -> Objects.toString(line.lot().getCode(), "")), Column.number("On hand, g", 11, line -> grams(line.onHand())), Column.number("Reserved, g", 12, line -> line.reserved() > 0 ? grams(line.reserved()) : ""), Column.number("Free, g", 9, line -> line.expired() ? "" : grams(line.free())),
                new Column<>("Good until", 20, false, line -> line.lot().getExpires() == null ? "" : line.expired() ? "▲ expired " + line.lot().getExpires() : line.lot()
                        .getExpires().toString(), line -> line.expired() ? Ink.CAUTION : Ink.INK)));
        lots.control().setLayoutData(Grid.wide());
        lots.whenOpened(line -> context.open(line.lot()));
        Prose.quiet(shelf.body(), kit(), "On hand is what was bought less what was weighed out by the record. Lots are used up in this order: opened first, then those that expire first; never an expired one.")
                .setLayoutData(Grid.wide());
        buy = new Block(body(), kit(), "To buy", 1, Spacing.FIELDS);
        Block count = new Block(body(), kit(), "What work and cups count", 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), project, FIELDS);
        FormPane form = new FormPane(count.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        show();
        settle();
    }

    private static String grams(Double grams) {
        return grams == null ? "not said" : FieldText.digits(grams);
    }

    private void show() {
        lots.show(StockLine.all(project, LocalDate.now()));
        Composite body = buy.emptied();
        var missing = StockLine.toBuy(project);
        missing.forEach((grade, grams) -> new Prose(body, kit(), (grade.getName() == null ? grade.getCode() : grade.getName()) + ": " + FieldText.number(grams, QuantityKind.MASS, "g")
                + (grade.getPackSize() == null ? "" : ", that is " + (int) Math.ceil(grams / grade.getPackSize()) + " of " + FieldText.number(grade.getPackSize(), QuantityKind.MASS, "g")),
                Ink.CAUTION, Role.BODY).setLayoutData(Grid.wide()));
        if (missing.isEmpty()) {
            Prose.quiet(body, kit(), "Open batches have lots for everything they need.").setLayoutData(Grid.wide());
        }
    }

    @Override
    protected void refresh() {
        show();
    }
}
