package org.flexwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.Severity;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.WordRow;
import org.flexwright.workbench.pages.SubjectEditor;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The findings of the example in the window. */
class FindingsTest {

    @TempDir
    Path folder;

    private Shell shell;

    @BeforeEach
    void open() {
        Projects.example(folder);
        shell = Ui.window().getShell();
    }

    @AfterEach
    void close() {
        Projects.none();
    }

    private Table table() {
        return Ui.find(shell, Table.class, "Findings");
    }

    private static long count(Severity severity) {
        return Ui.projects().findings().stream().filter(f -> f.severity() == severity).count();
    }

    @Test
    void allAreListedTheWorstFirst() {
        Ui.await("the table is filled", () -> table().getItemCount() == Ui.projects().findings().size());
        assertTrue(count(Severity.STOP) > 0 && count(Severity.NOTE) > 0, "the example has stops and notes");
        assertEquals("■ stop", table().getItem(0).getText(0));
        assertEquals(Ui.projects().findings().get(0).message().text(), table().getItem(0).getText(2));
        String remedy = Ui.projects().findings().get(0).remedy().text();
        Ui.picture(shell, "findings");
        assertTrue(Ui.shows(shell, remedy), "what would help is shown beside: " + remedy);
    }

    @Test
    void levelsAndWordsFilter() {
        WordRow levels = Ui.find(shell, WordRow.class, "Levels");
        Ui.mouse(Ui.find(levels, Control.class, "a level", c -> Kit.nameOf(c).contains("caution")));
        assertEquals(count(Severity.CAUTION), table().getItemCount());
        Ui.mouse(Ui.find(levels, Control.class, "a level", c -> Kit.nameOf(c).startsWith("All")));
        Finding wanted = Ui.projects().findings().get(0);
        Ui.type(Ui.find(shell, Text.class, "Filter the findings"), wanted.message().text());
        assertEquals(1, table().getItemCount());
        Ui.type(Ui.find(shell, Text.class, "Filter the findings"), "no finding has these words");
        assertEquals(0, table().getItemCount());
        assertTrue(Ui.shows(shell, "No finding is of this level"));
    }

    @Test
    void aDoubleClickGoesToThePlace() {
        Table table = table();
        table.select(0);
        Event event = new Event();
        event.item = table.getItem(0);
        table.notifyListeners(SWT.Selection, event);
        table.notifyListeners(SWT.DefaultSelection, event);
        Ui.pump();
        SubjectEditor editor = (SubjectEditor) Ui.window().getActivePage().getActiveEditor();
        EObject about = Ui.projects().find(Ui.projects().findings().get(0).subject()).orElseThrow();
        boolean within = false;
        for (EObject at = about; at != null; at = at.eContainer()) {
            within |= at == editor.subject();
        }
        assertTrue(within, "the editor is about " + editor.getTitle());
    }

    @Test
    void theyFollowAnEdit() {
        int before = Ui.projects().findings().size();
        var session = Ui.projects().session().orElseThrow();
        EObject about = Ui.projects().find(Ui.projects().findings().get(0).subject()).orElseThrow();
        EObject trial = about;
        while (trial.eContainer() != session.project()) {
            trial = trial.eContainer();
        }
        EObject removed = trial;
        session.execute("remove", edit -> edit.remove(removed));
        Ui.await("the findings of a removed trial go", () -> Ui.projects().findings().size() < before);
        session.undo();
        Ui.await("and come back", () -> Ui.projects().findings().size() == before);
    }
}
