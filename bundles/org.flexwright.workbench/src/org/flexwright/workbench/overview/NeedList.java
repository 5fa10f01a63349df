package org.flexwright.workbench.overview;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FormModel;
import org.flexwright.model.Importance;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Need;
import org.flexwright.model.Project;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FieldBinding;
import org.flexwright.workbench.kit.FieldControl;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;

/** The needs, one a line: words, how much each matters, and a way to take it out. */
final class NeedList {

    private static final int WIDEST = 104;

    private final PageContext context;
    private final Kit kit;
    private final Project project;
    private final Composite pane;
    private final Composite lines;
    private final List<Need> shown = new ArrayList<>();
    private final List<FieldControl> words = new ArrayList<>();

    NeedList(Composite parent, PageContext context) {
        this.context = context;
        this.kit = context.kit();
        this.project = (Project) context.subject();
        pane = kit.pane(parent, 1, Spacing.FIELDS);
        pane.setLayoutData(Grid.wide());
        kit.heading(pane, "What the part must do");
        lines = kit.pane(pane, 1, Spacing.FIELDS);
        lines.setLayoutData(Grid.wide());
        kit.cap(lines, WIDEST);
        Button add = kit.action(pane, "Add a need", this::add);
        add.setLayoutData(Grid.natural());
        add.setEnabled(!context.session().readOnly());
        show();
    }

    /** Shows the present needs; keeps the lines, and the focus in them, when the list is the same. */
    void show() {
        if (shown.equals(project.getNeeds())) {
            return;
        }
        for (Control old : lines.getChildren()) {
            old.dispose();
        }
        words.clear();
        shown.clear();
        shown.addAll(project.getNeeds());
        if (shown.isEmpty()) {
            Prose.quiet(lines, kit, "In the user's words, one thing a line: \"closes without a hard edge\", \"springs back in a second\".")
                    .setLayoutData(Grid.wide());
        }
        shown.forEach(this::line);
        ScrollPane.reflowAround(lines);
    }

    private void line(Need need) {
        List<FieldDescriptor> fields = FieldDescriptors.ofClass(ModelPackage.Literals.NEED);
        FormModel form = FormModel.bound(context.session(), need, fields);
        Composite line = kit.pane(lines, 3, Spacing.FIELDS);
        line.setLayoutData(Grid.wide());
        line.addDisposeListener(event -> form.close());
        boolean readOnly = context.session().readOnly();
        String number = "Need " + (shown.indexOf(need) + 1);
        FieldControl text = new FieldControl(line, kit, bare(Bindings.of(form, form.field("text"), readOnly)));
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Kit.name(text.input(), number);
        FieldControl importance = new FieldControl(line, kit, bare(Bindings.of(form, form.field("importance"), readOnly)));
        Kit.name(importance.input(), number + ", how much it matters");
        Button remove = kit.action(line, "Remove", () -> context.session().execute("remove a need", edit -> edit.remove(need)));
        Kit.name(remove, "Remove " + number);
        remove.setEnabled(!readOnly);
        words.add(text);
    }

    /** The same field without words beside it, of one line: the list's heading says what it is. */
    private static FieldBinding bare(FieldBinding field) {
        return new Unlabelled(field);
    }

    /** Adds a need and puts the focus into it. */
    void add() {
        Need need = ModelFactory.eINSTANCE.createNeed();
        need.setImportance(Importance.MUST);
        context.session().execute("add a need", edit -> edit.add(project, ModelPackage.Literals.PROJECT__NEEDS, need));
        show();
        reveal(need);
    }

    /** Puts the focus into a need. */
    void reveal(Need need) {
        int at = shown.indexOf(need);
        if (at >= 0) {
            words.get(at).setFocus();
        }
    }

    /** A field whose label stands elsewhere. */
    private record Unlabelled(FieldBinding of) implements FieldBinding {
        @Override
        public FieldDescriptor field() {
            FieldDescriptor own = of.field();
            return own.type() == FieldType.CHOICE ? FieldDescriptor.choice(own.name(), "", own.choices()).withOptional(false)
                    : FieldDescriptor.of(own.name() + "Line", "", own.type());
        }

        @Override
        public String text() {
            return of.text();
        }

        @Override
        public void type(String text) {
            of.type(text);
        }

        @Override
        public String understood() {
            return of.understood();
        }

        @Override
        public String problem() {
            return of.problem();
        }

        @Override
        public boolean readOnly() {
            return of.readOnly();
        }

        @Override
        public void addListener(Runnable listener) {
            of.addListener(listener);
        }

        @Override
        public void removeListener(Runnable listener) {
            of.removeListener(listener);
        }
    }
}
