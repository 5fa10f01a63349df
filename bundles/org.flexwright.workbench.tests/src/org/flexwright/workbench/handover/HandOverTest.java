package org.flexwright.workbench.handover;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.IStatus;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.flexwright.report.doc.Document;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Packs and labels are written off the screen's thread, whole or not at all. */
class HandOverTest {
    @TempDir
    Path folder;
    private final List<Path> written = new ArrayList<>();
    private final List<String> failed = new ArrayList<>();

    @AfterEach
    void close() {
        Projects.none();
    }

    private ProjectSession example() {
        Projects.example(folder);
        return Ui.projects().session().orElseThrow();
    }

    private Printing printing(Supplier<Document> document, Path to, String name) {
        return new Printing(Ui.window().getShell().getDisplay(), document, to, name, new Printing.Outcome() {
            @Override
            public void written(List<Path> files) {
                written.addAll(files);
            }

            @Override
            public void failed(String sentence) {
                failed.add(sentence);
            }
        });
    }

    private IStatus done(Printing printing) {
        Ui.await("the files", () -> printing.getState() == Job.NONE && printing.getResult() != null);
        Ui.pump();
        return printing.getResult();
    }

    @Test
    void thePackOfARecipeAndTheLabelsOfItsTrialAreWritten() throws IOException {
        ProjectSession session = example();
        Recipe recipe = session.project().getRecipes().get(0);
        HandOver pack = HandOver.pack(recipe.getPlan().getSteps().get(0), session, Ui.projects().registries());
        assertEquals("R1-v1", pack.name(), "a step of the recipe's plan belongs to the recipe");
        Printing printing = printing(pack.document(), folder.resolve("out"), pack.name());
        printing.schedule();
        assertTrue(done(printing).isOK());
        assertEquals(List.of(folder.resolve("out/r1-v1.html"), folder.resolve("out/r1-v1.pdf")), written);
        assertTrue(Files.readString(written.get(0)).contains("Procedure"));
        assertEquals("%PDF", new String(Files.readAllBytes(written.get(1)), 0, 4, StandardCharsets.ISO_8859_1));
        Trial trial = session.project().getTrials().stream().filter(t -> t.getCode().equals("T08")).findFirst().orElseThrow();
        HandOver labels = HandOver.labels(trial.getParts().get(0), session);
        assertEquals("labels-T08", labels.name());
        Printing sheet = printing(labels.document(), folder.resolve("out"), labels.name());
        sheet.schedule();
        assertTrue(done(sheet).isOK());
        assertEquals(4, written.size());
        assertNull(HandOver.labels(session.project(), session));
        assertNull(HandOver.pack(session.project(), session, Ui.projects().registries()));
    }

    @Test
    void whatIsCancelledOrCannotBeWrittenLeavesNothing() throws IOException {
        ProjectSession session = example();
        HandOver pack = HandOver.pack(session.project().getTrials().get(0), session, Ui.projects().registries());
        Printing[] running = new Printing[1];
        running[0] = printing(() -> {
            running[0].cancel();
            return pack.document().get();
        }, folder.resolve("out"), "stopped");
        running[0].schedule();
        assertEquals(IStatus.CANCEL, done(running[0]).getSeverity());
        assertFalse(Files.exists(folder.resolve("out")));
        Path taken = Files.writeString(folder.resolve("taken"), "a file");
        Printing nowhere = printing(pack.document(), taken, "nowhere");
        nowhere.schedule();
        done(nowhere);
        assertEquals(1, failed.size(), failed.toString());
        assertTrue(failed.get(0).startsWith("Nothing was written to "), failed.get(0));
        try (Stream<Path> left = Files.list(folder)) {
            assertTrue(left.noneMatch(p -> p.toString().endsWith(".part") || p.toString().endsWith(".pdf")));
        }
        assertEquals(List.of(), written);
    }
}
