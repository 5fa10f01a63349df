package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** Last year's trial is found by what came out, in the example as it was made. */
class FindTest {
    @TempDir
    Path folder;

    private static List<String> codes(Bench.Run run) {
        List<String> codes = new ArrayList<>();
        run.json().getAsJsonArray("items").forEach(item -> codes.add(item.getAsJsonObject().get("code").getAsString()));
        return codes;
    }

    @Test
    void theExampleAYearLater() throws Exception {
        Bench bench = new Bench(folder);
        bench.ok("example", "dome.flexwright");
        bench.at("2027-02-01T09:00:00Z");
        // hardness on the button or the flange 44 to 46 A, and it snaps: the first polyurethane trial and the one with damp powder
        Bench.Run run = bench.ok("find", "trials", "snapped", "44-46", "A", "last", "year", "--json");
        assertEquals(List.of("T07", "T05"), codes(run));
        assertEquals("only trials · Snap ratio above 0 · 44 to 46 Shore A · made or dated in 2026", run.json().getAsJsonObject("results").getAsJsonObject("understood").get("text")
                .getAsString());
        JsonObject why = run.json().getAsJsonArray("items").get(0).getAsJsonObject().getAsJsonArray("why").get(1).getAsJsonObject();
        assertEquals("Hardness, Shore A", why.get("label").getAsString());
        assertTrue(codes(bench.ok("find", "P-01", "--json")).containsAll(List.of("P-01", "T06", "T07", "T08")), "a lot number finds the lot and where it was used");
        assertEquals(List.of("T09"), codes(bench.ok("find", "inverted", "--json")));
        assertEquals(List.of("T03"), codes(bench.ok("find", "state:discarded", "--json")));
        Bench.Run none = bench.ok("find", "bubles");
        assertTrue(none.out().contains("did you mean bubbles?"), none.out());
        assertTrue(none.out().contains("Nothing has all of that."), none.out());
    }

    @Test
    void savedAndInAFolder() throws Exception {
        Bench bench = new Bench(folder);
        bench.ok("project", "new", "a.flexwright", "--title", "Bubbly dome", "--need", "no bubbles");
        bench.ok("project", "new", "b.flexwright", "--title", "Other", "--need", "quiet");
        bench.ok("find", "bubbles", "--save", "air", "--project", "a.flexwright");
        Bench.Run again = bench.ok("find", "--saved", "AIR", "--project", "a.flexwright", "--json");
        assertEquals(1, again.likely("found"));
        assertTrue(bench.run("find", "dust", "--save", "air", "--project", "a.flexwright").err().contains("There is a saved search \"air\" already"));
        assertTrue(bench.run("find", "--saved", "none", "--project", "a.flexwright").err().contains("There is no saved search \"none\"; there are air."));
        Bench.Run both = bench.ok("find", "bubbles", "--in", ".", "--json");
        assertEquals(1, both.likely("found"));
        assertEquals(2, both.likely("projects"));
        assertEquals("a.flexwright", both.json().getAsJsonArray("items").get(0).getAsJsonObject().get("project").getAsString());
        assertEquals(2, bench.run("find").status());
        assertEquals(2, bench.run("find", "x", "--in", ".", "--project", "a.flexwright").status());
    }
}
