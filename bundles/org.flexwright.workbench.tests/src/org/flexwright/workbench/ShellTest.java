package org.flexwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.kit.WordRow;
import org.flexwright.workbench.project.Trouble;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShellTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    private static Shell shell() {
        return Ui.window().getShell();
    }

    @Test
    void theWindowShowsTheStartPageWithoutAProject() {
        Projects.none();
        Ui.await("the start page", () -> Ui.window().getActivePage().getActiveEditor() != null || startAgain());
        assertEquals("Flexwright", shell().getText());
        assertTrue(Ui.shows(shell(), "New project…"));
        assertTrue(Ui.shows(shell(), "Open the example"));
        assertTrue(Ui.shows(shell(), "No project is open"));
        Ui.picture(shell(), "start");
    }

    private static boolean startAgain() {
        Ui.command("org.flexwright.workbench.start");
        return true;
    }

    @Test
    void eachStageHasItsPerspectiveWithTheSameTreeAndFindings() {
        Projects.small(folder);
        WordRow row = Ui.find(shell(), WordRow.class, "Stages");
        for (Stage stage : Stage.values()) {
            Ui.mouse(Ui.find(row, Control.class, stage.word()));
            assertEquals(stage.perspective(), Ui.window().getActivePage().getPerspective().getId());
            assertEquals(stage.name(), row.selected());
            assertNotNull(Ui.window().getActivePage().findView(StagePerspective.PROJECT), stage.word());
            assertNotNull(Ui.window().getActivePage().findView(StagePerspective.FINDINGS), stage.word());
        }
        Stages.go(Ui.window(), Stage.PLAN);
    }

    @Test
    void aProjectIsMadeByTheWizard() {
        Ui.inDialog("New project", () -> Ui.command(IWorkbenchCommandConstants.FILE_NEW), dialog -> {
            Ui.type(Ui.find(dialog, Text.class, "Kept in"), folder.toString());
            assertFalse(Ui.find(dialog, Button.class, "Finish").isEnabled(), "a project needs a title");
            Ui.type(Ui.find(dialog, Text.class, "Title"), "Grip cap, small");
            Ui.type(Ui.find(dialog, Text.class, "The job, in your words"), "A cap that does not slip.");
            Ui.type(Ui.find(dialog, Text.class, "What it must do, one need a line"), "does not slip\nsurvives washing\n");
            Ui.picture(dialog, "new-project");
            Ui.click(dialog, "Finish");
        });
        ProjectSession session = Ui.projects().session().orElseThrow();
        assertEquals("Grip cap, small", session.project().getTitle());
        assertEquals(2, session.project().getNeeds().size());
        assertEquals("survives washing", session.project().getNeeds().get(1).getText());
        assertFalse(session.dirty());
        assertTrue(Files.isRegularFile(folder.resolve("grip-cap-small.flexwright").resolve("project.xmi")));
        assertEquals("Grip cap, small – Flexwright", shell().getText());
    }

    @Test
    void theWizardRefusesAPlaceThatIsTaken() {
        Projects.small(folder);
        Ui.inDialog("New project", () -> Ui.command(IWorkbenchCommandConstants.FILE_NEW), dialog -> {
            Ui.type(Ui.find(dialog, Text.class, "Kept in"), folder.toString());
            Ui.type(Ui.find(dialog, Text.class, "Title"), "Test");
            assertFalse(Ui.find(dialog, Button.class, "Finish").isEnabled());
        });
        assertEquals("Bumper for a test", Ui.projects().session().orElseThrow().project().getTitle());
    }

    @Test
    void aNeedIsEditedUndoneRedoneAndSaved() {
        Projects.small(folder);
        ProjectSession session = Ui.projects().session().orElseThrow();
        Text need = Ui.find(shell(), Text.class, "Need 1");
        Ui.type(need, "gives way softly and comes back");
        assertEquals("gives way softly and comes back", session.project().getNeeds().get(0).getText());
        assertTrue(shell().getText().startsWith("• "), shell().getText());
        assertTrue(Ui.window().getActivePage().getActiveEditor().isDirty());
        assertTrue(Ui.shows(shell(), "not saved yet"));

        Ui.command(IWorkbenchCommandConstants.EDIT_UNDO);
        assertEquals("gives way softly", session.project().getNeeds().get(0).getText());
        assertEquals("gives way softly", need.getText());
        Ui.command(IWorkbenchCommandConstants.EDIT_REDO);
        assertEquals("gives way softly and comes back", need.getText());

        Ui.command(IWorkbenchCommandConstants.FILE_SAVE);
        Ui.await("the project is saved", () -> !session.dirty());
        assertFalse(shell().getText().startsWith("•"), shell().getText());
        assertFalse(Ui.window().getActivePage().getActiveEditor().isDirty());
    }

    @Test
    void closingWithUnsavedEditsAsksNothingAndLosesNothing() {
        Projects.small(folder);
        Ui.type(Ui.find(shell(), Text.class, "Need 1"), "does not crack in the cold");
        Path at = Ui.projects().session().orElseThrow().folder();
        Ui.command("org.flexwright.workbench.close");
        assertTrue(Ui.projects().session().isEmpty());
        Ui.projects().open(at);
        assertEquals("does not crack in the cold", Ui.projects().session().orElseThrow().project().getNeeds().get(0).getText());
        assertTrue(Ui.projects().session().orElseThrow().dirty());
    }

    @Test
    void f1ExplainsTheFieldInFocus() {
        Projects.small(folder);
        shell().forceActive();
        Text title = Ui.find(shell(), Text.class, "Title");
        title.forceFocus();
        Ui.pump();
        Ui.command("org.flexwright.workbench.explain");
        Shell words = Arrays.stream(shell().getShells()).filter(s -> s.getText().equals("Title")).findFirst().orElseThrow();
        assertTrue(Ui.shows(words, "What is being made."));
        title.notifyListeners(SWT.KeyDown, new Event());
        assertTrue(words.isDisposed(), "the next key takes it away");
    }

    @Test
    void aFolderThatIsNoProjectIsRefusedWithOneSentence() {
        Projects.small(folder);
        Ui.inDialog("Not opened", () -> Trouble.guard(shell(), "Not opened",
                () -> Ui.projects().open(folder.resolve("nothing.flexwright"))), dialog -> {
                    assertTrue(Ui.shows(dialog, "nothing.flexwright"));
                    assertFalse(Ui.shows(dialog, "Exception"));
                });
        assertTrue(Ui.projects().session().isPresent(), "the open project stays");
    }

    @Test
    void theTreeShowsTheProjectAndOpensWhatIsAddedToIt() {
        Projects.small(folder);
        Tree tree = Ui.find(shell(), Tree.class, "Project");
        assertEquals("Bumper for a test", tree.getItem(0).getText());
        assertEquals("Need  1", tree.getItem(1).getText());
        assertTrue(Arrays.stream(tree.getItems()).anyMatch(item -> item.getText().equals("Trials")), "no section for trials");
        assertEquals("Project", Kit.nameOf(tree));
    }
}
