package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** A maker's first project, from an empty folder: what is said back at each turn. */
class MakerTest {
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeEach
    void shelf() throws Exception {
        bench = new Bench(folder);
        bench.at("2026-05-18T09:00:00Z");
        bench.ok("project", "new", "bumper.flexwright", "--title", "Soft bumper", "--need", "soft to the hand");
        bench.ok("material", "add", "--code", "PU-A", "--name", "isocyanate side", "--role", "A", "--family", "pu-60a");
        bench.ok("material", "add", "--code", "PU-B", "--name", "polyol side", "--role", "part B", "--family", "PU-60A");
        bench.ok("lot", "add", "--material", "PU-A", "--code", "a1", "--expires", "2027-05-01", "--sheet-date", "2026-01-15", "--sheet-revision", "4");
        bench.ok("lot", "add", "--material", "PU-B", "--code", "b1", "--expires", "2027-05-01");
        bench.ok("instrument", "add", "--name", "balance", "--kind", "balance", "--unit", "g", "--resolution", "0.01");
        bench.ok("session", "add", "--code", "S1", "--room", "23degC", "--humidity", "45", "--instrument", "balance");
        bench.ok("trial", "new", "--route", "cast", "--title", "first pour");
        bench.ok("trial", "step", "T01", "weigh", "--use", "A=PU-A/a1:22.88g", "--use", "B=PU-B/b1:21.57g", "--set", "ownLimit=2%");
    }

    /** 2 g too much A: 24.88 x 21.57/22.88 = 23.455 g of B belong to it; 21.57/24.88 against 21.57/22.88 is -8.04 %. */
    @Test
    void twoGramsTooMuchA() {
        Bench.Run a = bench.ok("trial", "weigh", "T01", "--role", "A", "--net", "24.88g", "--session", "S1", "--instrument", "balance", "--json");
        assertEquals(23.455, a.likely("targetB"), 0.0005);
        Bench.Run b = bench.run("trial", "weigh", "T01", "--role", "B", "--gross", "33.57g", "--tare", "12g");
        assertEquals(1, b.status(), "four times the own limit stops");
        assertTrue(b.out().contains("Add 1.89 g of B"), b.out());
        Bench.Run now = bench.run("trial", "step", "T01", "weigh", "--json");
        assertEquals(-8.04, now.likely("deviation"), 0.005);
        assertEquals(1.885, now.likely("addB"), 0.001);
        Bench.Run mended = bench.ok("trial", "weigh", "T01", "--role", "B", "--net", "1.89 g", "--correction");
        assertTrue(mended.out().contains("B, PU-B/b1: 1.89 g weighed, 23.46 g in 2 weighings"), mended.out());
        String shown = bench.ok("trial", "show", "T01").out();
        assertTrue(shown.contains("planned 22.88 g        actual 24.88 g (measured)"), shown);
        assertFalse(shown.lines().anyMatch(line -> line.endsWith(" ")), "no blanks at the end of a line");
    }

    @Test
    void aStepBeyondTheRouteIsAdded() {
        Bench.Run added = bench.ok("trial", "step", "T01", "degas", "--add", "--before", "mix", "--set", "plannedMinutes=7 min");
        assertTrue(added.out().contains("(mixing.degas): planned") && added.out().contains("planned 7 min"), added.out());
        List<String> kinds = bench.ok("trial", "show", "T01").out().lines().filter(line -> line.matches(" +\\d+ .*")).map(line -> line.strip().split(" +")[2])
                .toList();
        int place = kinds.indexOf("mixing.degas");
        assertEquals("mixing.mix", kinds.get(place + 1), kinds::toString);
        assertEquals(2, kinds.stream().filter("mixing.degas"::equals).count(), "the route's own stays");
        bench.ok("trial", "step", "T01", "testing.read", "--add");
        String last = bench.ok("trial", "step", "T01", Integer.toString(kinds.size() + 1)).out();
        assertTrue(last.contains("(testing.read)"), last);
    }

