package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.flexwright.core.calc.Calculation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import picocli.CommandLine;

/** One shape of answer everywhere; help with an example everywhere; every calculation can be driven by a script. */
class ShapeTest {
    private static final Set<String> KEYS = Set.of("id", "version", "inputs", "results", "findings", "refused", "items", "notices");
    @TempDir
    Path folder;

    private static void shape(Bench.Run run, String what) {
        JsonObject json = run.json();
        assertEquals(KEYS, json.keySet(), what);
        assertTrue(json.get("id").getAsString().length() > 2, what);
        assertTrue(json.get("version").getAsInt() >= 1, what);
        for (Map.Entry<String, JsonElement> result : json.getAsJsonObject("results").entrySet()) {
            JsonObject value = result.getValue().getAsJsonObject();
            assertTrue(value.keySet().containsAll(Set.of("low", "likely", "high", "unit", "source")), () -> what + "." + result.getKey());
            if (!value.get("likely").isJsonNull()) {
                assertTrue(value.get("low").getAsDouble() <= value.get("likely").getAsDouble(), what);
                assertTrue(value.get("likely").getAsDouble() <= value.get("high").getAsDouble(), what);
            }
            assertFalse(value.get("source").getAsString().isBlank(), () -> what + "." + result.getKey() + " has no source");
        }
    }

    @Test
    void everyAnswer() throws Exception {
        Bench bench = new Bench(folder);
        List<List<String>> calls = List.of(List.of("project", "new", "p.flexwright", "--title", "p"), List.of("project", "show"), List.of("project",
                "check"), List.of("project", "restore"), List.of("reference", "add", "--name", "r"), List.of("reference", "show"), List.of("target", "add",
                        "--property", "peak-force", "--at-most", "1N"), List.of("target", "show"), List.of("target", "freeze"), List.of("material",
                                "add", "--code", "A"), List.of("lot", "add", "--material", "A", "--code", "1"), List.of("session", "add", "--code", "S"),
                List.of("trial", "new", "--route", "vatprint.vat"), List.of("trial", "copy", "T01"), List.of("trial", "show", "T01"), List.of("trial",
                        "compare"), List.of("trial", "prompts", "T01"), List.of("recipe", "freeze", "T01", "--code", "R"), List.of("recipe", "show"), List
                                .of("report"), List.of("find", "40-44", "A", "--save", "soft"), List.of("find", "--saved", "soft"), List.of("find", "bubbles", "--in", "."), List
                                        .of("find"), List.of("calc", "list"), List.of("calc", "show", "mixing.batch"), List.of("calc", "run", "mixing.batch"),
                List.of("plugin", "list"), List.of("trial", "show", "none"));
        for (List<String> call : calls) {
            List<String> args = new ArrayList<>(call);
            args.add("--json");
            shape(bench.run(args.toArray(String[]::new)), String.join(" ", call));
        }
    }

    @Test
    void everyCalculationFromItsDefaults() throws Exception {
        Bench bench = new Bench(folder);
        JsonObject list = bench.ok("calc", "list", "--json").json();
        assertEquals(bench.registries().calculations().size(), list.getAsJsonArray("items").size());
        assertTrue(list.getAsJsonArray("items").size() > 30);
        for (JsonElement item : list.getAsJsonArray("items")) {
            JsonObject one = item.getAsJsonObject();
            for (String key : List.of("id", "title", "source", "inputs", "results")) {
                assertTrue(one.has(key), () -> one + " lacks " + key);
            }
            for (JsonElement input : one.getAsJsonArray("inputs")) {
                assertTrue(input.getAsJsonObject().keySet().containsAll(Set.of("name", "kind", "unit", "range", "default", "help")), one::toString);
                assertFalse(input.getAsJsonObject().get("help").getAsString().isBlank(), one::toString);
            }
        }
        for (Calculation<?, ?> calculation : bench.registries().calculations()) {
            Bench.Run run = bench.run("calc", "run", calculation.info().id(), "--json");
            shape(run, calculation.info().id());
            assertTrue(run.json().get("refused").isJsonNull(), () -> calculation.info().id() + " refuses its own defaults: " + run.out());
        }
    }

    @Test
    void helpWithAnExampleEverywhere() throws Exception {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        List<String> without = new ArrayList<>();
        walk(new Bench(folder).cli(nowhere, nowhere).commandLine(), without);
        assertEquals(List.of(), without);
    }

    private static void walk(CommandLine command, List<String> without) {
        if (!String.join("\n", command.getCommandSpec().usageMessage().footer()).contains("Example: flexwright ") || !command.getUsageMessage().contains(
                "--help")) {
            without.add(command.getCommandSpec().qualifiedName());
        }
        command.getSubcommands().values().forEach(sub -> walk(sub, without));
    }
}
