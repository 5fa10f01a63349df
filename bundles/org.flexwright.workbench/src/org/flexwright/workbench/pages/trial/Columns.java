package org.flexwright.workbench.pages.trial;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.flexwright.core.field.FieldType;
import org.flexwright.workbench.kit.FieldBinding;
import org.flexwright.workbench.kit.FieldControl;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.kit.Type.Role;
import org.flexwright.workbench.pages.common.Unlabelled;

/** Rows whose cells stand in line: label, planned, actual, difference. Where there is little room the label stands above the others. */
final class Columns {

    private static final int LABEL = 24;
    private static final int CELL = 25;
    private static final int DIFFERENCE = 14;
    private static final int FIELD = 7;
    private static final int WORDS = 18;

    private final Kit kit;

    Columns(Kit kit) {
        this.kit = kit;
    }

    /** The headings over the cells. */
    void head(Composite parent) {
        Composite row = row(parent);
        label(row, "", Role.BODY);
        kit.ink(put(row, CELL, "planned"), Ink.QUIET);
        kit.ink(put(row, CELL, "actual"), Ink.QUIET);
        kit.ink(put(row, DIFFERENCE, "difference"), Ink.QUIET);
    }

    /** An empty row. */
    Composite row(Composite parent) {
        Composite row = kit.pane(parent, 4, new Spacing(0, 0, 2, 0));
        row.setLayoutData(Grid.wide());
        row.addListener(SWT.Resize, event -> fold(row));
        return row;
    }

    private void fold(Composite row) {
        Control[] cells = row.getChildren();
        if (cells.length < 4) {
            return;
        }
        boolean narrow = row.getClientArea().width < kit.type().chars(Role.BODY, LABEL + 2 * CELL + DIFFERENCE);
        GridLayout layout = (GridLayout) row.getLayout();
        int columns = narrow ? 3 : 4;
        if (layout.numColumns != columns) {
            layout.numColumns = columns;
            GridData label = (GridData) cells[0].getLayoutData();
            label.horizontalSpan = narrow ? 3 : 1;
            label.exclude = narrow && isEmpty((Composite) cells[0]);
            cells[0].setVisible(!label.exclude);
            ScrollPane.reflowAround(row);
        }
    }

    private static boolean isEmpty(Composite pane) {
        return pane.getChildren().length == 1 && pane.getChildren()[0] instanceof Label words && words.getText().isEmpty();
    }

    /** The label of a row. */
    Label label(Composite row, String words, Role role) {
        Composite pane = label(row); // its width counts in characters of running text, whatever the role of the words
        Label label = kit.label(pane, words, Ink.INK, role);
        label.setLayoutData(Grid.wide());
        return label;
    }

    /** The label of a row, as a pane that takes several lines. */
    Composite label(Composite row) {
        Composite pane = kit.pane(row, 1, Spacing.NONE);
        place(pane, LABEL);
        return pane;
    }

    /** A cell that only shows. */
    Label cell(Composite row) {
        return put(row, CELL, "");
    }

    /** The cell for the difference. */
    Label difference(Composite row) {
        return put(row, DIFFERENCE, "");
    }

    private Label put(Composite row, int chars, String words) {
        Label label = kit.label(row, words, Ink.INK, Role.BODY);
        place(label, chars);
        return label;
    }

    /** A cell with a field; {@code name} is what people hear. */
    FieldControl field(Composite row, FieldBinding binding, String name) {
        FieldControl control = new FieldControl(row, kit, new Unlabelled(binding));
        boolean words = switch (binding.field().type()) {
            case TEXT, CHOICE, LIST, TABLE, FILE -> true;
            default -> false;
        };
        place(control, CELL);
        Kit.name(control.input(), name);
        if (binding.field().type() != FieldType.FLAG && binding.field().type() != FieldType.CHOICE && control.input().getLayoutData() instanceof GridData) {
            kit.chars(control.input(), words ? WORDS : FIELD);
        }
        return control;
    }

    private void place(Control control, int chars) {
        control.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, chars == DIFFERENCE, false));
        kit.chars(control, chars);
    }

    /** Shows words in a label, an ampersand being one. */
    static void show(Label label, String words) {
        String plain = Kit.plain(words);
        if (!plain.equals(label.getText())) {
            label.setText(plain);
        }
    }
}
