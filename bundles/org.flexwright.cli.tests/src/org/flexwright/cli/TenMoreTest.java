package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A year later: the recipe is printed, edited, printed again; ten more are made, and a lot has expired. */
class TenMoreTest {
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeEach
    void example() throws Exception {
        bench = new Bench(folder);
        bench.ok("example", "dome.flexwright");
        bench.at("2027-04-01T10:00:00Z");
    }

    /** Changes what the recipe refers to, edits it into a second version, and prints the first one before and after. */
    @Test
    void theOldRecipePrintsTheSameBytesAgain() {
        String before = bench.ok("recipe", "show", "R1 v1").out();
        assertTrue(before.contains("22.88 g") && before.contains("A-2511"), before);
        bench.ok("recipe", "edit", "R1", "--code", "T20", "--title", "slower");
        bench.ok("trial", "step", "T20", "mix", "--set", "workingTime=12 min");
        bench.ok("material", "value", "--material", "PU-A", "--property", "materials.density", "--own", "1.06g/cm3", "--own-source", "weighed again");
        bench.ok("trial", "step", "T08", "weigh", "--set", "partCount=5");
        assertEquals(before, bench.ok("recipe", "show", "R1 v1").out());
        bench.ok("recipe", "versions", "R1");
        assertTrue(bench.ok("recipe", "difference", "R1 v1", "R1 v1").out().contains("no difference"));
        Bench.Run early = bench.run("recipe", "freeze", "T20", "--code", "R1", "--who", "tester");
        assertEquals(1, early.status());
        assertTrue(early.out().contains("3 parts") || early.out().contains("needs 3"), early.out());
    }

    @Test
    void tenMoreInThreePotsWithOneLotExpired() {
        Bench.Run plan = bench.ok("batch", "plan", "R1", "--parts", "10", "--spares", "0", "--start", "2027-04-12", "--reject-limit", "2", "--json");
        assertEquals(3, plan.likely("pots"));
        assertTrue(plan.json().toString().contains("A-2604") && !plan.json().getAsJsonArray("items").toString().contains("A-2511"), plan.out());
        String words = bench.ok("batch", "plan", "R1", "--parts", "10", "--start", "2027-04-12").out();
        assertTrue(words.contains("A-2511 is good until 2026-11-30 and is left aside") && words.contains("bridge trial"), words);
        Bench.Run made = bench.ok("batch", "make", "R1", "--parts", "10", "--start", "2027-04-12", "--code", "B7");
        assertTrue(made.out().startsWith("Batch B7"), made.out());
        String card = bench.ok("batch", "card", "B7", "--pot", "1").out();
        assertTrue(card.contains("Cup B7-1") && card.contains("A-2604") && card.contains("4 parts"), card);
        assertTrue(bench.ok("batch", "show", "B7").out().contains("next: Prepare the mould"));
        assertTrue(bench.ok("stock", "show").out().contains("reserved"));
        assertTrue(bench.ok("batch", "bridge", "R1", "--parts", "10", "--start", "2027-04-12").out().contains("Bridge to lot A-2604, 2 parts"));
        bench.ok("batch", "close", "B7");
        assertEquals(2, bench.run("batch", "close", "B7").status());
        assertEquals(2, bench.run("batch", "make", "R1", "--parts", "10", "--code", "b7").status());
        assertEquals(1, bench.run("batch", "plan", "R1", "--parts", "0").status());
    }

    @Test
    void mouldsCountAndCostsSayWhatIsMissing() {
        bench.ok("mould", "add", "--name", "flat button", "--cavities", "2", "--limit", "1");
        assertTrue(bench.ok("mould", "cast", "M2", "--release", "wax", "--well", "yes", "--parts", "2").out().contains("limit of 1 is reached"));
        assertTrue(bench.ok("mould", "show", "M1").out().contains("22 left"));
        String cost = bench.ok("cost", "T08").out();
        assertTrue(cost.contains("Share of the mould: 1.92 EUR") && cost.contains("Work: 90.00 EUR"), cost);
        String without = bench.ok("cost", "T05").out();
        assertTrue(without.contains("at least") && without.contains("not counted: The mould is not named"), without);
        assertFalse(without.contains("Share of the mould: 0"), without);
    }
}
