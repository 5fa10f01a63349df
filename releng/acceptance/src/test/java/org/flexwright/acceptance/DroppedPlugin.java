package org.flexwright.acceptance;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

import javax.tools.ToolProvider;

/** A plugin made for a test: it writes a file when it is started. */
final class DroppedPlugin {

    private DroppedPlugin() {
    }

    /** Compiles the plugin into a jar. It writes {@code mark} when it starts. */
    static void make(Product product, Path work, Path jar, Path mark) throws IOException {
        Path source = work.resolve("Dropped.java");
        Files.writeString(source, """
                package dropped;
                public final class Dropped implements org.osgi.framework.BundleActivator {
                    public void start(org.osgi.framework.BundleContext context) throws Exception {
                        java.nio.file.Files.writeString(java.nio.file.Path.of("%s"), "started");
                    }
                    public void stop(org.osgi.framework.BundleContext context) { }
                }
                """.formatted(mark));
        int result = ToolProvider.getSystemJavaCompiler().run(null, null, null, "--release", "21", "-proc:none", "-cp",
                product.classPath(), "-d", work.toString(), source.toString());
        if (result != 0) {
            throw new IllegalStateException("The plugin of the test does not compile.");
        }
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", "test.dropped");
        main.putValue("Bundle-Version", "1.0.0");
        main.putValue("Bundle-Activator", "dropped.Dropped");
        main.putValue("Import-Package", "org.osgi.framework");
        try (OutputStream out = Files.newOutputStream(jar); JarOutputStream zip = new JarOutputStream(out, manifest)) {
            zip.putNextEntry(new JarEntry("dropped/Dropped.class"));
            zip.write(Files.readAllBytes(work.resolve("dropped/Dropped.class")));
            zip.closeEntry();
        }
    }
}
