package org.flexwright.workbench.pages.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyDef.Condition;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Session;
import org.flexwright.model.Specimen;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FieldControl;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.PickBox;
import org.flexwright.workbench.pages.common.Properties;

/** Says what is read, on which pieces, with which gauge. */
final class ReadingSetup extends Composite {

    private static final FieldDescriptor WANTED = FieldDescriptor.of("wanted", "Readings on each piece", FieldType.INTEGER).withBounds(1, 100, false)
            .withDefault("5").withOptional(false);
    private static final List<FieldDescriptor> BENCH = Stream.of(ModelPackage.Literals.SESSION__ROOM_C, ModelPackage.Literals.SESSION__ROOM_RH,
            ModelPackage.Literals.SESSION__CONDITIONING_HOURS, ModelPackage.Literals.SESSION__WHO).map(FieldDescriptors::of).toList();
    private static final int CELL = 38;
    private static final int FIELD = 24;

    private final PageContext context;
    private final Kit kit;
    private final Session session;
    private final Runnable changed;
    private final PickBox<ReadingPlan.What> what;
    private final PickBox<ReadingPlan.Group> pieces;
    private final PickBox<Instrument> gauge;
    private final Composite conditions;
    private final Composite bench;
    private final PickBox<ControlPiece> control;
    private final FormModel wanted = FormModel.scratch(List.of(WANTED));
    private FormModel form;
    private PropertyDef property;
    private PropertyKey key;

    ReadingSetup(Composite parent, PageContext context, Runnable changed) {
        super(parent, SWT.NONE);
        this.context = context;
        this.kit = context.kit();
        this.session = (Session) context.subject();
        this.changed = changed;
        kit.columns(this, 3, new Spacing(6, 3, 4, 2));
        kit.dress(this, Ink.INK, Ink.PANEL, Role.BODY);
        setBackgroundMode(SWT.INHERIT_DEFAULT);
        what = new PickBox<>(cell("What is read"), kit, "What is read", null, ReadingPlan.What::words);
        what.control().setLayoutData(Grid.wide());
        what.whenChosen(chosen -> {
            take(chosen);
            changed.run();
        });
        pieces = new PickBox<>(cell("On which pieces"), kit, "On which pieces", null, ReadingPlan.Group::words);
        pieces.control().setLayoutData(Grid.wide());
        pieces.whenChosen(group -> changed.run());
        gauge = new PickBox<>(cell("Gauge"), kit, "Gauge", "not said", instrument -> Optional.ofNullable(instrument.getName()).orElse("gauge without a name"));
        gauge.control().setLayoutData(Grid.wide());
        gauge.whenChosen(instrument -> changed.run());
        wanted.addListener(name -> changed.run());
        conditions = kit.pane(this, 5, new Spacing(0, 0, 4, 1), Ink.PANEL);
        conditions.setLayoutData(Grid.wide(3));
        bench = kit.pane(this, 5, new Spacing(0, 0, 4, 1), Ink.PANEL);
        bench.setLayoutData(Grid.wide(3));
        FormModel room = FormModel.bound(context.session(), session, BENCH);
        addListener(SWT.Dispose, event -> room.close());
        for (FieldDescriptor field : BENCH) {
            FieldControl said = new FieldControl(bench, kit, Bindings.of(room, field, false));
            said.setStacked(true);
            said.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
            kit.chars(said.input(), field.type() == FieldType.QUANTITY ? 8 : 18);
        }
        Composite kept = kit.pane(bench, 1, new Spacing(0, 0, 0, 1), Ink.PANEL);
        kept.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        kit.text(kept, "Control piece, read first");
        control = new PickBox<>(kept, kit, "Control piece of the session", "none", Names::of);
        control.control().setLayoutData(Grid.wide());
        control.whenChosen(piece -> {
            context.session().execute("choose the control piece", edit -> edit.set(session, ModelPackage.Literals.SESSION__CONTROL_PIECE, piece));
            changed.run();
        });
        addListener(SWT.Resize, event -> fold());
        take(ReadingPlan.likely(ReadingPlan.whats(project(), context.registries().properties()), project(), session));
    }

    private Composite cell(String label) {
        Composite cell = kit.pane(this, 1, new Spacing(0, 0, 0, 1), Ink.PANEL);
        cell.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        kit.text(cell, label);
        return cell;
    }

    /** The kind of piece the property is read on. */
    private PieceKind kind() {
        return key == null || key.getPieceKind() == null ? PieceKind.PART : key.getPieceKind();
    }

    private Project project() {
        return context.session().project();
    }

    private void fold() {
        int room = getClientArea().width / kit.type().chars(Role.BODY, CELL);
        int columns = Math.clamp(room, 1, 3);
        while (columns > 1 && !fits(columns)) {
            columns--;
        }
        int fields = Math.clamp(getClientArea().width / kit.type().chars(Role.BODY, FIELD), 1, 5);
        GridLayout layout = (GridLayout) getLayout();
        GridLayout below = (GridLayout) conditions.getLayout();
        if (layout.numColumns != columns || below.numColumns != fields) {
            layout.numColumns = columns;
            ((GridData) conditions.getLayoutData()).horizontalSpan = columns;
            ((GridData) bench.getLayoutData()).horizontalSpan = columns;
            below.numColumns = fields;
            ((GridLayout) bench.getLayout()).numColumns = fields;
            ScrollPane.reflowAround(this);
        }
    }

