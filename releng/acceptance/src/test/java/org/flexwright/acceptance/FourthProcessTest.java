package org.flexwright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that no product names is dropped in as one jar, and works on the command line like the others. */
class FourthProcessTest {
    private static final String BUNDLE = "org.flexwright.tests.dipping";

    @TempDir
    Path home;
    private Product product;
    private Path plugins;
    private Path project;

    @BeforeEach
    void dropsTheJar() throws Exception {
        product = new Product("flexwright", home);
        plugins = Files.createDirectories(home.resolve("plugins"));
        project = home.resolve("cover.flexwright");
        try (Stream<Path> built = Files.list(Path.of("..", "fixtures", BUNDLE, "target"))) {
            Path jar = built.filter(file -> file.getFileName().toString().startsWith(BUNDLE + "-") && file.toString().endsWith(".jar")).findFirst()
                    .orElseThrow(() -> new AssertionError("The plugin was not built."));
            Files.copy(jar, plugins.resolve("dipping.jar"));
        }
        assertTrue(product.bundles().stream().noneMatch(name -> name.startsWith(BUNDLE)), "the product itself must not have it");
    }

    private String run(String... arguments) throws Exception {
        return ok(product.run(Map.of("FLEXWRIGHT_PLUGINS", plugins.toString()), arguments));
    }

    private String runWithoutIt(String... arguments) throws Exception {
        return ok(product.run(Map.of(), arguments));
    }

    private static String ok(Product.Run run) {
        assertEquals(0, run.status(), run.out() + run.err());
        return run.out();
    }

    private String[] onProject(String... arguments) {
        String[] all = Arrays.copyOf(arguments, arguments.length + 2);
        all[arguments.length] = "--project";
        all[arguments.length + 1] = project.toString();
        return all;
    }

    @Test
    void itsPartsAreListedAndItsCalculationRuns() throws Exception {
        String list = run("plugin", "list");
        for (String id : new String[] { "dipping.dip", "dipping.withdrawal", "dipping.film" }) {
            assertTrue(list.contains(id), list);
        }
        assertFalse(runWithoutIt("plugin", "list").contains("dipping."));
        assertTrue(run("calc", "show", "dipping.film").contains("Landau and Levich 1942 (from memory, unconfirmed)"));
        String once = run("calc", "run", "dipping.film", "--set", "dips=1");
        assertTrue(once.contains("0.0569"), once);
        Product.Run refused = product.run(Map.of("FLEXWRIGHT_PLUGINS", plugins.toString()), "calc", "run", "dipping.film", "--set", "solids=90%");
        assertEquals(1, refused.status());
        assertTrue((refused.out() + refused.err()).contains("75"), refused.out() + refused.err());
    }

    @Test
    void aTrialIsPlannedCheckedAndKeptWhereThePluginIsMissing() throws Exception {
        run("project", "new", project.toString(), "--title", "Latex cover");
        assertTrue(run(onProject("trial", "new", "--route", "dipping.dip")).contains("2 mm/s"));
        assertTrue(run(onProject("project", "check")).indexOf("will run") < 0);
        run(onProject("trial", "step", "T01", "1", "--set", "plannedSpeed=15mm/s"));
        assertTrue(run(onProject("project", "check")).contains("faster than 10 mm/s: the wet film will run."));

        String details = details();
        assertTrue(details.contains("15.0"), details);
        String without = runWithoutIt(onProject("project", "show"));
        assertTrue(without.contains(BUNDLE), without);
        runWithoutIt(onProject("session", "add", "--code", "S1", "--room", "23degC"));
        assertEquals(details, details());
        assertTrue(run(onProject("project", "check")).contains("the wet film will run."));
        assertTrue(run(onProject("trial", "prompts", "T01")).contains("latex"));
        Path report = home.resolve("cover.html");
        run(onProject("report", "--out", report.toString()));
        String page = Files.readString(report);
        assertTrue(page.contains("Withdrawal speed") && page.contains("15 mm/s") && page.contains("the wet film will run."), page);
        assertFalse(page.contains("absent"), page);
    }

    /** What the plugin wrote into the file, byte for byte. */
    private String details() throws Exception {
        String file = Files.readString(project.resolve("project.xmi"));
        int start = file.indexOf("<details");
        return file.substring(start, file.indexOf("<", start + 1));
    }
}