    @Test
    void fieldsAnswerToTheWordsBesideThem() {
        bench.ok("trial", "step", "T01", "cure", "--set", "Cured by=heat", "--set", "plannedHours=4 h");
        assertTrue(bench.ok("trial", "step", "T01", "cure").out().contains("planned heat"));
        Bench.Run both = bench.run("trial", "step", "T01", "mix", "--set", "Mixing time=4 min");
        assertEquals(2, both.status());
        assertTrue(both.err().contains("plannedMinutes (Mixing time, planned), minutes (Mixing time, as made)"), both.err());
        Bench.Run near = bench.run("trial", "step", "T01", "weigh", "--set", "partsToMake=3");
        assertEquals(2, near.status());
        assertTrue(near.err().contains("did you mean partCount (Parts to make)?"), near.err());
        assertTrue(bench.ok("trial", "step", "T01", "weigh").out().contains("may be set: "), "names of what is still open");
        assertEquals(2, bench.run("trial", "step", "T01", "mix", "--set", "plannedMinutes=3", "--set", "PlannedMinutes=4").status(), "twice");
    }

    @Test
    void aWrongReadingIsLeftOutButStays() {
        bench.ok("target", "add", "--property", "mass", "--between", "11g;13g");
        for (String part : new String[] { "P1", "P2", "P3" }) {
            bench.ok("trial", "part", "T01", "--code", part, "--thickness", "3mm");
            bench.ok("trial", "read", "T01", "--part", part, "--property", "Mass", "--readings", part.equals("P1") ? "12 oz" : "12.1g;12.2g");
        }
        bench.ok("trial", "read", "T01", "--part", "P1", "--property", "mass", "--readings", "12.2g");
        assertEquals("cannot tell", verdict("testing.mass"), "the slip pulls the mean");
        assertEquals(2, bench.run("trial", "leave-out", "T01", "--part", "P1", "--property", "mass", "--reading", "3", "--reason", "x").status());
        assertEquals(2, bench.run("trial", "leave-out", "T01", "--part", "P1", "--property", "mass", "--reading", "1", "--reason", " ").status());
        bench.ok("trial", "leave-out", "T01", "--part", "P1", "--property", "mass", "--reading", "1", "--reason", "typed oz for g");
        assertEquals("in", verdict("testing.mass"));
        assertTrue(bench.ok("trial", "show", "T01").out().contains("(left out: typed oz for g)"));
    }

    private String verdict(String property) {
        for (JsonElement item : bench.ok("trial", "compare", "T01", "--json").json().getAsJsonArray("items")) {
            JsonObject row = item.getAsJsonObject();
            if (property.equals(row.get("property").getAsString())) {
                return row.get("verdict").getAsString();
            }
        }
        throw new AssertionError("no row for " + property);
    }

    @Test
    void aTargetStandsOnceAndCanBeTakenOut() {
        bench.ok("target", "add", "--property", "shore-a", "--between", "45;55", "--dwell", "3s");
        assertEquals(2, bench.run("target", "add", "--property", "shore-a", "--nominal", "50", "--tolerance", "5", "--dwell", "3 s").status());
        bench.ok("target", "add", "--property", "shore-a", "--between", "45;55", "--dwell", "1s");
        assertEquals(1, bench.ok("target", "remove", "--property", "shore-a", "--dwell", "1s", "--json").likely("targets"));
        assertEquals(2, bench.run("target", "remove", "--property", "shore-a", "--dwell", "1s").status());
    }

