package org.flexwright.core.session;

import static org.flexwright.core.session.SessionPropertyTest.assertSameText;
import static org.flexwright.core.session.SessionPropertyTest.journalFile;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.flexwright.model.Censoring;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of format 1, written once and never again: every later program must read them, and write them back the same while it writes format 1. */
class FormatOneTest {
    @TempDir
    Path temp;

    private final Demo demo = new Demo();
    private Path folder;

    @BeforeEach
    void unpack() throws IOException {
        folder = Demo.folder(temp);
        Files.createDirectories(folder.resolve("journal"));
        Files.write(folder.resolve("project.xmi"), sample("format-1.xmi"));
    }

    private static byte[] sample(String name) throws IOException {
        try (InputStream in = FormatOneTest.class.getResourceAsStream("samples/" + name)) {
            return in.readAllBytes();
        }
    }

    @Test
    void opensWithAllItsValues() throws IOException {
        try (ProjectSession s = demo.store().open(folder)) {
            assertFalse(s.readOnly());
            assertTrue(s.notices().isEmpty(), s.notices().toString());
            assertEquals("Invented, for the tests.\nTwo lines.", s.project().getJob());
            Trial t = s.project().getTrials().getFirst();
            assertEquals(12.5, t.getSteps().getFirst().getDetails().eGet(demo.feature("planned")));
            assertEquals(List.of("one", "two words", ""), t.getSteps().getFirst().getDetails().eGet(demo.feature("tags")));
            var reading = t.getParts().getFirst().getMeasurements().getFirst().getReadings().getFirst();
            assertEquals(Censoring.MORE_THAN, reading.getCensoring());
            assertTrue(reading.getAt().isAfter(Instant.parse("2026-02-03T04:05:06Z")));
            assertSameText(sample("format-1.xmi"), s.bytes(), "");
        }
    }

    @Test
    void comesBackTheSameWithoutThePlugin() throws IOException {
        try (ProjectSession s = demo.storeWithoutPlugin().open(folder)) {
            assertEquals(List.of(new MissingPlugin(Demo.NS, "org.flexwright.demo", "1.2.3")), s.missingPlugins());
            assertSameText(sample("format-1.xmi"), s.bytes(), "");
        }
    }

    @Test
    void itsJournalIsMadeAgain() throws IOException {
        Files.write(journalFile(folder), sample("format-1.jsonl"));
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("journal.back"), s.notices().stream().map(m -> m.key()).toList());
            assertSameText(sample("format-1-edited.xmi"), s.bytes(), "");
        }
    }
}
