package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A maker follows two parts over a month, and keeps a density and a swelling on a button, by commands alone. */
class AgeingNounTest {
    @TempDir
    Path folder;

    @Test
    void partsAreFollowedAsTheyGrowOlder() throws Exception {
        Bench bench = new Bench(folder);
        bench.at("2026-05-01T08:00:00Z");
        bench.ok("project", "new", "bumper.flexwright", "--title", "Soft bumper", "--need", "soft to the hand");
        bench.ok("trial", "new", "--route", "cast", "--title", "first pour");
        for (String part : new String[] {"P1", "P2", "P3"}) {
            bench.ok("trial", "part", "T01", "--code", part, "--made-at", "2026-05-01T08:00");
        }
        Bench.Run none = bench.ok("ageing", "due");
        assertTrue(none.out().contains("no ageing plan yet"), none.out());
        Bench.Run wrong = bench.run("ageing", "new", "--property", "mass", "--pieces", "T01/P9");
        assertTrue(wrong.status() != 0 && wrong.err().contains("There is no piece \"T01/P9\""), wrong.err());
        Bench.Run age = bench.run("ageing", "new", "--property", "mass", "--pieces", "T01/P1", "--ages", "7 parsecs");
        assertTrue(age.status() != 0 && age.err().contains("parsecs"), age.err());
        bench.ok("ageing", "new", "--property", "mass", "--pieces", "T01/P1;T01/P2;T01/P3", "--ages", "1d;7d", "--title", "drying out");

        bench.at("2026-05-02T08:00:00Z");
        assertTrue(bench.ok("ageing", "due").out().contains("due now"), "a day old");
        String[] young = {"10.00g", "10.10g", "10.20g"};
        String[] old = {"9.90g", "9.99g", "10.10g"};
        for (int i = 0; i < 3; i++) {
            bench.ok("trial", "read", "T01", "--part", "P" + (i + 1), "--property", "mass", "--readings", young[i]);
        }
        bench.at("2026-05-08T08:00:00Z");
        for (int i = 0; i < 3; i++) {
            bench.ok("trial", "read", "T01", "--part", "P" + (i + 1), "--property", "mass", "--readings", old[i]);
        }
        String shown = bench.ok("ageing", "show", "drying out", "--csv", "drift.csv").out();
        assertTrue(shown.contains("3 pieces went down by") && shown.contains("control piece"), shown);
        assertEquals(7, Files.readAllLines(folder.resolve("drift.csv")).size());
        assertTrue(bench.run("ageing", "skip", "1", "--age", "30d", "--reason", "away").err().contains("it has 24 h, 7 d"), "an age that is not planned");
        assertTrue(bench.ok("ageing", "due").out().contains("Nothing is due"), "all read");

        Bench.Run density = bench.ok("calc", "keep", "testing.density", "--for", "T01/P1", "--set", "inAir=9.90g", "--set", "inWater=1.10g", "--set", "water=21degC");
        assertTrue(density.out().contains("Kept as a reading of T01/P1"), density.out());
        Bench.Run floats = bench.run("calc", "keep", "testing.density", "--for", "T01/P1", "--set", "inWater=-0.2g");
        assertTrue(floats.out().contains("sinker"), floats.out() + floats.err());
        Bench.Run soak = bench.ok("calc", "keep", "testing.soak", "--for", "T01/P1");
        assertTrue(soak.out().contains("Change of mass: \u22121.0") || soak.out().contains("Change of mass: -1.0"), soak.out());
        String file = Files.readString(folder.resolve("bumper.flexwright/project.xmi"));
        assertTrue(file.contains("testing.density") && file.contains("testing.mass-change") && file.contains("calculated by testing.soak"), "they stand with the part");
    }
}
