package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A gauge study, what it is good for, and a ranking, by commands. */
class GaugeAndRankingTest {
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeEach
    void project() throws Exception {
        bench = new Bench(folder);
        bench.at("2026-05-18T09:00:00Z");
        bench.ok("project", "new", "dome.flexwright", "--title", "Dome", "--need", "soft to the hand");
        bench.ok("instrument", "add", "--name", "durometer", "--kind", "durometer", "--unit", "Shore A", "--resolution", "0.5");
    }

    @Test
    void aStudyIsFilledFromAFileAndItsSpreadKeptAndUsed() throws Exception {
        Files.writeString(folder.resolve("r.csv"), "P1;Ana;40;40.5;40\nP2;Ana;45;45.5;46\nP3;Ana;50;51;50.5\nP1;Ben;41;41.5;41\nP2;Ben;46.5;46;46\nP3;Ben;51.5;51;51\n");
        bench.ok("gauge", "add", "--property", "shore-a", "--instrument", "durometer", "--tolerance", "6");
        assertTrue(bench.ok("gauge", "show").out().contains("no readings yet"));
        String shown = bench.ok("gauge", "fill", "G1", "r.csv").out();
        assertTrue(shown.contains("Same hand, again") && shown.contains("2 persons say little of other hands"), shown);
        assertTrue(bench.ok("gauge", "keep", "G1").out().contains("gauge study G1"));
        Bench.Run uneven = bench.ok("gauge", "read", "G1", "--piece", "P1", "--who", "Ana", "--readings", "40");
        assertTrue(uneven.out().contains("P1 by Ana has 4, most have 3"), uneven.out());
        assertTrue(bench.ok("gauge", "leave-out", "G1", "--piece", "P1", "--who", "Ana", "--reading", "4", "--reason", "slipped").out().contains("(left out)"));
        assertTrue(bench.typing("P4;Ana;55;55.5;55\n\nP4;Ben;56;56;56.5\n", "gauge", "fill", "G1", "-").out().contains("4 pieces"));
        assertEquals(3, bench.run("gauge", "fill", "G1", "none.csv").status());
        Bench.Run words = bench.run("gauge", "read", "G1", "--piece", "P1", "--readings", "soft");
        assertTrue(words.status() == 2 && words.err().contains("soft"), words.err());
        bench.ok("trial", "new", "--route", "cast", "--title", "first");
        bench.ok("target", "add", "--property", "shore-a", "--nominal", "42", "--tolerance", "3");
        bench.ok("trial", "part", "T01", "--thickness", "8mm");
        bench.ok("trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--instrument", "durometer", "--readings", "42");
        String budget = bench.ok("trial", "budget", "T01").out();
        assertTrue(budget.contains("Step of the gauge") && budget.contains("gauge study G1 of durometer"), budget);
        assertTrue(bench.ok("trial", "compare", "T01").out().contains("they say nothing about how parts differ"));
    }

    @Test
    void piecesAreRankedBySeveralPeople() {
        bench.ok("control", "add", "--code", "K1");
        bench.ok("control", "add", "--code", "K2");
        bench.ok("ranking", "add", "--question", "which feels liveliest?", "--blind", "yes");
        bench.ok("ranking", "put", "B1", "--who", "Ana", "--order", "K1 > K2");
        assertTrue(bench.ok("ranking", "show").out().contains("no agreement to speak of"));
        bench.ok("ranking", "put", "B1", "--who", "Ben", "--order", "K1 > K2");
        assertTrue(bench.ok("ranking", "show", "B1").out().contains("such agreement could be chance"));
        Bench.Run no = bench.run("ranking", "put", "B1", "--who", "Cy", "--order", "K1 > K9");
        assertEquals(2, no.status());
        assertTrue(no.err().contains("K9"), no.err());
    }
}
