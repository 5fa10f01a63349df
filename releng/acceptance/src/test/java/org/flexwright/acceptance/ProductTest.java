package org.flexwright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built products, started as a person starts them. */
class ProductTest {

    private static final Map<String, String> AS_IT_IS = Map.of();
    private static final long PATIENCE_SECONDS = 120;

    @TempDir
    Path home;
    private Product product;

    @BeforeEach
    void findsTheProduct() {
        product = new Product("flexwright", home);
    }

    @Test
    void theCommandLinePrintsItsVersionAndNothingElse() throws Exception {
        assertVersion(product.run(AS_IT_IS, "--version"));
    }

    @Test
    void itRunsWithoutAHome() throws Exception {
        assertVersion(product.run(Map.of("HOME", "", "XDG_CACHE_HOME", "", "TMPDIR", home.toString()), "--version"));
    }

    @Test
    void anOptionWithOneDashIsRefusedInOneSentence() throws Exception {
        Product.Run run = product.run(AS_IT_IS, "-console");
        assertEquals(new Product.Run(2, "", "The option -console is not known: options have two dashes, such as --help.\n"), run);
    }

    @Test
    void withoutADisplayTheWindowIsRefusedInOneSentence() throws Exception {
        Product.Run run = product.run(Map.of("DISPLAY", "", "WAYLAND_DISPLAY", ""));
        assertEquals(2, run.status());
        assertEquals(1, run.err().lines().count(), run.err());
    }

    @Test
    void aDisplayThatCannotBeOpenedIsSaidInOneSentence() throws Exception {
        Product.Run run = product.run(Map.of("DISPLAY", ":987", "WAYLAND_DISPLAY", ""));
        assertEquals(2, run.status(), run.err());
        assertEquals(1, run.err().lines().filter(line -> line.contains("display")).count(), run.err());
    }

    @Test
    void theSmallProductHasNoRoutesOfMaking() throws Exception {
        Product small = new Product("flexwright-small", home);
        for (String route : List.of("moulding", "vatprint", "filament")) {
            assertFalse(has(small, route), route);
            assertTrue(has(product, route), route);
        }
        assertVersion(small.run(AS_IT_IS, "--version"));
    }

    @Test
    void aPluginInTheDataFolderIsStarted() throws Exception {
        Path plugins = Files.createDirectories(home.resolve(".local/share/flexwright/plugins"));
        Path mark = home.resolve("mark");
        DroppedPlugin.make(product, home, plugins.resolve("dropped.jar"), mark);
        assertVersion(product.run(AS_IT_IS, "--version"));
        assertTrue(Files.exists(mark));
    }

    @Test
    void aPluginInANamedFolderIsStartedAndGoneWithItsJar() throws Exception {
        Path plugins = Files.createDirectories(home.resolve("my plugins"));
        Path jar = plugins.resolve("dropped.jar");
        Path mark = home.resolve("mark");
        Map<String, String> named = Map.of("FLEXWRIGHT_PLUGINS", plugins.toString());
        DroppedPlugin.make(product, home, jar, mark);
        assertVersion(product.run(named, "--version"));
        assertTrue(Files.deleteIfExists(mark));
        Files.delete(jar);
        assertVersion(product.run(named, "--version"));
        assertFalse(Files.exists(mark));
    }

    @Test
    void aBrokenJarKeepsNothingFromStartingAndIsListed() throws Exception {
        Path plugins = Files.createDirectories(home.resolve("my plugins"));
        Path broken = Files.writeString(plugins.resolve("broken.jar"), "no archive at all");
        Product.Run run = product.run(Map.of("FLEXWRIGHT_PLUGINS", plugins.toString()), "plugin", "list");
        assertEquals(0, run.status());
        assertEquals("", run.err());
        assertEquals(1, run.out().lines().filter(line -> line.startsWith("failed ") && line.contains(broken.toString())
                && line.contains("It could not be read as a plugin")).count(), run.out());
        assertTrue(run.out().lines().anyMatch(line -> line.startsWith("route ")), run.out());
    }

    @Test
    void theCommandLineRunsBesideTheOpenWindow() throws Exception {
        assumeTrue(System.getenv("DISPLAY") != null, "no display");
        Path plugins = Files.createDirectories(home.resolve("plugins of the window"));
        Path mark = home.resolve("mark");
        DroppedPlugin.make(product, home, plugins.resolve("dropped.jar"), mark);
        Path err = home.resolve("window.txt");
        Process window = product.start(Map.of("FLEXWRIGHT_PLUGINS", plugins.toString()), home.resolve("out.txt"), err);
        try {
            await(window, mark, err);
            assertVersion(product.run(AS_IT_IS, "--version"));
            assertTrue(window.isAlive(), () -> read(err));
        } finally {
            window.destroy();
            assertTrue(window.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS));
        }
    }

    private static void await(Process process, Path file, Path err) throws InterruptedException {
        for (long left = PATIENCE_SECONDS * 10; Files.notExists(file); left--) {
            assertTrue(left > 0 && process.isAlive(), () -> read(err));
            Thread.sleep(100);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            return e.getMessage();
        }
    }

    private static void assertVersion(Product.Run run) {
        assertEquals("", run.err());
        assertEquals(0, run.status());
        assertTrue(run.out().startsWith("Flexwright 1.0.0"), run.out());
        assertEquals(1, run.out().lines().count(), run.out());
    }

    private static boolean has(Product product, String bundle) throws IOException {
        return product.bundles().stream().anyMatch(name -> name.startsWith("org.flexwright." + bundle + "_"));
    }
}
