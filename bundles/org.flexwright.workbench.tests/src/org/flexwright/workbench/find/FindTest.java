package org.flexwright.workbench.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.flexwright.core.naming.Names;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.settings.Settings;
import org.flexwright.workbench.settings.Themes;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The search as a maker uses it: types, sees what was understood, opens with the keyboard. */
class FindTest {
    @TempDir
    Path folder;

    private Shell shell;
    private Point size;

    @BeforeEach
    void open() {
        Projects.example(folder);
        shell = Ui.window().getShell();
        size = shell.getSize();
        Ui.command("org.flexwright.workbench.find.show");
    }

    @AfterEach
    void close() {
        theme(Settings.Theme.LIGHT);
        shell.setSize(size);
        Projects.none();
    }

    private Text field() {
        return Ui.find(shell, Text.class, "Find");
    }

    private Table table() {
        return Ui.find(shell, Table.class, "Results");
    }

    private List<String> names() {
        return Arrays.stream(table().getItems()).map(TableItem::getText).map(String::strip).toList();
    }

    private boolean says(String words) {
        return Ui.all(shell, Prose.class).stream().anyMatch(p -> p.words().contains(words));
    }

    private void look(String words, String awaited) {
        Ui.type(field(), words);
        Ui.await("\"" + awaited + "\" is said", () -> says(awaited) && !says("Still reading"));
    }

    private static void key(org.eclipse.swt.widgets.Control control, int code) {
        Event event = new Event();
        event.keyCode = code;
        event.doit = true;
        control.notifyListeners(SWT.KeyDown, event);
        Ui.pump();
    }

    private static void theme(Settings.Theme theme) {
        Themes.apply(PlatformUI.getWorkbench(), theme);
        boolean dark = theme == Settings.Theme.DARK;
        Ui.await("the theme", () -> Ui.kit().palette().dark() == dark);
    }

    @Test
    void typedFoundAndOpenedByKeyboard() {
        look("trials snapped 45-50 A", "Looked for: only trials · Snap ratio above 0 · 45 to 50 Shore A");
        assertTrue(names().get(0).startsWith("Trials  "), names().toString());
        assertTrue(names().get(1).startsWith("T08"), names().toString());
        assertTrue(table().getItem(1).getText(1).contains("Hardness, Shore A: 49 Shore A, median  (B1)"), table().getItem(1).getText(1));
        key(field(), SWT.ARROW_DOWN);
        assertEquals(1, table().getSelectionIndex(), "the heading is passed over");
        Event enter = new Event();
        enter.item = table().getItem(1);
        table().notifyListeners(SWT.DefaultSelection, enter);
        Ui.pump();
        SubjectEditor editor = (SubjectEditor) Ui.window().getActivePage().getActiveEditor();
        assertEquals("T08", Names.tab(editor.subject()));
        Ui.command("org.flexwright.workbench.find.show");
        Ui.type(field(), "");
        assertTrue(names().contains("trials snapped 45-50 A"), "asked before: " + names());
        assertTrue(names().stream().anyMatch(n -> n.startsWith("Trial") && n.contains("T08")), "opened before: " + names());
        Ui.type(field(), "trials snapped 45-50 A");
        Ui.await("found", () -> names().stream().findFirst().filter(first -> first.startsWith("Trials  ")).isPresent());
        key(field(), SWT.CR);
        Ui.await("Enter in the field opens the first", () -> Ui.window().getActivePage().getActiveEditor() instanceof SubjectEditor opened
                && "T08".equals(Names.tab(opened.subject())));
    }

    @Test
    void nothingFoundSaysWhatWasUnderstood() {
        look("bubles with 3 N", "Nothing in the project has all of that.");
        assertTrue(says("did you mean bubbles?"));
        assertTrue(says("\"with\" only joins words"));
        assertEquals(1, table().getItemCount(), "only what may help");
        Ui.picture(shell, "find-none");
    }

    @Test
    void aSearchIsKeptAndTakenAwayAgain() {
        Ui.type(field(), "");
        assertTrue(names().contains("Snaps, 40 to 50 A"), names().toString());
        look("notes", "with a note");
        Ui.click(shell, "Save this search");
        assertFalse(Ui.find(shell, Button.class, "Save this search").isEnabled());
        key(field(), SWT.ESC);
        Ui.await("it is listed", () -> names().contains("notes"));
        table().setSelection(names().indexOf("notes"));
        key(table(), SWT.DEL);
        assertFalse(Ui.projects().session().orElseThrow().project().getSearches().stream().anyMatch(s -> s.getName().equals("notes")));
        Ui.projects().session().orElseThrow().undo();
        Ui.await("undo brings it back", () -> names().contains("notes"));
    }

    @Test
    void resultsFollowAnEdit() {
        look("dustfree", "Nothing in the project has all of that.");
        var session = Ui.projects().session().orElseThrow();
        session.execute("note", edit -> edit.set(session.project().getTrials().get(0), org.flexwright.model.ModelPackage.Literals.ENTRY__NOTE, "dustfree box"));
        Ui.await("found after the edit", () -> names().stream().anyMatch(n -> n.startsWith("T01")));
        session.undo();
        Ui.await("gone after undo", () -> says("Nothing in the project has all of that."));
    }

    @Test
    void howItLooks() {
        for (Settings.Theme theme : List.of(Settings.Theme.LIGHT, Settings.Theme.DARK)) {
            theme(theme);
            for (Point wide : List.of(new Point(1280, 800), new Point(1920, 1080))) {
                shell.setSize(wide);
                String name = "find-" + theme.name().toLowerCase(java.util.Locale.ROOT) + "-" + wide.x;
                Ui.type(field(), "");
                Ui.picture(shell, name + "-start");
                look("snapped 40-50 A", "Looked for");
                Ui.picture(shell, name);
                assertTrue(Kit.nameOf(table()).length() > 0);
            }
        }
    }
}