    @Test
    void familiesThatCannotMeetTheSheet() {
        assertEquals(2, bench.run("target", "families").status(), "without a sheet there is nothing to hold them against");
        bench.ok("target", "add", "--property", "shore-a", "--between", "45;55", "--dwell", "3s");
        bench.ok("target", "add", "--property", "elongation", "--at-least", "300%");
        JsonObject reply = bench.ok("target", "families", "--json").json();
        boolean photopolymer = false;
        boolean polyurethane = false;
        for (JsonElement item : reply.getAsJsonArray("items")) {
            JsonObject row = item.getAsJsonObject();
            assertFalse(row.get("source").getAsString().isBlank());
            boolean cannot = row.get("reply").getAsString().equals("cannot");
            photopolymer |= cannot && row.get("family").getAsString().equals("photopolymer-50a") && row.get("property").getAsString().equals("materials.elongation");
            polyurethane |= cannot && row.get("family").getAsString().equals("pu-90a") && row.get("property").getAsString().equals("testing.shore-a");
        }
        assertTrue(photopolymer && polyurethane, reply::toString);
        assertTrue(bench.ok("target", "families").out().lines().anyMatch(l -> l.startsWith("worth a trial") && l.contains("pu-60a")));
        assertTrue(bench.run("material", "add", "--code", "X", "--family", "pu60").err().contains("pu-60a"), "a family nobody knows is asked back");
    }

    @Test
    void needsAreAddedAndTakenOut() {
        bench.ok("need", "add", "quiet", "--nice");
        assertTrue(bench.ok("need", "show").out().contains("  2  nice  quiet"));
        bench.ok("need", "remove", "1");
        assertEquals(2, bench.run("need", "remove", "2").status());
        assertEquals(1, bench.ok("need", "show", "--json").json().getAsJsonArray("items").size());
        assertEquals(2, bench.run("need", "add", " ").status());
    }

    @Test
    void aValueTypedAgainCounts() {
        bench.ok("material", "value", "--material", "PU-A", "--property", "materials.density", "--sheet", "1.5g/cm3", "--sheet-source", "misread");
        Bench.Run again = bench.ok("material", "value", "--material", "PU-A", "--property", "materials.density", "--sheet", "1050 kg/m3", "--sheet-source", "sheet 4");
        assertTrue(again.out().contains("1050 kg/m³   [sheet 4]"), again.out());
        assertTrue(bench.ok("material", "value", "--material", "PU-A", "--property", "demould-time", "--sheet", "16 h").out().contains(
                "16 h   [a sheet that is not named]"));
        bench.ok("report", "--out", "r.html");
        String html = read("r.html");
        assertTrue(html.contains("sheet 1.05 g/cm3 (sheet 4)"), "the last one stands in the report");
        assertFalse(html.contains("misread"));
    }

