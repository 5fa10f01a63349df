package org.flexwright.workbench.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.flexwright.core.exchange.Backup;
import org.flexwright.core.Watch;
import org.flexwright.model.Trial;
import org.flexwright.workbench.exchange.Exchange;
import org.flexwright.workbench.exchange.ImportDialog;
import org.flexwright.workbench.testkit.Pages;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.flexwright.workbench.testkit.Walker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables in the window: seen first, taken in as one step, undone; export and backup beside the work. */
class ImportTablesTest {
    private static final String TITLE = "Import tables";

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    private Path table(String... lines) throws IOException {
        return Files.writeString(folder.resolve("trials.csv"), String.join("\r\n", lines) + "\r\n");
    }

    private static void dialog(Path place, java.util.function.Consumer<Shell> work) {
        Ui.inDialog(TITLE, () -> new ImportDialog(Ui.window().getShell(), Ui.kit(), Ui.projects(), place).open(), shell -> {
            Ui.await("the tables are read", () -> !Ui.shows(shell, "Reading…"));
            work.accept(shell);
        });
    }

    @Test
    void whatWouldChangeIsSeenTakenInAndUndone() throws IOException {
        Projects.example(folder);
        Trial trial = Pages.project().getTrials().get(0);
        String before = trial.getTitle();
        int trials = Pages.project().getTrials().size();
        Path place = table("id;owner;code;title", trial.getId() + ";/;" + trial.getCode() + ";Another title", ";/;T99;New from a table");
        List<String> complaints = new ArrayList<>();
        dialog(place, shell -> {
            Ui.picture(shell, "dialog-import");
            complaints.addAll(Walker.look(shell));
            Table list = Ui.all(shell, Table.class).get(0);
            assertEquals(List.of("changed", "added", "note"), java.util.Arrays.stream(list.getItems()).map(i -> i.getText(0)).toList());
            assertEquals(before, list.getItem(0).getText(2));
            assertEquals(before, trial.getTitle(), "Nothing changes before it is taken in.");
            Ui.click(Ui.find(shell, Button.class, "Take in"));
        });
        assertEquals("", String.join("\n", complaints));
        assertEquals("Another title", trial.getTitle());
        assertEquals(trials + 1, Pages.project().getTrials().size());
        assertEquals(TITLE, Pages.session().undoName());
        Pages.session().undo();
        assertEquals(before, trial.getTitle());
        assertEquals(trials, Pages.project().getTrials().size());
    }

    @Test
    void aBadTableCannotBeTakenIn() throws IOException {
        Projects.example(folder);
        Path place = table("id,cost", Pages.project().getTrials().get(0).getId() + ",dear");
        dialog(place, shell -> {
            Ui.picture(shell, "dialog-import-refused");
            assertFalse(Ui.find(shell, Button.class, "Take in").isEnabled());
            assertTrue(Ui.all(shell, Table.class).get(0).getItem(0).getText(1).contains("dear is no number"));
            Ui.click(Ui.find(shell, Button.class, "Cancel"));
        });
        assertFalse(Pages.session().dirty());
    }

    @Test
    void aBackupIsMadeBesideTheWork() throws IOException {
        Projects.small(folder);
        Path archive = folder.resolve("backup.zip");
        Ui.inDialog("Backed up", () -> {
            Job job = new Exchange(Ui.window().getShell(), Ui.projects()).backup(archive);
            Ui.await("the backup is made", () -> job.getState() == Job.NONE);
            Ui.rest();
        }, shell -> Ui.click(Ui.find(shell, Button.class, "OK")));
        try (Backup b = Backup.open(archive)) {
            b.check(Watch.NONE);
        }
    }
}
