package org.flexwright.workbench.pages.mould;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.trial.Moulds;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Mould;
import org.flexwright.model.MouldCast;
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
import org.flexwright.workbench.pages.common.Moments;

/** A mould: what it is, how many casts it has seen and may see, and how the parts came out. */
final class MouldPage extends BlockPage {
    private static final List<FieldDescriptor> FIELDS = Stream.of(ModelPackage.Literals.MOULD__CODE, ModelPackage.Literals.MOULD__NAME, ModelPackage.Literals.MOULD__MATERIAL,
            ModelPackage.Literals.MOULD__MADE_ON, ModelPackage.Literals.MOULD__CAVITIES, ModelPackage.Literals.MOULD__TURN_MINUTES, ModelPackage.Literals.MOULD__CASTS_BEFORE,
            ModelPackage.Literals.MOULD__CASTS_LIMIT, ModelPackage.Literals.MOULD__PRICE, ModelPackage.Literals.ENTRY__NOTE).map(FieldDescriptors::of).toList();

    private final Mould mould;
    private final FormPane form;
    private final Prose count;
    private final Listing<MouldCast> casts;

    MouldPage(Composite parent, PageContext context) {
        super(parent, context);
        mould = (Mould) context.subject();
        Block block = new Block(body(), kit(), "Mould", 1, Spacing.FIELDS);
        FormModel model = FormModel.bound(context.session(), mould, FIELDS);
        form = new FormPane(block.body(), kit(), Bindings.of(model, !writable()));
        form.setLayoutData(Grid.wide());
        form.addListener(SWT.Dispose, event -> model.close());
        Block seen = new Block(body(), kit(), "Casts", 1, Spacing.FIELDS);
        if (writable()) {
            seen.action("Count a &cast", () -> doing().edit("count a cast", edit -> Moulds.cast(edit, mould, null, null, null, null)));
        }
        count = new Prose(seen.body(), kit(), "", Ink.INK, Role.STRONG);
        count.setLayoutData(Grid.wide());
        casts = new Listing<>(seen.body(), kit(), "Casts", 12, List.of(Column.text("When", 16, cast -> Moments.minute(cast.getAt())), Column.text("Trial", 8, cast -> cast
                .getTrial() == null ? "" : cast.getTrial().getCode()), Column.number("Parts", 6, cast -> Objects.toString(cast.getParts(), "")), Column.text("Released by", 20,
                        cast -> Objects.toString(cast.getRelease(), "")), Column.text("Came out", 12, cast -> cast.getReleasedWell() == null ? "not said" : cast.getReleasedWell() ? "well"
                                : "with force or damage"), Column.text("Note", 16, cast -> Objects.toString(cast.getNote(), ""))));
        casts.control().setLayoutData(Grid.wide());
        casts.whenOpened(cast -> context.open(cast.getTrial() == null ? cast : cast.getTrial()));
        show();
        settle();
    }

    private void show() {
        int seen = Moulds.casts(mould);
        Integer left = Moulds.left(mould);
        String words = seen + (seen == 1 ? " cast" : " casts") + (mould.getCastsBefore() == null || mould.getCastsBefore() == 0 ? "" : ", " + mould.getCastsBefore()
                + " of them before they were counted here");
        count.setWords(left == null ? words + "; no own limit is entered" : left > 0 ? words + "; " + left + " left until your own limit of " + mould.getCastsLimit()
                : words + "; your own limit of " + mould.getCastsLimit() + " is reached: look at it closely", left != null && left <= Moulds.FEW ? Ink.CAUTION : Ink.INK);
        casts.show(mould.getCasts());
    }

    @Override
    protected void refresh() {
        show();
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
