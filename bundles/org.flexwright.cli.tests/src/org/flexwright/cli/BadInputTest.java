package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bad input gets one clear sentence, the right status, and changes nothing. */
class BadInputTest {
    @TempDir
    Path folder;
    private Bench bench;

    @BeforeEach
    void project() throws Exception {
        bench = new Bench(folder);
        bench.ok("project", "new", "p.flexwright", "--title", "p");
        bench.ok("material", "add", "--code", "A", "--role", "A");
        bench.ok("trial", "new", "--route", "moulding.cast", "--code", "T01");
        bench.ok("trial", "step", "T01", "weigh", "--use", "A=A:10g");
        bench.ok("trial", "part", "T01", "--code", "P1");
    }

    /** Status, no stack trace, no word on standard output, nothing changed, and the sentence says these words. */
    private void refused(int status, String[] words, String... args) throws Exception {
        byte[] before = Files.readAllBytes(folder.resolve("p.flexwright/project.xmi"));
        Bench.Run run = bench.run(args);
        String call = String.join(" ", args);
        assertEquals(status, run.status(), () -> call + ": " + run.out() + run.err());
        assertEquals("", run.out(), call);
        assertFalse(run.err().contains("\tat "), call);
        for (String word : words) {
            assertTrue(run.err().contains(word), () -> call + " should say " + word + ": " + run.err());
        }
        assertEquals(new String(before), Files.readString(folder.resolve("p.flexwright/project.xmi")), call);
        assertTrue(bench.logged.isEmpty(), () -> call + " went to the log: " + bench.logged);
    }

    private static String[] says(String... words) {
        return words;
    }

    @Test
    void units() throws Exception {
        refused(2, says("3 furlong", "mass"), "trial", "weigh", "T01", "--role", "A", "--net", "3 furlong");
        refused(2, says("mm", "length", "mass"), "trial", "weigh", "T01", "--role", "A", "--net", "3 mm");
        refused(2, says("mass"), "trial", "weigh", "T01", "--role", "A", "--net", "");
        refused(2, says("NaN"), "trial", "weigh", "T01", "--role", "A", "--net", "NaN g");
    }

    @Test
    void masses() throws Exception {
        refused(2, says("below 0 g"), "trial", "weigh", "T01", "--role", "A", "--net=-3g");
        refused(2, says("below 0 g"), "trial", "weigh", "T01", "--role", "A", "--gross", "3g", "--tare", "5g");
        refused(2, says("give two of the three"), "trial", "weigh", "T01", "--role", "A", "--gross", "30g", "--tare", "5g", "--net", "20g");
        refused(2, says("uses no"), "trial", "weigh", "T01", "--step", "weigh", "--role", "filler", "--net", "3g");
    }

    @Test
    void ratioOfNothing() throws Exception {
        refused(2, says("above 0"), "trial", "step", "T01", "weigh", "--set", "ratioB=0");
        Bench.Run run = bench.run("calc", "run", "mixing.batch", "--set", "ratioB=0", "--json");
        assertEquals(1, run.status());
        assertEquals("ratioB", run.json().getAsJsonObject("refused").get("input").getAsString());
        assertEquals(0, run.json().getAsJsonObject("results").size(), "no result beside a refusal");
    }

    @Test
    void future() throws Exception {
        refused(2, says("future"), "lot", "add", "--material", "A", "--code", "L", "--opened", "2031-01-01");
        refused(2, says("future"), "session", "add", "--code", "S", "--at", "2031-01-01T10:00");
        refused(2, says("future"), "trial", "part", "T01", "--code", "P2", "--made-at", "2031-01-01T10:00");
    }

    @Test
    void codes() throws Exception {
        refused(2, says("t01 already", "T02 is free"), "trial", "new", "--route", "moulding.cast", "--code", "t01");
        refused(2, says("P1"), "trial", "part", "T01", "--code", "P1");
        refused(2, says("T99"), "trial", "show", "T99");
        refused(2, says("moulding.cast"), "trial", "new", "--route", "none.such");
    }

