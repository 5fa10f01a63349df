package org.flexwright.workbench.pages.trial;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.process.CardLine;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelPackage;
import org.flexwright.core.trial.Weighings;
import org.flexwright.model.StepState;
import org.flexwright.model.Weighing;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FieldControl;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Flow;

/** One material in the cup: planned and weighed grams, the target now, and where the balance's reading is typed. */
final class UseRow {

    /** Takes a weighing; true when it was written down. */
    interface Weigher {
        boolean weigh(MaterialUse use, Double gross, Double tare, Double net);
    }

    private static final List<FieldDescriptor> PLANNED = List.of(FieldDescriptors.of(ModelPackage.Literals.MATERIAL_USE__PLANNED));
    private static final FieldDescriptor GROSS = FieldDescriptors.of(ModelPackage.Literals.WEIGHING__GROSS);
    private static final FieldDescriptor TARE = FieldDescriptors.of(ModelPackage.Literals.WEIGHING__TARE);
    private static final FieldDescriptor NET = FieldDescriptors.of(ModelPackage.Literals.WEIGHING__NET);

    private final StepPlace place;
    private final Kit kit;
    private final MaterialUse use;
    private final Weigher weigher;
    private final Label actual;
    private final Label difference;
    private final Label material;
    private final Composite entry;
    private final Label target;
    private final Text gross;
    private final Text tare;
    private final Text net;
    private final Label weighings;
    private final Button takeOut;
    private final UseMore more;
    private final Button open;

    UseRow(Composite parent, StepPlace place, MaterialUse use, Columns columns, Weigher weigher) {
        this.place = place;
        this.kit = place.kit();
        this.use = use;
        this.weigher = weigher;
        String letter = UseWords.letter(use);
        Composite row = columns.row(parent);
        Composite label = columns.label(row);
        kit.label(label, letter, Ink.INK, Role.STRONG).setLayoutData(Grid.wide());
        material = kit.quiet(label, UseWords.material(use));
        material.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        FormModel form = FormModel.bound(place.page().session(), use, PLANNED);
        FieldControl planned = columns.field(row, Bindings.of(form, PLANNED.getFirst(), !place.writable()), "Planned mass of " + letter + ", g");
        planned.addListener(SWT.Dispose, event -> form.close());
        actual = columns.cell(row);
        difference = columns.difference(row);
        entry = Flow.pane(parent, kit, Ink.PAPER);
        entry.setLayoutData(Grid.wide());
        target = kit.label(entry, "", Ink.ACCENT, Role.STRONG);
        gross = weight("gross", GROSS, letter);
        tare = weight("tare", TARE, letter);
        net = weight("net", NET, letter);
        kit.action(entry, "Add to cup", this::add);
        Kit.name(entry.getChildren()[entry.getChildren().length - 1], "Add " + letter + " to the cup");
        weighings = kit.quiet(entry, "");
        takeOut = kit.action(entry, "Take out", this::takeOut);
        takeOut.setToolTipText("Takes the last weighing out again");
        Kit.name(takeOut, "Take out the last weighing of " + letter);
        more = new UseMore(parent, place, use);
        open = kit.action(entry, "More", this::toggle);
        Kit.name(open, "More about " + letter);
        open.setToolTipText("Which material and lot, parts and of what, water in it");
    }

    private void toggle() {
        more.show(!more.shown());
        open.setText(more.shown() ? "Less" : "More");
    }

    private Text weight(String word, FieldDescriptor field, String letter) {
        Composite pair = kit.pane(entry, 3, Spacing.TIGHT);
        kit.text(pair, word);
        Text text = kit.field(pair, field.label() + " of " + letter + ", g", SWT.SINGLE);
        text.setLayoutData(Grid.natural());
        kit.chars(text, 7);
        kit.quiet(pair, "g");
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_RETURN) {
                event.doit = false;
                add();
            }
        });
        return text;
    }

    MaterialUse use() {
        return use;
    }

    boolean takeFocus() {
        return (entry.isVisible() ? gross : weighings).setFocus();
    }

    /** Shows what stands in the step: the line of its card and the grams the use should come to now, or null. */
    void show(CardLine line, Double targetNow) {
        Columns.show(material, UseWords.material(use));
        more.refresh();
        Columns.show(actual, line.actual().isEmpty() ? "" : line.actual() + "  " + line.origin());
        Kit.name(actual, "Weighed of " + UseWords.letter(use) + ": " + (line.actual().isEmpty() ? "nothing yet" : line.actual()));
        Columns.show(difference, line.difference());
        kit.ink(difference, UsesBlock.inkOf(line));
        boolean open = place.writable() && StepWords.state(place.step()) != StepState.SKIPPED || !use.getWeighings().isEmpty();
        shown(entry, open);
        Double weighed = Weighings.actual(use);
        boolean reached = targetNow == null || weighed != null && UsesBlock.same(targetNow, weighed);
        target.setText(reached ? "" : "Target now " + UseWords.grams(targetNow));
        target.setVisible(!reached);
        boolean planned = targetNow != null && use.getPlanned() != null && UsesBlock.same(targetNow, use.getPlanned());
        kit.ink(target, planned ? Ink.QUIET : Ink.ACCENT);
        Kit.name(target, reached ? "" : "Target of " + UseWords.letter(use) + " now " + UseWords.grams(targetNow));
        List<Weighing> all = use.getWeighings();
        Columns.show(weighings, all.isEmpty() ? "" : all.stream().map(UseWords::weighing).collect(Collectors.joining("; ")));
        weighings.setVisible(!all.isEmpty());
        Kit.name(weighings, all.isEmpty() ? "" : "On the balance: " + weighings.getText());
        takeOut.setVisible(!all.isEmpty() && place.writable());
        entry.layout(true, true);
    }

    private static void shown(Composite pane, boolean shown) {
        ((GridData) pane.getLayoutData()).exclude = !shown;
        pane.setVisible(shown);
    }

    private void add() {
        Double[] read = new Double[3];
        Text[] fields = {gross, tare, net};
        FieldDescriptor[] descriptors = {GROSS, TARE, NET};
        for (int i = 0; i < fields.length; i++) {
            if (descriptors[i].read(fields[i].getText()) instanceof FieldInput.Rejected no) {
                place.doing().say(no.sentence());
                fields[i].setFocus();
                return;
            }
            read[i] = (Double) ((FieldInput.Read) descriptors[i].read(fields[i].getText())).value();
        }
        if (weigher.weigh(use, read[0], read[1], read[2])) {
            for (Text field : fields) {
                field.setText("");
            }
        }
    }

    private void takeOut() {
        place.doing().edit("take out a weighing of " + UseWords.letter(use), edit -> edit.remove(use.getWeighings().getLast()));
    }
}
