package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables, JSON and backups by commands, with details of the plugins of the whole product. */
class ExchangeNounsTest {
    @TempDir
    Path folder;

    private Bench bench;

    private Bench.Run good(String... args) {
        Bench.Run run = bench.run(args);
        assertEquals(0, run.status(), () -> String.join(" ", args) + ": " + run.out() + run.err());
        return run;
    }

    @Test
    void theWholeProjectGoesOutAndComesBack() throws Exception {
        bench = new Bench(folder);
        good("project", "new", "p.flexwright", "--title", "Dome", "--need", "=clicks");
        good("trial", "new", "--route", "vatprint.vat", "--project", "p.flexwright");
        good("trial", "new", "--route", "filament.extrude", "--project", "p.flexwright");
        byte[] before = Files.readAllBytes(folder.resolve("p.flexwright/project.xmi"));
        good("export", "csv", "tables", "--project", "p.flexwright");
        good("export", "json", "p.json", "--project", "p.flexwright");
        assertTrue(Files.readString(folder.resolve("tables/needs.csv")).contains("'=clicks"));
        assertEquals("Nothing would change.", good("import", "csv", "tables", "--dry-run", "--remove", "--project", "p.flexwright").out().lines().reduce((a, b) -> b)
                .orElse(""));
        good("import", "csv", "tables", "--new", "tables.flexwright");
        good("import", "json", "p.json", "--new", "json.flexwright");
        good("backup", "make", "b.zip", "--project", "p.flexwright");
        good("backup", "check", "b.zip");
        good("backup", "restore", "b.zip", "restored.flexwright");
        org.junit.jupiter.api.Assertions.assertArrayEquals(before, Files.readAllBytes(folder.resolve("restored.flexwright/project.xmi")));
        for (String copy : new String[] { "tables.flexwright", "json.flexwright", "restored.flexwright", "b.zip" }) {
            assertEquals("No difference.", good("backup", "compare", "p.flexwright", copy).out().strip(), copy);
        }
        // one cell, taken in, listed among the kept states, undone by restoring
        Path trials = folder.resolve("tables/trials.csv");
        Files.writeString(trials, Files.readString(trials).replaceFirst(",T01,[^,]*,", ",T01,another title,"));
        assertTrue(good("import", "csv", "tables/trials.csv", "--dry-run", "--project", "p.flexwright").out().contains("-> another title"));
        org.junit.jupiter.api.Assertions.assertArrayEquals(before, Files.readAllBytes(folder.resolve("p.flexwright/project.xmi")));
        good("import", "csv", "tables/trials.csv", "--project", "p.flexwright");
        assertTrue(good("backup", "compare", "b.zip", "p.flexwright").out().contains("T01 (trial), Title: "));
        assertTrue(good("project", "restore", "--project", "p.flexwright").out().contains("T01 (trial), Title: "));
    }

    @Test
    void whatCannotBeTakenIsRefusedAndNothingChanges() throws Exception {
        bench = new Bench(folder);
        good("project", "new", "p.flexwright", "--title", "Dome");
        byte[] before = Files.readAllBytes(folder.resolve("p.flexwright/project.xmi"));
        Files.writeString(folder.resolve("trials.csv"), "id,owner,cost\n_x,/,NaN\n");
        Bench.Run run = bench.run("import", "csv", "trials.csv");
        assertEquals(1, run.status());
        assertTrue(run.out().contains("table trials, row 2, column cost [EUR]: NaN is no number"), run.out());
        assertEquals(2, bench.run("import", "csv", "nothing").status());
        assertEquals(2, bench.run("backup", "check", "trials.csv").status());
        good("backup", "make", "b.zip");
        assertEquals(2, bench.run("backup", "make", "b.zip").status());
        assertEquals(2, bench.run("backup", "restore", "b.zip", "p.flexwright").status());
        assertEquals(2, bench.run("export", "csv", "p.flexwright").status());
        org.junit.jupiter.api.Assertions.assertArrayEquals(before, Files.readAllBytes(folder.resolve("p.flexwright/project.xmi")));
        assertFalse(Files.exists(folder.resolve("nothing")));
    }
}
