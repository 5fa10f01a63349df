package org.flexwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.flexwright.model.Trial;
import org.flexwright.workbench.commands.Commands;
import org.flexwright.workbench.settings.Settings;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The dialogs: what they do, and how they look at 100 and 200 % text. */
class DialogsTest {

    private static final String PREFERENCES = "Preferences";

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Ui.window().getService(Settings.class).setTextPercent(100);
        Ui.kit().type().setPercent(100);
        Projects.none();
    }

    private static void look(String title, Runnable open, String name) {
        List<String> complaints = new ArrayList<>();
        for (int percent : List.of(100, 200)) {
            Ui.window().getService(Settings.class).setTextPercent(percent);
            Ui.kit().type().setPercent(percent);
            Ui.inDialog(title, open, dialog -> {
                Ui.rest();
                Ui.picture(dialog, name + "-" + percent);
                Walker.look(dialog).forEach(complaint -> complaints.add(percent + " " + complaint));
            });
        }
        assertEquals("", String.join("\n", complaints));
    }

    @Test
    void theDialogsAreNamedWholeAndReadable() {
        Projects.example(folder);
        look("New project", () -> Ui.command(IWorkbenchCommandConstants.FILE_NEW), "dialog-new-project");
        look("New trial", () -> Ui.command(Commands.NEW_TRIAL), "dialog-new-trial");
        look(PREFERENCES, () -> Ui.command("org.flexwright.workbench.preferences"), "dialog-preferences");
        look("About Flexwright", () -> Ui.command("org.flexwright.workbench.about"), "dialog-about");
    }

    @Test
    void aTrialIsPlannedOnARoute() {
        Projects.small(folder);
        Ui.inDialog("New trial", () -> Ui.command(Commands.NEW_TRIAL), dialog -> {
            assertFalse(Ui.find(dialog, Button.class, "Finish").isEnabled(), "a trial needs a title");
            Combo start = Ui.find(dialog, Combo.class, "Start from");
            assertTrue(start.getItemCount() >= 3, "casting, resin printing and filament printing are installed here");
            start.select(0);
            Ui.type(Ui.find(dialog, Text.class, "Title"), "first try");
            Ui.type(Ui.find(dialog, Text.class, "What is changed, what is expected"), "to see whether it fills");
            Ui.click(dialog, "Finish");
        });
        Trial trial = Ui.projects().session().orElseThrow().project().getTrials().get(0);
        assertEquals("T01", trial.getCode());
        assertEquals("first try", trial.getTitle());
        assertEquals("to see whether it fills", trial.getIdea());
        assertFalse(trial.getSteps().isEmpty());
        assertTrue(Ui.window().getActivePage().getActiveEditor().getTitle().contains("T01"));
    }

    @Test
    void aNewTrialNeedsAProject() {
        Projects.none();
        try {
            Ui.command(Commands.NEW_TRIAL);
        } catch (AssertionError refused) {
            assertTrue(refused.getMessage().contains("not enabled"), refused.getMessage());
            return;
        }
        throw new AssertionError("A trial was offered without a project.");
    }

    @Test
    void theSizeOfTextIsSetAndGoesBackOnCancel() {
        Settings settings = Ui.window().getService(Settings.class);
        settings.setTextPercent(100);
        preferences(dialog -> {
            size(dialog, 150);
            assertEquals(150, Ui.kit().type().percent(), "it shows at once");
            Ui.picture(dialog, "dialog-preferences-150");
            Ui.click(dialog, "Cancel");
        });
        assertEquals(100, Ui.kit().type().percent());
        assertEquals(100, settings.textPercent());
        preferences(dialog -> {
            size(dialog, 130);
            Ui.click(dialog, "OK");
        });
        assertEquals(130, settings.textPercent());
        settings.setTextPercent(100);
    }

    private static void preferences(Consumer<Shell> work) {
        Ui.inDialog(PREFERENCES, () -> Ui.command("org.flexwright.workbench.preferences"), work);
    }

    private static void size(Shell dialog, int percent) {
        Scale scale = Ui.find(dialog, Scale.class, "Size of text, per cent");
        scale.setSelection(percent / 10);
        scale.notifyListeners(SWT.Selection, new Event());
        Ui.rest();
    }
}
