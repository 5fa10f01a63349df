package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import com.google.gson.JsonObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A session at the bench by commands: gauge, control piece, readings as fast as they are read. */
class SessionTest {
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeEach
    void project() throws Exception {
        bench = new Bench(folder);
        bench.ok("project", "new", "p.flexwright", "--title", "p");
        bench.ok("instrument", "add", "--name", "hand durometer", "--kind", "durometer", "--unit", "Shore A", "--resolution", "0.5", "--check-every", "365d");
        bench.ok("control", "add", "--code", "K1", "--thickness", "8mm", "--usual", "61", "--usual-spread", "0.5", "--usual-from", "12 own sessions");
        bench.ok("session", "add", "--room", "23degC", "--conditioned", "30min", "--instrument", "hand durometer", "--control", "K1");
        bench.ok("trial", "new", "--route", "cast", "--title", "first pour");
        for (String part : new String[] { "P1", "P2" }) {
            bench.ok("trial", "part", "T01", "--code", part, "--thickness", "8mm", "--kind", "test piece");
        }
    }

    @Test
    void readingsAreTypedOneAfterTheOther() {
        String typed = String.join("\n", "61", "60.5", "abc", "104", "61", "48", "84", "u", "49", "48", "47; 48; 48", "");
        Bench.Run run = bench.typing(typed, "session", "read", "S01", "--trial", "T01", "--property", "shore-a", "--each", "3", "--dwell", "3s");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("Control piece K1, reading 1 of 3: "), run.out());
        assertTrue(run.out().contains("✕ \"104\" is no reading of"), run.out());
        assertTrue(run.out().contains("K1: median 61 Shore A, spread 0.5 Shore A"), run.out());
        assertTrue(run.out().contains("note  84 Shore A lies 36 Shore A from the median of the other readings"), run.out());
        assertTrue(run.out().contains("P1  3/3  median 48 Shore A, spread 1 Shore A"), run.out());
        String shown = bench.ok("trial", "show", "T01").out();
        assertTrue(shown.contains("48 Shore A; 49 Shore A; 48 Shore A") && shown.contains("47 Shore A; 48 Shore A; 48 Shore A"), shown);
        JsonObject session = bench.ok("session", "show", "S01", "--json").json().getAsJsonArray("items").get(0).getAsJsonObject();
        assertEquals(0.5, session.get("conditioningHours").getAsDouble());
        assertFalse(session.getAsJsonArray("controls").get(0).getAsJsonObject().get("off").getAsBoolean());
        String checked = bench.run("project", "check").out();
        assertTrue(checked.contains("the pieces lay in the room for 0.5 h, less than 1 h"), checked);
        assertTrue(checked.contains("hand durometer has no check noted, though it is to be checked from time to time; read since then in session S01"), checked);
    }

    @Test
    void linesOfAFileAreKeptAllOrNone() throws Exception {
        Files.writeString(folder.resolve("r.txt"), "# control\nK1: 63; 63; 62.5\nP2: 47; 48; 48\nP1: 48; -3; 49\n");
        Bench.Run wrong = bench.run("session", "read", "S01", "--trial", "T01", "--property", "shore-a", "--each", "3", "--from", "r.txt");
        assertEquals(2, wrong.status());
        assertTrue(wrong.err().startsWith("Line 4: \"-3\" is no reading of"), wrong.err());
        assertFalse(bench.ok("trial", "show", "T01").out().contains("Shore A;"), "nothing was kept");
        Files.writeString(folder.resolve("r.txt"), "# control\nK1: 63; 63; 62.5\nP2: 47; 48; 48\nP1: 48; 48; 49\n");
        Bench.Run kept = bench.ok("session", "read", "S01", "--trial", "T01", "--property", "shore-a", "--each", "3", "--from", "r.txt");
        assertTrue(kept.out().contains("all readings of session S01 are in doubt: control piece K1 read 63 Shore A, 2 Shore A above its usual 61 Shore A; "
                + "allowed: ± 1 Shore A, twice its usual spread of 0.5 Shore A (12 own sessions)."), kept.out());
        bench.ok("target", "add", "--property", "shore-a", "--between", "45;55", "--piece", "test piece");
        String judged = bench.ok("trial", "compare", "T01").out();
        assertTrue(judged.contains("P1, P2 read in session S01 and so in doubt: control piece K1 read 63 Shore A"), judged);
        assertTrue(bench.ok("trial", "show", "T01").out().contains("▲ control off"));
        assertTrue(bench.ok("session", "show").out().contains("9 readings, ▲ control off"));
        assertTrue(bench.run("session", "read", "S01", "--property", "shore-a", "--each", "0").err().contains("from 1 to 100"));
    }

    @Test
    void aCheckHoldsForItsTime() {
        assertTrue(bench.ok("instrument", "show").out().contains("▲ check overdue"));
        assertEquals(2, bench.run("instrument", "check", "hand durometer", "--on", "2027-01-01").status());
        String checked = bench.ok("instrument", "check", "hand durometer", "--on", "2026-05-04", "--note", "test block 60 read 60.5").out();
        assertTrue(checked.contains("checked on 2026-05-04 (test block 60 read 60.5), holds until 2027-05-04"), checked);
        assertTrue(bench.run("instrument", "check", "hand durometer", "--on", "2025-05-04").err().contains("older than the one noted on 2026-05-04"));
        assertEquals(2, bench.run("instrument", "change", "hand durometer").status());
        assertTrue(bench.ok("instrument", "change", "hand durometer", "--spread", "0.6", "--spread-from", "30 readings on K1").out().contains("own spread 0.6 Shore A"));
    }
}
