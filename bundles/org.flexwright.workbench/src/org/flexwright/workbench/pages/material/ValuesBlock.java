package org.flexwright.workbench.pages.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.field.ModelFields;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.model.Entry;
import org.flexwright.model.MaterialValue;
import org.flexwright.model.ModelFactory;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.Doing;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Settling;

/** Values of a material or lot: the sheet's beside the maker's own; the own one wins. */
final class ValuesBlock {

    private static final int MOST = 10;

    private final PageContext context;
    private final Kit kit;
    private final Entry owner;
    private final EReference feature;
    private final Doing doing;
    private final Prose none;
    private final Listing<MaterialValue> values;
    private final Composite chosen;
    private FormModel model;
    private MaterialValue edited;
    private PickBox<PropertyDef> property;

    ValuesBlock(Composite parent, PageContext context, Entry owner, EReference feature, Doing doing) {
        this.context = context;
        this.kit = context.kit();
        this.owner = owner;
        this.feature = feature;
        this.doing = doing;
        Block block = new Block(parent, kit, "Values: the sheet's beside your own", 1, Spacing.FIELDS);
        none = Prose.quiet(block.body(), kit, "No value yet. What the supplier's sheet says and what you measured stand side by side; your own wins.");
        none.setLayoutData(Grid.wide());
        values = new Listing<>(block.body(), kit, "Values of the material", MOST, List.of(
                Column.text("Property", 22, this::title),
                Column.text("Sheet", 15, value -> number(value.getSheetValue(), null, value)),
                Column.text("Own", 18, value -> number(value.getOwnValue(), value.getOwnUncertainty(), value)),
                new Column<>("Used", 14, false, ValuesBlock::used, value -> Ink.QUIET),
                new Column<>("Source", 22, false, ValuesBlock::source, value -> Ink.QUIET)));
        values.control().setLayoutData(Grid.wide());
        values.whenChosen(this::edit);
        chosen = kit.pane(block.body(), 1, Spacing.FIELDS);
        chosen.setLayoutData(Grid.wide());
        chosen.addListener(SWT.Dispose, event -> close());
        if (!context.session().readOnly()) {
            Composite add = Flow.pane(block.body(), kit, Ink.PAPER);
            add.setLayoutData(Grid.wide());
            property = new PickBox<>(add, kit, "Property of the new value", null, PropertyDef::title);
            List<PropertyDef> all = context.registries().properties().all().stream().filter(p -> !p.yesNo()).toList();
            property.show(all, all.isEmpty() ? null : all.getFirst());
            kit.action(add, "Add a &value", this::add);
        }
        show();
    }

    private void close() {
        if (model != null) {
            model.close();
            model = null;
        }
    }

    @SuppressWarnings("unchecked") // the feature holds values
    private List<MaterialValue> all() {
        return List.copyOf((EList<MaterialValue>) owner.eGet(feature));
    }

    private String title(MaterialValue value) {
        return value.getProperty() == null ? "–" : context.registries().findProperty(value.getProperty()).map(PropertyDef::title).orElse(value.getProperty());
    }

    private static String number(Double number, Double halfWidth, MaterialValue value) {
        if (number == null) {
            return "–";
        }
        String unit = value.getUnit() == null ? "" : " " + value.getUnit();
        return halfWidth == null ? FieldText.digits(number) + unit : FieldText.rounded(number, halfWidth) + " ± " + FieldText.digits(halfWidth) + unit;
    }

    private static String used(MaterialValue value) {
        return value.getOwnValue() != null ? "own, measured" : value.getSheetValue() != null ? "sheet" : "nothing";
    }

    private static String source(MaterialValue value) {
        String words = value.getOwnValue() != null ? value.getOwnSource() : value.getSheetSource();
        return Objects.requireNonNullElse(words, "");
    }

    void show() {
        List<MaterialValue> all = all();
        Grid.shown(none, all.isEmpty());
        Grid.shown(values.control(), !all.isEmpty());
        values.show(all);
        if (edited != null && !all.contains(edited)) {
            edit(null);
        }
    }

    private void edit(MaterialValue value) {
        edited = value;
        values.choose(value);
        close();
        for (Control old : chosen.getChildren()) {
            old.dispose();
        }
        if (value != null) {
            List<FieldDescriptor> fields = new ArrayList<>(ModelFields.of(value, context.registries().properties()));
            fields.removeIf(f -> f.name().equals("property"));
            model = FormModel.bound(context.session(), value, fields);
            FormPane form = new FormPane(chosen, kit, Bindings.of(model, context.session().readOnly()));
            form.setLayoutData(Grid.wide());
            if (!context.session().readOnly()) {
                kit.action(chosen, "Take the value out", () -> doing.edit("take out a value", edit -> edit.remove(value))).setLayoutData(Grid.natural());
            }
        }
        ScrollPane.reflowAround(chosen);
        Settling.later(kit, chosen);
    }

    private void add() {
        PropertyDef of = property.chosen();
        if (of == null) {
            doing.say("No property is known; a plugin brings them.");
            return;
        }
        MaterialValue value = ModelFactory.eINSTANCE.createMaterialValue();
        value.setProperty(of.id());
        value.setUnit(of.kind().unit().symbol());
        if (doing.edit("add a value", edit -> edit.add(owner, feature, value))) {
            edit(value);
        }
    }
}
