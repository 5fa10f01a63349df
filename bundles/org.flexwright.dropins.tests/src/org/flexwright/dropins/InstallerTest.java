package org.flexwright.dropins;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

import org.flexwright.core.registry.Failure;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/** Runs in the framework: what is in the folder afterwards decides what is installed. */
class InstallerTest {

    private static final String PLUGIN = "test.dropped";

    @TempDir
    Path folder;
    private BundleContext context;

    @BeforeEach
    void startsTheBundle() throws Exception {
        Bundle own = FrameworkUtil.getBundle(Installer.class);
        own.start();
        context = own.getBundleContext();
    }

    @AfterEach
    void emptiesTheFramework() {
        new Installer(context).install(List.of());
    }

    @Test
    void aGoodJarIsInstalledAndStarted() throws IOException {
        Path jar = plugin("good.jar", PLUGIN, "1.2.0");
        DropIns result = install();
        assertEquals(List.of(), result.now());
        assertEquals(List.of(new DropIn(jar, PLUGIN, "1.2.0")), result.loaded());
        assertEquals(Bundle.ACTIVE, installed(PLUGIN).getState());
    }

    @Test
    void aSecondStartFindsTheSameBundle() throws IOException {
        plugin("good.jar", PLUGIN, "1.2.0");
        install();
        long id = installed(PLUGIN).getBundleId();
        assertEquals(1, install().loaded().size());
        assertEquals(id, installed(PLUGIN).getBundleId());
    }

    @Test
    void aRemovedJarIsUninstalled() throws IOException {
        Path jar = plugin("good.jar", PLUGIN, "1.2.0");
        install();
        assertNotNull(installed(PLUGIN));
        Files.delete(jar);
        assertEquals(List.of(), install().loaded());
        assertNull(installed(PLUGIN));
    }

    @Test
    void aChangedJarReplacesTheOldOne() throws IOException {
        plugin("good.jar", PLUGIN, "1.2.0");
        install();
        long id = installed(PLUGIN).getBundleId();
        plugin("good.jar", PLUGIN, "1.2.0.with-a-longer-version");
        assertEquals(List.of(), install().now());
        assertEquals("1.2.0.with-a-longer-version", installed(PLUGIN).getVersion().toString());
        assertNotEquals(id, installed(PLUGIN).getBundleId());
    }

    @Test
    void aBrokenFileIsNamedAndTheOthersComeIn() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.jar"), "no archive at all");
        plugin("good.jar", PLUGIN, "1.2.0");
        DropIns result = install();
        assertEquals(1, result.loaded().size());
        assertOne(result, broken, "", "It could not be read as a plugin: ");
    }

    @Test
    void aJarThatIsNoPluginIsNamed() throws IOException {
        Path jar = jar("library.jar", "Implementation-Title", "only a library");
        assertOne(install(), jar, "", "Its manifest names no Bundle-SymbolicName, so it is no plugin.");
    }

    @Test
    void aMissingPackageIsNamed() throws IOException {
        Path jar = jar("needy.jar", "Bundle-ManifestVersion", "2", "Bundle-SymbolicName", "test.needy", "Import-Package",
                "no.such.thing;version=\"[3,4)\"");
        assertOne(install(), jar, "test.needy", "It needs Import-Package: no.such.thing, which is not here.");
    }

    @Test
    void aPluginThatIsHereAlreadyIsRefused() throws IOException {
        plugin("a.jar", PLUGIN, "1.2.0");
        Path second = plugin("b.jar", PLUGIN, "2.0.0");
        DropIns result = install();
        assertEquals(1, result.loaded().size());
        assertOne(result, second, PLUGIN, "The plugin test.dropped is here already, as version 1.2.0.");
        assertEquals("1.2.0", installed(PLUGIN).getVersion().toString());
    }

    @Test
    void aPluginThatDoesNotStartIsNamed() throws IOException {
        Path jar = jar("lame.jar", "Bundle-ManifestVersion", "2", "Bundle-SymbolicName", "test.lame", "Bundle-Activator",
                "test.lame.NoSuchClass");
        assertOne(install(), jar, "test.lame", "It did not start: ");
    }

    @Test
    void aFragmentWithoutItsHostIsNamed() throws IOException {
        Path jar = jar("fragment.jar", "Bundle-ManifestVersion", "2", "Bundle-SymbolicName", "test.fragment",
                "Fragment-Host", "test.nowhere");
        assertOne(install(), jar, "test.fragment", "The plugin that it adds to is not here.");
    }

    @Test
    void aMissingFolderIsNoFailure() {
        Installer installer = new Installer(context);
        installer.install(List.of(folder.resolve("nowhere")));
        assertEquals(List.of(), installer.result().now());
    }

    private DropIns install() {
        Installer installer = new Installer(context);
        installer.install(List.of(folder));
        return installer.result();
    }

    private static void assertOne(DropIns result, Path file, String plugin, String why) {
        assertEquals(1, result.now().size(), () -> result.now().toString());
        Failure failure = result.now().get(0);
        assertEquals(file.toString(), failure.what());
        assertEquals(plugin, failure.plugin());
        assertTrue(failure.why().startsWith(why), failure.why());
        assertEquals(1, failure.why().lines().count());
    }

    private Bundle installed(String name) {
        return Arrays.stream(context.getBundles()).filter(bundle -> name.equals(bundle.getSymbolicName())).findFirst()
                .orElse(null);
    }

    private Path plugin(String file, String name, String version) throws IOException {
        return jar(file, "Bundle-ManifestVersion", "2", "Bundle-SymbolicName", name, "Bundle-Version", version);
    }

    private Path jar(String file, String... headers) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        for (int i = 0; i < headers.length; i += 2) {
            manifest.getMainAttributes().putValue(headers[i], headers[i + 1]);
        }
        Path jar = folder.resolve(file);
        try (OutputStream out = Files.newOutputStream(jar); JarOutputStream zip = new JarOutputStream(out, manifest)) {
            zip.finish();
        }
        return jar;
    }
}
