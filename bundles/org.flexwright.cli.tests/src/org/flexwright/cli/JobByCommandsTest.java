package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

/** The main job by commands alone, with random ratios and readings: what the program says is compared with sums done here. */
class JobByCommandsTest {
    /** Student's t for 2 degrees of freedom, two-sided 95 %: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2. */
    private static final double T2 = 4.303;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = { 1, 20260501, 77, 4711 })
    void fromNeedToReport(long seed) throws Exception {
        Random random = new Random(seed);
        Bench bench = new Bench(folder);
        bench.ok("project", "new", "part.flexwright", "--title", "Part <" + seed + "> & co", "--need", "clicks \"clearly\"");
        bench.ok("reference", "add", "--name", "old one", "--condition", "worn", "--age", "12a");
        bench.ok("target", "add", "--property", "peak-force", "--between", "0.70N;0.90N", "--support", "flat base");
        bench.ok("target", "add", "--property", "rests-inverted", "--never", "--support", "flat base");
        bench.ok("target", "freeze", "--who", "Kim");
        bench.ok("material", "add", "--code", "A", "--role", "A", "--family", "pu-60a");
        bench.ok("material", "add", "--code", "B", "--role", "B", "--family", "pu-60a");
        bench.ok("lot", "add", "--material", "A", "--code", "a1", "--opened", "2026-05-01", "--expires", "2027-05-01");
        bench.ok("lot", "add", "--material", "B", "--code", "b1", "--opened", "2026-05-01", "--expires", "2027-05-01");
        bench.ok("session", "add", "--code", "S1", "--room", "23degC", "--humidity", "45%RH");
        bench.ok("trial", "new", "--route", "moulding.cast", "--code", "T01");

        double plannedA = 20 + random.nextInt(10);
        double plannedB = 10 + random.nextInt(20);
        double over = 1 + random.nextInt(200) / 100.0;
        bench.ok("trial", "step", "T01", "weigh", "--session", "S1", "--set", "ratioA=" + plannedA, "--set", "ratioB=" + plannedB, "--set", "basis=weight",
                "--set", "ownLimit=2%", "--use", "A=A/a1:" + plannedA + "g", "--use", "B=B/b1:" + plannedB + "g");
        Bench.Run first = bench.run("trial", "weigh", "T01", "--role", "A", "--net", (plannedA + over) + "g", "--json");
        assertEquals((plannedA + over) * plannedB / plannedA, first.likely("targetB"), 0.005, "target of B follows A, to 0.01 g");
        bench.run("trial", "weigh", "T01", "--role", "B", "--net", plannedB + "g");
        Bench.Run both = bench.run("trial", "step", "T01", "weigh", "--json");
        assertEquals(100 * (plannedB / (plannedA + over) / (plannedB / plannedA) - 1), both.likely("deviation"), 0.05);
        assertEquals((plannedA + over) * plannedB / plannedA - plannedB, both.likely("addB"), 0.005);

        double middle = 0.5 + random.nextInt(60) / 100.0;
        double[] parts = new double[3];
        for (int i = 0; i < 3; i++) {
            parts[i] = Math.round((middle + (random.nextInt(7) - 3) / 100.0) * 1000) / 1000.0;
            bench.ok("trial", "part", "T01", "--code", "P" + i, "--thickness", "1.5mm", "--made-at", "2026-05-18T10:00:00Z");
            bench.ok("trial", "read", "T01", "--part", "P" + i, "--property", "peak-force", "--readings", n(parts[i] - 0.01) + "N;" + n(parts[i]) + "N;"
                    + n(parts[i] + 0.02) + "N", "--session", "S1", "--support", "flat base");
            bench.ok("trial", "read", "T01", "--part", "P" + i, "--property", "rests-inverted", "--readings", "no", "--session", "S1", "--support",
                    "flat base");
        }
        bench.ok("trial", "status", "T01", "made");
        bench.ok("trial", "conclude", "T01", "learned <something>");
        JsonObject force = row(bench.ok("trial", "compare", "T01", "--json").json(), "testing.peak-force");
        double mean = (parts[0] + parts[1] + parts[2]) / 3;
        double sd = Math.sqrt((sq(parts[0] - mean) + sq(parts[1] - mean) + sq(parts[2] - mean)) / 2);
        double low = mean - T2 * sd / Math.sqrt(3);
        double high = mean + T2 * sd / Math.sqrt(3);
        String expected = low >= 0.7 && high <= 0.9 ? "in" : high < 0.7 ? "below" : low > 0.9 ? "above" : "cannot tell";
        assertEquals(expected, force.get("verdict").getAsString(), () -> "seed " + seed + ": " + low + " to " + high);
        assertEquals(mean, force.get("mean").getAsDouble(), 1e-9);
        assertEquals(low, force.get("low").getAsDouble(), 1e-3 * (high - low) + 1e-9, "t is printed to four digits in the table");
        assertEquals("in", row(bench.ok("trial", "compare", "--json").json(), "testing.rests-inverted").get("verdict").getAsString());

        bench.ok("report", "--out", "r.html");
        String html = Files.readString(folder.resolve("r.html"));
        assertTrue(html.contains("Part &lt;" + seed + "&gt; &amp; co"), "title, escaped");
        assertTrue(html.contains("learned &lt;something&gt;"), "conclusion, escaped");
        assertTrue(html.contains("clicks &quot;clearly&quot;"), "need, escaped");
    }

    private static double sq(double x) {
        return x * x;
    }

    private static String n(double x) {
        return String.format(Locale.ROOT, "%.3f", x);
    }

    private static JsonObject row(JsonObject reply, String property) {
        for (JsonElement item : reply.getAsJsonArray("items")) {
            if (property.equals(item.getAsJsonObject().get("property").getAsString())) {
                return item.getAsJsonObject();
            }
        }
        throw new AssertionError("no row for " + property + " in " + reply);
    }
}
