package org.flexwright.workbench.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.settings.Settings;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecentTest {

    private static final Instant SAVED = Instant.parse("2026-03-01T10:00:00Z");

    @TempDir
    Path folder;

    private Path project(String xml) throws IOException {
        Path at = Files.createDirectories(folder.resolve("a.flexwright"));
        Files.writeString(at.resolve("project.xmi"), xml);
        Files.setLastModifiedTime(at.resolve("project.xmi"), FileTime.from(SAVED));
        return at;
    }

    @Test
    void theTitleStandsInTheFile() throws IOException {
        Recent recent = Recent.of(project("<model:Project xmlns:model=\"urn:flexwright:model:1\" title=\"Bumper\"/>")).orElseThrow();
        assertEquals("Bumper", recent.title());
        assertEquals(SAVED, recent.touched());
        assertFalse(recent.unsaved());
        assertEquals(Optional.empty(), recent.picture());
    }

    @Test
    void aNewerJournalMeansEditsWait() throws IOException {
        Path at = project("<p/>");
        Path journal = Files.createDirectories(at.resolve("journal")).resolve("edits.jsonl");
        Files.writeString(journal, "{}\n");
        Files.setLastModifiedTime(journal, FileTime.from(SAVED.plusSeconds(60)));
        assertTrue(Recent.of(at).orElseThrow().unsaved());
        assertEquals(SAVED.plusSeconds(60), Recent.of(at).orElseThrow().touched());
        Files.writeString(journal, "");
        assertFalse(Recent.of(at).orElseThrow().unsaved(), "an empty journal holds nothing");
    }

    @Test
    void aDamagedFileKeepsItsFolderName() throws IOException {
        assertEquals("a.flexwright", Recent.of(project("not xml")).orElseThrow().title());
        assertEquals("a.flexwright", Recent.of(project("<!DOCTYPE p [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><p title=\"&x;\"/>")).orElseThrow().title());
    }

    @Test
    void aGoneFolderIsNotOffered() {
        assertEquals(Optional.empty(), Recent.of(folder.resolve("gone.flexwright")));
    }

    @Test
    void theLastOpenedComesFirstAndOnlyOnce() {
        Settings settings = new Settings(InstanceScope.INSTANCE.getNode("test." + UUID.randomUUID()));
        for (int i = 0; i < 12; i++) {
            settings.opened(folder.resolve(i + ".flexwright"));
        }
        settings.opened(folder.resolve("5.flexwright"));
        List<Path> recent = settings.recent();
        assertEquals(8, recent.size());
        assertEquals(folder.resolve("5.flexwright").toAbsolutePath().normalize(), recent.get(0));
        assertEquals(8, recent.stream().distinct().count());
        settings.forget(recent.get(0));
        assertEquals(7, settings.recent().size());
    }

    @Test
    void theStartPageOffersWhatWasOpenedBefore() {
        Projects.example(folder);
        Projects.none();
        StartEditor.show(Ui.window());
        Shell shell = Ui.window().getShell();
        String open = "Open Tactile dome for an accessible hand switch";
        Ui.await("the list", () -> Ui.all(shell, Button.class).stream().anyMatch(b -> Kit.nameOf(b).equals(open)));
        Ui.picture(shell, "start-recent");
        Ui.click(Ui.find(shell, Button.class, open));
        assertEquals("Tactile dome for an accessible hand switch", Ui.projects().session().orElseThrow().project().getTitle());
        Projects.none();
    }
}
