package org.flexwright.workbench.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.field.Choice;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FormModel;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A form of one field of each kind in a shell of its own. */
class FieldControlTest {

    private Shell shell;
    private FormModel form;
    private FormPane pane;

    @BeforeEach
    void open() {
        form = FormModel.scratch(List.of(
                FieldDescriptor.quantity("wall", "Wall", QuantityKind.LENGTH, "mm").withBounds(0, 50, true).withHelp("Thinnest place."),
                FieldDescriptor.of("count", "Parts", FieldType.INTEGER),
                FieldDescriptor.choice("way", "Way", List.of(new Choice("cast", "cast in a mould", "cast"), new Choice("print", "printed", "print"))),
                FieldDescriptor.of("dried", "Dried before", FieldType.FLAG),
                FieldDescriptor.of("note", "Note", FieldType.TEXT)));
        shell = new Shell(Display.getCurrent(), SWT.SHELL_TRIM);
        shell.setLayout(new FillLayout());
        ScrollPane scroll = new ScrollPane(shell, Ui.kit(), 1, Spacing.PAGE);
        pane = new FormPane(scroll.body(), Ui.kit(), Bindings.of(form, false));
        pane.setLayoutData(Grid.wide());
        shell.setSize(700, 460);
        shell.open();
        Ui.rest();
    }

    @AfterEach
    void close() {
        shell.dispose();
        Ui.pump();
    }

    private Text wall() {
        return (Text) pane.control("wall").orElseThrow().input();
    }

    @Test
    void everyFieldIsNamedAndWhole() {
        Ui.picture(shell, "form");
        assertEquals(List.of(), Walker.look(shell));
        assertEquals("Wall, mm", Kit.nameOf(wall()));
        assertTrue(Kit.descriptionOf(wall()).contains("Thinnest place."), Kit.descriptionOf(wall()));
    }

    @Test
    void anotherUnitIsReadBack() {
        Ui.type(wall(), "3/8 in");
        assertEquals(9.525, (Double) form.value("wall"), 1e-9);
        assertTrue(Ui.shows(shell, "= 9.525 mm"), "what was understood stands beside");
        Ui.type(wall(), "2,5");
        assertEquals(2.5, (Double) form.value("wall"), 1e-9);
    }

    @Test
    void aProblemIsOneSentenceBelowWhenTheFieldIsLeft() {
        Ui.type(wall(), "80");
        wall().notifyListeners(SWT.FocusOut, new Event());
        Ui.pump();
        String problem = form.problem("wall");
        assertFalse(problem.isEmpty());
        assertTrue(Ui.shows(shell, problem), problem);
        assertEquals(problem, Kit.descriptionOf(wall()), "it is heard, too");
        Ui.type(wall(), "4");
        assertFalse(Ui.shows(shell, problem), "and goes at once");
    }

    @Test
    void enterMovesOnAndEscapeBringsBack() {
        Ui.type(wall(), "4");
        wall().notifyListeners(SWT.FocusIn, new Event());
        Ui.type(wall(), "5");
        Event escape = new Event();
        escape.detail = SWT.TRAVERSE_ESCAPE;
        escape.doit = true;
        wall().notifyListeners(SWT.Traverse, escape);
        assertEquals(4.0, (Double) form.value("wall"), 0);
        assertFalse(escape.doit, "the form stays open");

        Event enter = new Event();
        enter.detail = SWT.TRAVERSE_RETURN;
        enter.doit = true;
        wall().notifyListeners(SWT.Traverse, enter);
        assertFalse(enter.doit, "Enter presses no default button");
    }

    @Test
    void choicesAndFlagsGoIntoTheModelAndBack() {
        Combo way = (Combo) pane.control("way").orElseThrow().input();
        Ui.choose(way, "printed");
        assertEquals("print", form.value("way"));
        Button dried = (Button) pane.control("dried").orElseThrow().input();
        dried.setSelection(true);
        dried.notifyListeners(SWT.Selection, new Event());
        assertEquals(Boolean.TRUE, form.value("dried"));
        form.type("way", "cast");
        form.type("dried", "no");
        Ui.pump();
        assertEquals("cast in a mould", way.getText());
        assertFalse(dried.getSelection());
    }

    @Test
    void labelsStandAboveWhereTheFormIsNarrow() {
        Control label = pane.control("wall").orElseThrow().getChildren()[0];
        assertTrue(label.getBounds().x + label.getBounds().width <= wall().getBounds().x, "left of the field");
        shell.setSize(330, 600);
        Ui.rest();
        assertTrue(label.getBounds().y + label.getBounds().height <= wall().getBounds().y, "above the field");
        assertEquals(Map.of(), form.problems());
    }
}