    private String read(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** A kept piece reads 61 in one session and 57 in the next. */
    @Test
    void aDriftingControlPiece() {
        bench.ok("instrument", "add", "--name", "gauge", "--kind", "durometer", "--unit", "Shore A", "--resolution", "0.5", "--accuracy", "1");
        bench.ok("control", "add", "--code", "K1", "--thickness", "8mm", "--made-at", "2025-11-03T10:00");
        bench.ok("session", "add", "--code", "S2", "--at", "2026-05-16T10:00", "--room", "23degC", "--control", "k1");
        bench.ok("session", "add", "--code", "S3", "--at", "2026-05-17T10:00", "--room", "23degC");
        bench.ok("control", "read", "K1", "--session", "S2", "--property", "shore-a", "--readings", "61;61;60.5;61;61", "--dwell", "3s", "--instrument", "gauge");
        assertFalse(rules().contains("core.control-off"));
        bench.ok("control", "read", "K1", "--session", "S3", "--property", "shore-a", "--readings", "57;57;57.5;57;57", "--dwell", "3s", "--instrument", "gauge");
        assertTrue(rules().contains("core.control-off"), rules());
    }

    private String rules() {
        return bench.run("project", "check", "--json").json().getAsJsonArray("findings").toString();
    }

    /** What a person needs to go against a finding stands in the finding. */
    @Test
    void theRuleStandsBesideItsFinding() {
        bench.ok("material", "add", "--code", "SIL-A", "--role", "A", "--family", "silicone-add-10-30a");
        bench.ok("material", "add", "--code", "SIL-B", "--role", "B", "--family", "silicone-add-10-30a");
        bench.ok("trial", "new", "--route", "moulding.cast");
        bench.ok("trial", "step", "T02", "weigh", "--use", "A=SIL-A:20g", "--use", "B=SIL-B:20g");
        bench.ok("trial", "step", "T02", "prepare", "--set", "Mould made of=vat print");
        Bench.Run check = bench.run("project", "check", "--trial", "T02");
        assertEquals(1, check.status(), check.out());
        assertTrue(check.out().contains("(rule moulding.cure-poison)"), check.out());
        assertFalse(check.out().contains("T02, Prepare the mould: T02"), "the subject is said once");
        bench.ok("project", "override", "--rule", "moulding.cure-poison", "--trial", "T02", "--reason", "cup test cured");
        assertTrue(bench.run("project", "override", "--rule", "moulding.poison", "--trial", "T02", "--reason", "x").err().contains("moulding.cure-poison"));
        assertEquals(0, bench.run("project", "check", "--trial", "T02").status());
    }

    @Test
    void recipeSaysWhatIsStillNeeded() {
        bench.ok("target", "add", "--property", "mass", "--between", "11g;13g");
        Bench.Run refused = bench.run("recipe", "freeze", "T01", "--code", "R1", "--who", "Kim", "--json");
        assertEquals(1, refused.status());
        String why = refused.json().getAsJsonObject("refused").get("why").getAsString();
        for (String words : new String[] { "a frozen target sheet", "3 parts, there are 0", "2 sessions", "step \"Weigh\" to be done or left out", "Mass to be in" }) {
            assertTrue(why.contains(words), why);
        }
        assertTrue(bench.ok("recipe", "show").out().contains("There is no recipe yet"));
    }

    @Test
    void anEarlierStateComesBack() {
        bench.ok("need", "add", "a slip");
        String newest = bench.ok("project", "restore").out().lines().findFirst().orElseThrow().strip().split(" ")[0];
        bench.ok("project", "restore", "--state", newest);
        assertFalse(bench.ok("need", "show").out().contains("a slip"));
        assertEquals(2, bench.run("project", "restore", "--state", "999").status());
    }

    @Test
    void manualOfEveryCalculation() throws Exception {
        bench.ok("calc", "manual", "--out", "manual");
        for (var calculation : bench.registries().calculations()) {
            String page = Files.readString(folder.resolve("manual/" + calculation.info().id() + ".html"));
            assertTrue(page.startsWith("<!DOCTYPE html>") && page.contains("<h1>"), calculation.info().id());
            assertTrue(Files.readString(folder.resolve("manual/index.html")).contains("\"" + calculation.info().id() + ".html\""));
        }
        Files.writeString(folder.resolve("file"), "x");
        assertEquals(3, bench.run("calc", "manual", "--out", "file").status());
    }

    @Test
    void vatAndFilamentTrials() {
        for (String route : new String[] { "vatprint.vat", "filament.extrude" }) {
            Bench.Run made = bench.ok("trial", "new", "--route", route);
            assertFalse(made.out().matches("(?s).*\\d\\.\\d{6}.*"), () -> "digits nobody can use: " + made.out());
            String code = made.out().substring("Trial ".length(), "Trial T02".length());
            assertTrue(bench.ok("trial", "prompts", code).out().contains("data sheet, local codes and licensed practice win"));
            assertEquals(0, bench.run("project", "check", "--trial", code).status());
        }
    }

    @Test
    void beginningsAreNotSaidTwice() {
        assertEquals("T02, Weigh: nobody ticked.", Reply.sentence("T02, Weigh", "T02, Weigh: nobody ticked."));
        assertEquals("T01, piece P1: was read early.", Reply.sentence("T01, piece P1", "P1: was read early."));
        assertEquals("T01, Pull vacuum: too full.", Reply.sentence("T01, Pull vacuum", "Pull vacuum: too full."));
        assertEquals("T01 plans no button: unknown.", Reply.sentence("T01", "T01 plans no button: unknown."));
        assertEquals("T01, Weigh: Filler: per cent of what?", Reply.sentence("T01, Weigh", "Filler: per cent of what?"));
    }
}
