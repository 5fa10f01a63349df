package org.flexwright.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Project;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BigProjectTest {

    private static final Pattern IDS = Pattern.compile("_[A-Za-z0-9_-]{22}");

    @TempDir
    Path folder;

    @Test
    void holdsWhatTheFiguresSay() throws Exception {
        BigProject made = new BigProject(Components.registries());
        made.make(folder.resolve("a.flexwright"), 120);
        try (ProjectSession session = made.store().openReadOnly(folder.resolve("a.flexwright"))) {
            Project project = session.project();
            assertEquals(120, project.getTrials().size());
            assertEquals(120L * BigProject.READINGS_A_TRIAL, project.getTrials().stream().flatMap(t -> t.getParts().stream())
                    .flatMap(p -> p.getMeasurements().stream()).mapToLong(m -> m.getReadings().size()).sum());
            project.getTrials().getFirst().getSteps().stream().filter(s -> !s.getKind().equals("testing.read"))
                    .forEach(s -> assertNotNull(s.getDetails(), s.getKind()));
        }
    }

    @Test
    void isTheSameEachTimeButForIds() throws Exception {
        new BigProject(Components.registries()).make(folder.resolve("a.flexwright"), 3);
        new BigProject(Components.registries()).make(folder.resolve("b.flexwright"), 3);
        assertEquals(withoutIds("a"), withoutIds("b"));
    }

    private String withoutIds(String name) throws Exception {
        return IDS.matcher(Files.readString(folder.resolve(name + ".flexwright/project.xmi"))).replaceAll("id");
    }
}
