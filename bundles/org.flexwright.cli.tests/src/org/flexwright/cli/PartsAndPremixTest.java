package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A formulation in parts and a premix by commands. */
class PartsAndPremixTest {
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeEach
    void shelf() throws Exception {
        bench = new Bench(folder);
        bench.at("2026-05-18T09:00:00Z");
        bench.ok("project", "new", "bumper.flexwright", "--title", "Soft bumper", "--need", "soft to the hand");
        bench.ok("material", "add", "--code", "PU-A", "--name", "isocyanate side", "--role", "A");
        bench.ok("material", "add", "--code", "PU-B", "--name", "polyol side", "--role", "B");
        bench.ok("material", "add", "--code", "PW", "--name", "powder", "--role", "filler");
        bench.ok("material", "value", "--material", "PU-A", "--property", "mixing.nco-content", "--sheet", "9%");
        bench.ok("material", "value", "--material", "PU-B", "--property", "mixing.hydroxyl-value", "--sheet", "120");
        bench.ok("lot", "add", "--material", "PU-B", "--code", "b1", "--amount", "1kg");
        bench.ok("lot", "add", "--material", "PW", "--code", "f1", "--amount", "50g");
        bench.ok("trial", "new", "--route", "cast", "--title", "first pour");
    }

    @Test
    void gramsFollowFromPartsAndTenIsAskedOfWhat() {
        bench.ok("trial", "step", "T01", "weigh", "--material", "A.grade=PU-A", "--material", "B.grade=PU-B", "--material", "B.lot=b1", "--material", "A.parts=100",
                "--material", "B.parts=50", "--material", "filler.grade=PW", "--material", "filler.parts=10", "--set", "batchMass=150 g");
        Bench.Run asked = bench.ok("trial", "step", "T01", "weigh", "--json");
        assertEquals(15, asked.likely("reading3.of_all"), 1e-9);
        assertEquals(150 / 11.0, asked.likely("reading3.per_100_polymer"), 0.001);
        Bench.Run no = bench.run("trial", "step", "T01", "weigh", "--plan");
        assertTrue(no.status() != 0 && no.err().contains("those of powder do not say of what"), no.err());
        bench.ok("trial", "step", "T01", "weigh", "--material", "3.partsOf=of_b", "--plan");
        String shown = bench.ok("trial", "step", "T01", "weigh").out();
        assertTrue(shown.contains("planned 96.77 g") && shown.contains("planned 48.39 g") && shown.contains("planned 4.84 g"), shown);
        Bench.Run far = bench.run("trial", "step", "T01", "weigh", "--set", "index=140");
        assertTrue(far.status() != 0 && far.err().contains("130"), far.err());
        Bench.Run bad = bench.run("trial", "step", "T01", "weigh", "--material", "filler=3");
        assertEquals(2, bad.status());
    }

    @Test
    void aPremixIsWrittenDownShownAndWeighedAsOne() {
        Bench.Run missing = bench.run("premix", "add", "--use", "B=PU-B/b1:100g", "--use", "filler=PW/f1:0g");
        assertTrue(missing.status() != 0 && missing.err().contains("no weighed amount of powder"), missing.err());
        String made = bench.ok("premix", "add", "--title", "powder in B", "--use", "B=PU-B/b1:100g", "--use", "filler=PW/f1:5g", "--material", "filler.moisture=1%", "--rested", "12h",
                "--dried", "80degC", "--dried-for", "4h").out();
        assertTrue(made.contains("premix X1, powder in B: 105 g made, 105 g left") && made.contains("rested 12 h, dried at 80 \u00b0C for 4 h"), made);
        bench.ok("trial", "step", "T01", "weigh", "--material", "A.grade=PU-A", "--material", "A.planned=100 g", "--material", "premix.premix=X1", "--material", "premix.planned=105 g");
        bench.ok("trial", "weigh", "T01", "--role", "A", "--net", "100 g");
        Bench.Run weighed = bench.ok("trial", "weigh", "T01", "--role", "premix", "--net", "105 g", "--json");
        assertEquals(97.60, weighed.likely("trueIndex"), 0.005);
        assertEquals(100.0 * 5 / 205, weighed.likely("filler"), 1e-3);
        assertTrue(bench.ok("premix", "show").out().contains("105 g made, 0 g left"));
    }
}