    @Test
    void readings() throws Exception {
        refused(2, says("4 of 5"), "trial", "read", "T01", "--part", "P1", "--property", "rests-inverted", "--readings", "4 of 5");
        refused(2, says("120", "0 to 100"), "trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "120");
        refused(2, says("--never"), "target", "add", "--property", "rests-inverted", "--at-least", "1");
        refused(2, says("below the second"), "target", "add", "--property", "peak-force", "--between", "2N;1N");
    }

    @Test
    void places() throws Exception {
        refused(3, says("nowhere.flexwright"), "project", "show", "--project", "nowhere.flexwright");
        refused(3, says("p.flexwright"), "project", "new", "p.flexwright", "--title", "again");
        refused(2, says("reason"), "trial", "status", "T01", "failed");
        Files.writeString(folder.resolve("no.png"), "this is no photo");
        refused(2, says("no.png", "PNG or JPEG"), "trial", "attach", "T01", "no.png");
    }

    @Test
    void damagedFiles() throws Exception {
        Path file = folder.resolve("p.flexwright/project.xmi");
        String whole = Files.readString(file);
        Files.writeString(file, whole.substring(0, whole.length() / 2));
        refused(3, says("p.flexwright"), "project", "show");
        Files.writeString(file, "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><x>&e;</x>");
        refused(3, says("p.flexwright"), "project", "show");
        assertFalse(bench.run("project", "show").err().contains("root:"));
    }

    /** What a tired maker types: each gets a sentence that says what was meant instead. */
    @Test
    void tiredMaker() throws Exception {
        refused(2, says("no unit", "22.88 g"), "trial", "weigh", "T01", "--role", "A", "--net", "22.88");
        refused(2, says("\"12 ml\"", "volume", "oz"), "trial", "read", "T01", "--part", "P1", "--property", "mass", "--readings", "12 ml");
        refused(2, says("semicolons"), "trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "46 47 46");
        refused(2, says("semicolons"), "trial", "read", "T01", "--part", "P1", "--property", "shore-a", "--readings", "46, 47, 46");
        refused(2, says("did you mean", "testing.apparent-hardness"), "trial", "read", "T01", "--part", "P1", "--property", "hardness", "--readings", "46");
        refused(2, says("did you mean materials.density"), "material", "value", "--material", "A", "--property", "densty", "--sheet", "1.05g/cm3");
        refused(2, says("Net 5 g", "gross 3 g"), "trial", "weigh", "T01", "--role", "A", "--net", "5g", "--gross", "3g");
        refused(2, says("role \"C\"", "A, B, single"), "trial", "weigh", "T01", "--role", "C", "--net", "5g");
        refused(2, says("photo, settings, data sheet"), "trial", "attach", "T01", "x.png", "--kind", "picture");
        refused(3, says("x.png", "not there"), "trial", "attach", "T01", "x.png");
        refused(2, says("kind of instrument", "balance"), "instrument", "add", "--name", "scale", "--kind", "scales");
        refused(2, says("2031-01-01T10:00 lies in the future"), "session", "add", "--code", "S", "--at", "2031-01-01T10:00");
        refused(2, says("like 2025-03-14"), "lot", "add", "--material", "A", "--code", "L", "--expires", "31.01.2027");
        refused(2, says("10.5 : 3"), "trial", "step", "T01", "weigh", "--set", "ratioA=10.5 : 3");
        refused(2, says("1 Prepare the mould"), "trial", "step", "T01", "wiegh", "--done");
        refused(2, says("no unit"), "trial", "step", "T01", "weigh", "--use", "A=A:22.88");
        refused(2, says("step kind \"wiegh\""), "trial", "step", "T01", "wiegh", "--add");
        refused(2, says("give --add too"), "trial", "step", "T01", "mix", "--before", "1");
        refused(2, says("Time under vacuum", "soon"), "trial", "step", "T01", "degas", "--add", "--set", "plannedMinutes=soon");
        refused(2, says("role=material:mass"), "trial", "step", "T01", "weigh", "--use", "A:22.88g");
        refused(2, says("below the second"), "target", "add", "--property", "shore-a", "--between", "55;45");
        refused(2, says("55 %", "Shore A"), "target", "add", "--property", "shore-a", "--at-least", "55 %");
        refused(2, says("already"), "material", "add", "--code", "a");
    }

    @Test
    void wrongWords() {
        assertEquals(2, bench.run("nonsense").status());
        assertEquals(2, bench.run("trial").status());
        assertEquals(2, bench.run("calc", "run", "no.such").status());
        assertEquals(2, bench.run("calc", "run", "mixing.batch", "--set", "nothing=3").status());
    }
}
