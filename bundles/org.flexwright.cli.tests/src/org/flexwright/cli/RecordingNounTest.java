package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A curve from the file of a gauge to the reading of a part, by commands alone. */
class RecordingNounTest {
    @TempDir
    Path folder;

    /** A press with a snap at 2 mm, as a gauge of another country writes it: semicolons, decimal commas, Latin-1. */
    private void press(String name) throws IOException {
        StringBuilder text = new StringBuilder("Prüfer;Ann\nWeg [mm];Kraft [mN]\n");
        for (int i = 0; i <= 400; i++) {
            double x = i / 100.0;
            double force = x < 2 ? 800 * Math.sin(Math.PI / 4 * x) : 300 + 500 * (1 + Math.cos(Math.PI * (x - 2) / 1.5)) / 2;
            text.append(String.format(Locale.ROOT, "%.2f;%.2f%n", x, x > 3.5 ? 300 + 200 * (x - 3.5) : force).replace('.', ','));
        }
        Files.write(folder.resolve(name), text.toString().getBytes(StandardCharsets.ISO_8859_1));
    }

    private Bench bench() throws Exception {
        Bench bench = new Bench(folder);
        bench.ok("project", "new", "p.flexwright", "--title", "p");
        bench.ok("control", "add", "--code", "K1");
        bench.ok("instrument", "add", "--name", "gauge", "--kind", "force gauge", "--unit", "N", "--resolution", "0.001", "--accuracy", "0.01");
        return bench;
    }

    @Test
    void fromTheFileToTheReading() throws Exception {
        press("press.csv");
        Bench bench = bench();
        assertTrue(bench.ok("recording", "guess", "press.csv", "--kind", "press").out().contains("decimal comma, 2 lines above the figures"));
        Bench.Run added = bench.ok("recording", "add", "K1", "press.csv", "--kind", "press", "--instrument", "gauge", "--set", "zeroForce=0N", "--json");
        assertEquals(0.8, added.likely("peak-force"), 0.001);
        assertEquals(0.3, added.likely("least-force"), 0.001);
        assertEquals(0.625, added.likely("snap-ratio"), 0.002);
        Path raw = folder.resolve("p.flexwright").resolve(added.json().getAsJsonObject("results").getAsJsonObject("copied to").get("text").getAsString());
        assertEquals(-1, Files.mismatch(folder.resolve("press.csv"), raw));
        assertTrue(bench.ok("recording", "keep", "C1", "--support", "plate").out().contains("0.800 ± 0.012 N"));
        assertTrue(bench.ok("recording", "list").out().contains("kept: 5"));
        assertEquals(0.8 * Math.sin(Math.PI / 4 * 1.5), bench.ok("recording", "mark", "C1", "peak", "1.5", "--json").likely("peak-force"), 0.002);
        assertTrue(bench.ok("recording", "show", "C1").out().contains("keep it again"));
        bench.ok("recording", "mark", "C1", "peak", "--back");
        assertFalse(bench.ok("recording", "show", "C1").out().contains("keep it again"));
        assertEquals(2, bench.run("recording", "set", "C1").status(), "nothing was said to change");
        // what the results need cannot be left out and then count all the same
        Bench.Run needed = bench.run("recording", "mark", "C1", "peak", "--leave-out", "knocked");
        assertEquals(2, needed.status());
        assertTrue(needed.err().contains("The results need the mark peak"), needed.err());
        assertFalse(bench.ok("recording", "show", "C1").out().contains("left out"));
        bench.ok("recording", "export", "C1", "--out", "c.csv");
        assertEquals("travel [mm],force [N]", Files.readAllLines(folder.resolve("c.csv")).getFirst());
        bench.ok("recording", "export", "C1", "--out", "c.svg", "--from", "1", "--to", "3");
        assertTrue(Files.readString(folder.resolve("c.svg")).contains("Travel, mm"));
        bench.ok("recording", "leave-out", "C1", "the plate slipped");
        assertTrue(bench.ok("recording", "list").out().contains("left out: the plate slipped") && bench.ok("recording", "list").out().contains("kept: 0"));
        // the next one of the kind needs the gauge no more
        assertTrue(bench.ok("recording", "add", "K1", "press.csv", "--kind", "press").out().contains("± 0.012 N"));
        Files.writeString(raw, "0;0\n");
        Bench.Run changed = bench.run("recording", "show", "C1");
        assertEquals(2, changed.status());
        assertTrue(changed.err().contains("was changed since it came in"), changed.err());
    }

    @Test
    void whatIsWrongIsSaidInOneSentenceAndNothingComesIn() throws Exception {
        press("press.csv");
        Bench bench = bench();
        Map<String, String> wrong = Map.of("a.csv", "Travel,Force\n0,1\n1,2\n", "b.csv", "Travel [mm],Force [N]\n0,1\n1,NaN\n", "c.csv", "Travel [mm],Force [N]\n0,1\n1,2,3\n2,3\n", "d.csv",
                "Force [N]\n1\n2\n", "e.csv", "", "f.csv", "Time [s],Travel [mm],Force [N]\n0,0,1\n2,1,1\n1,2,1\n", "g.csv", "\0\1\2\3", "h.csv", "words\nonly\n");
        for (Map.Entry<String, String> each : wrong.entrySet()) {
            Files.writeString(folder.resolve(each.getKey()), each.getValue());
            Bench.Run run = bench.run("recording", "add", "K1", each.getKey(), "--kind", "press");
            assertEquals(2, run.status(), each.getKey() + run.out() + run.err());
            assertEquals(2, run.err().strip().lines().count(), each.getKey() + run.err());
        }
        for (List<String> call : List.of(List.of("add", "K9", "press.csv", "--kind", "press"), List.of("add", "K1", "press.csv", "--kind", "bend"), List.of("add", "K1", "press.csv", "--kind",
                "press", "--separator", "5"), List.of("add", "K1", "press.csv", "--kind", "press", "--column", "force=9:N"), List.of("add", "K1", "press.csv", "--kind", "press", "--column",
                        "force=2:kg"), List.of("add", "K1", "press.csv", "--kind", "press", "--decimal", "often"), List.of("add", "K1", "press.csv", "--kind", "press", "--skip", "-1"), List.of(
                                "add", "K1", "press.csv", "--kind", "press", "--set", "speed=-3mm/min"), List.of("show", "C7"), List.of("keep", "C1"))) {
            List<String> args = new java.util.ArrayList<>(List.of("recording"));
            args.addAll(call);
            Bench.Run run = bench.run(args.toArray(String[]::new));
            assertEquals(2, run.status(), call + run.out() + run.err());
        }
        assertEquals(3, bench.run("recording", "add", "K1", "none.csv", "--kind", "press").status());
        assertTrue(bench.ok("recording", "list").out().contains("no recording yet"));
        assertTrue(bench.logged.isEmpty(), bench.logged.toString());
    }
}