    /** Whether the three choices stand in so many columns with all their words. */
    private boolean fits(int columns) {
        int[] widths = new int[columns];
        List<PickBox<?>> choices = List.of(what, pieces, gauge);
        for (int i = 0; i < choices.size(); i++) {
            int natural = choices.get(i).control().getParent().computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
            widths[i % columns] = Math.max(widths[i % columns], natural);
        }
        GridLayout layout = (GridLayout) getLayout();
        int around = 2 * layout.marginWidth + layout.marginLeft + layout.marginRight + (columns - 1) * layout.horizontalSpacing;
        return IntStream.of(widths).sum() + around <= getClientArea().width;
    }

    /** Offers what is in the project now; what is chosen stays where it still is there. */
    void refresh() {
        List<ReadingPlan.Group> groups = ReadingPlan.groups(project(), kind());
        ReadingPlan.Group before = pieces.chosen();
        pieces.show(groups, before == null ? groups.isEmpty() ? null : groups.getFirst()
                : groups.stream().filter(g -> g.pieces().getFirst() == before.pieces().getFirst()).findFirst().orElse(null));
        gauge.show(ReadingPlan.gauges(project(), session), gauge.chosen());
        control.show(project().getControlPieces(), session.getControlPiece());
    }

    /** Chooses the group a piece is in. */
    void choose(Specimen piece) {
        List<ReadingPlan.Group> groups = ReadingPlan.groups(project(), kind());
        groups.stream().filter(g -> g.pieces().contains(piece)).findFirst().ifPresent(g -> pieces.show(groups, g));
    }

    /** Reads another property under the same conditions. */
    void read(PropertyDef other) {
        PropertyKey same = EcoreUtil.copy(key);
        same.setProperty(other.id());
        take(new ReadingPlan.What(other.title(), other, same));
    }

    private void take(ReadingPlan.What chosen) {
        if (chosen == null) {
            return;
        }
        property = chosen.property();
        key = EcoreUtil.copy(chosen.key());
        List<ReadingPlan.What> all = ReadingPlan.whats(project(), context.registries().properties());
        String words = Properties.words(key, context.registries().properties());
        what.show(all, all.stream().filter(w -> w.words().equals(chosen.words())).findFirst()
                .or(() -> all.stream().filter(w -> w.words().endsWith(words)).findFirst()).orElse(null));
        gauge.show(ReadingPlan.gauges(project(), session), ReadingPlan.likelyGauge(project(), session, property));
        refresh();
        makeConditions();
        if (getClientArea().width > 0) {
            fold();
        }
    }

    private void makeConditions() {
        for (Control old : conditions.getChildren()) {
            old.dispose();
        }
        List<FieldDescriptor> fields = new ArrayList<>();
        condition(fields, Condition.SPOT, ModelPackage.Literals.PROPERTY_KEY__SPOT);
        condition(fields, Condition.SUPPORT, ModelPackage.Literals.PROPERTY_KEY__SUPPORT);
        condition(fields, Condition.DWELL, ModelPackage.Literals.PROPERTY_KEY__DWELL);
        condition(fields, Condition.PIECE, ModelPackage.Literals.PROPERTY_KEY__PIECE_KIND);
        form = FormModel.scratch(fields);
        for (FieldDescriptor field : fields) {
            Object value = key.eGet(feature(field));
            form.type(field.name(), field.print(value));
            FieldControl control = new FieldControl(conditions, kit, Bindings.of(form, field, false));
            control.setStacked(true);
            control.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, field.type() == FieldType.TEXT, false));
            kit.chars(control.input(), field.type() == FieldType.QUANTITY ? 8 : 20);
        }
        FieldControl count = new FieldControl(conditions, kit, Bindings.of(wanted, WANTED, false));
        count.setStacked(true);
        count.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, false, false));
        kit.chars(count.input(), 6);
        form.addListener(name -> {
            if (form.problem(name).isEmpty()) {
                key.eSet(feature(form.field(name)), form.value(name));
                refresh();
                changed.run();
            }
        });
        ScrollPane.reflowAround(this);
    }

    private void condition(List<FieldDescriptor> fields, Condition condition, EAttribute attribute) {
        if (property.comparedBy().contains(condition)) {
            fields.add(FieldDescriptors.of(attribute));
        }
    }

    private static EStructuralFeature feature(FieldDescriptor field) {
        return ModelPackage.Literals.PROPERTY_KEY.getEStructuralFeature(field.name());
    }

    /** What was said; empty as long as a piece or a property is missing or a number is not understood. */
    Optional<ReadingPlan> plan() {
        if (property == null || pieces.chosen() == null || !wanted.problems().isEmpty() || wanted.value(WANTED.name()) == null) {
            return Optional.empty();
        }
        return Optional.of(new ReadingPlan(property, EcoreUtil.copy(key), gauge.chosen(), pieces.chosen().pieces(), (Integer) wanted.value(WANTED.name())));
    }
}
