package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From Treloar's files over a project to a kept law, typed as a maker would. */
class FitTest {
    @TempDir
    Path folder;

    @Test
    void filesRecordingsAndAKeptLaw() throws Exception {
        Bench bench = new Bench(folder);
        assertEquals(0.184496, bench.ok("fit", "example", "--law", "yeoh", "--files", "open", "--json").likely("C10"), 5e-7);
        bench.ok("project", "new", "sheet.flexwright", "--title", "Sheet", "--need", "a law");
        bench.ok("control", "add", "--code", "K1");
        for (String loading : new String[] {"uniaxial", "equibiaxial", "planar"}) {
            bench.ok("recording", "add", "K1", "open/treloar-" + loading + ".csv", "--kind", "stretch", "--set", "loading=" + loading);
        }
        Bench.Run all = bench.ok("fit", "try", "C1", "C2", "C3");
        assertTrue(all.out().contains("Fewest coefficients of those that foretell about as well as the best"), all.out());
        Bench.Run alone = bench.run("fit", "add", "C1", "--law", "mooney-rivlin");
        assertEquals(1, alone.status());
        assertTrue(alone.out().contains("Mooney-Rivlin is rejected: it gives way at stretch 1 in one direction"), alone.out());
        assertTrue(bench.ok("fit", "list").out().contains("No fit is kept"), "what is rejected is not kept");
        bench.ok("fit", "add", "C1", "C2", "C3", "--law", "yeoh", "--title", "dry");
        assertEquals(0.184496, bench.ok("fit", "show", "dry", "--json").likely("C10"), 5e-7);
        assertEquals(53, bench.ok("fit", "show", "1", "--json").json().getAsJsonArray("items").size());
        bench.ok("report", "--out", "r.html");
        assertTrue(Files.readString(folder.resolve("r.html")).contains("<h2>Rubber laws</h2>"));
        bench.ok("fit", "remove", "dry");
        assertFalse(bench.ok("fit", "list").out().contains("dry"));
    }

    @Test
    void whatCannotBeIsSaidInOneSentence() throws Exception {
        Bench bench = new Bench(folder);
        assertTrue(bench.run("fit", "example", "--law", "hook").err().contains("\"hook\" is no law; allowed are neo-hooke, mooney-rivlin, yeoh, ogden-1, ogden-2, ogden-3."));
        assertTrue(bench.run("fit", "example", "--law", "yeoh", "--weighting", "some").err().contains("is no weighting; allowed are equal, relative, per-loading."));
        bench.ok("project", "new", "sheet.flexwright", "--title", "Sheet", "--need", "a law");
        assertEquals(2, bench.run("fit", "try", "C9", "--law", "yeoh").status());
        assertEquals(2, bench.run("fit", "show", "dry").status());
        bench.ok("fit", "example", "--files", "open", "--law", "neo-hooke");
        assertTrue(bench.run("fit", "example", "--files", "open", "--law", "neo-hooke").err().contains("is there already"));
    }
}
