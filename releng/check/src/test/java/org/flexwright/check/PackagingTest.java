package org.flexwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every bundle of the repository is built and shipped, and a forgotten one is named. */
class PackagingTest {

    @TempDir
    Path root;

    @BeforeEach
    void aSmallRepository() throws IOException {
        write("pom.xml", "<module>bundles/org.flexwright.core</module><module>features/f</module>");
        bundle("org.flexwright.core", "META-INF/,.");
        write("features/f/build.properties", "bin.includes = feature.xml");
        write("features/f/feature.xml", "<plugin id=\"org.flexwright.core\" version=\"0.0.0\"/>");
    }

    @Test
    void theRepositoryIsComplete() throws IOException {
        assertEquals(List.of(), new Packaging(Path.of("..", "..")).violations());
    }

    @Test
    void aCompleteSmallRepositoryPasses() throws IOException {
        assertEquals(List.of(), new Packaging(root).violations());
    }

    @Test
    void aForgottenBundleIsNamed() throws IOException {
        bundle("org.flexwright.mesh", "META-INF/,.");
        assertEquals(List.of("bundles/org.flexwright.mesh is no module of pom.xml, so nobody builds it.",
                "org.flexwright.mesh must be in exactly one feature, and is in []."), new Packaging(root).violations());
    }

    @Test
    void aBundleForTestsIsNotShipped() throws IOException {
        write("features/f/feature.xml", "<plugin id=\"org.flexwright.core\"/><plugin id=\"org.flexwright.testsupport\"/>");
        write("pom.xml", Files.readString(root.resolve("pom.xml")) + "<module>bundles/org.flexwright.testsupport</module>");
        bundle("org.flexwright.testsupport", "META-INF/,.");
        assertEquals(List.of("org.flexwright.testsupport is for tests and must be in no feature, and is in [f]."),
                new Packaging(root).violations());
    }

    @Test
    void leftOutFilesAreNamed() throws IOException {
        write("bundles/org.flexwright.core/plugin.xml", "<plugin/>");
        write("bundles/org.flexwright.core/src-gen/A.java", "class A { }");
        assertEquals(List.of("org.flexwright.core has plugin.xml, which its build.properties leaves out of bin.includes.",
                "org.flexwright.core has src-gen, which its build.properties leaves out of source..."),
                new Packaging(root).violations());
    }

    private void bundle(String name, String includes) throws IOException {
        write("bundles/" + name + "/META-INF/MANIFEST.MF",
                "Manifest-Version: 1.0\nBundle-SymbolicName: " + name + "\n");
        write("bundles/" + name + "/build.properties", "bin.includes = " + includes);
    }

    private void write(String path, String text) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
