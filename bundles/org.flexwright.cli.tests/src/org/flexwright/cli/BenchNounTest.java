package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** The bench view by commands, each of them a program of its own: the clock goes on in between. */
class BenchNounTest {
    @TempDir
    Path folder;

    private static String word(Bench.Run run, String result) {
        return run.json().getAsJsonObject("results").getAsJsonObject(result).get("text").getAsString();
    }

    private static long rows(JsonObject json, String what) {
        return json.getAsJsonArray("items").asList().stream().map(JsonElement::getAsJsonObject).filter(row -> row.get("what").getAsString().equals(what)).count();
    }

    @Test
    void aCupIsWeighedTimedAndDumpedByCommands() throws InterruptedException {
        Bench bench = new Bench(folder);
        bench.at("2026-05-20T12:00:00Z");
        bench.ok("project", "new", "cup.flexwright", "--title", "Cup");
        bench.ok("trial", "new", "--route", "moulding.cast");
        bench.ok("material", "add", "--code", "A", "--name", "Part A", "--family", "pu-60a", "--role", "A");
        bench.ok("material", "add", "--code", "B", "--name", "Part B", "--family", "pu-60a", "--role", "B");
        bench.ok("trial", "step", "T01", "mixing.weigh", "--use", "A=A:20g", "--use", "B=B:10g");
        Bench.Run shown = bench.ok("bench", "show", "T01", "--at", "1/use/0", "--json");
        assertEquals("Weigh A", word(shown, "title"));
        assertTrue(rows(shown.json(), "tap") > 3 && rows(shown.json(), "screen") > 5, shown.out());
        bench.ok("bench", "tap", "T01", "weigh", "20 g", "--at", "1/use/0");
        bench.ok("bench", "tap", "T01", "weigh", "10", "--at", "1/use/1");
        bench.at("2026-05-20T12:04:12Z");
        assertEquals("4:12", word(bench.ok("bench", "show", "T01", "--json"), "clock"));
        JsonObject cup = bench.ok("bench", "cups", "--json").json().getAsJsonArray("items").get(0).getAsJsonObject();
        assertEquals(252.0, cup.get("seconds").getAsDouble());
        bench.ok("bench", "tap", "T01", "odd");
        assertTrue(bench.ok("bench", "sort", "T01", "1", "a hair").out().contains("No note waits."));
        assertNotEquals(0, bench.run("bench", "tap", "T01", "dump").status(), "a dump needs its reason");
        assertNotEquals(0, bench.run("bench", "tap", "T01", "fly").status());
        bench.ok("bench", "tap", "T01", "dump", "Spilled");
        assertTrue(bench.ok("bench", "cups").out().contains("No trial is being made."));
    }
}
