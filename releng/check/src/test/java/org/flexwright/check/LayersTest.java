package org.flexwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The manifests of the repository keep the layers, and one bad manifest a rule proves that each rule can fail. */
class LayersTest {

    private static final Path BUNDLES = Path.of("..", "..", "bundles");
    private static final Path FIXTURES = Path.of("src", "test", "resources", "manifests");

    @Test
    void theBundlesOfTheRepositoryKeepTheLayers() throws IOException {
        List<BundleManifest> bundles = BundleManifest.readAll(BUNDLES);
        assertFalse(bundles.isEmpty());
        assertEquals(List.of(), new Layers(bundles).violations());
    }

    @Test
    void theGoodManifestsBreakNoRule() throws IOException {
        assertEquals(List.of(), new Layers(good()).violations());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "capability-uses-capability  | org.flexwright.mixing uses org.flexwright.curing, which its layer does not allow.",
        "capability-imports-capability | org.flexwright.mixing uses org.flexwright.curing, which its layer does not allow.",
        "core-uses-capability        | org.flexwright.core uses org.flexwright.curing, which its layer does not allow.",
        "reader-uses-capability      | org.flexwright.report uses org.flexwright.curing, which its layer does not allow.",
        "workbench-uses-capability   | org.flexwright.workbench uses org.flexwright.curing, which its layer does not allow.",
        "ui-uses-another-ui          | org.flexwright.mixing.ui uses org.flexwright.curing.ui, which its layer does not allow.",
        "ui-uses-another-capability  | org.flexwright.mixing.ui uses org.flexwright.curing, which its layer does not allow.",
        "capability-uses-its-ui      | org.flexwright.mixing uses org.flexwright.mixing.ui, which its layer does not allow.",
        "production-uses-testsupport | org.flexwright.mixing uses org.flexwright.testsupport, which its layer does not allow.",
        "tests-use-capability        | org.flexwright.mixing.tests uses org.flexwright.curing, which its layer does not allow.",
        "headless-requires-workbench | org.flexwright.mixing is headless and reaches org.eclipse.ui.",
        "headless-imports-swt        | org.flexwright.mixing is headless and reaches org.eclipse.swt.graphics.",
        "headless-imports-jface      | org.flexwright.mixing is headless and reaches org.eclipse.jface.viewers.",
        "quantity-uses-osgi          | org.flexwright.quantity is pure Java and reaches org.osgi.framework.",
        "numerics-uses-emf           | org.flexwright.numerics is pure Java and Hipparchus and reaches org.eclipse.emf.ecore.",
        "exports-internal            | org.flexwright.mixing exports org.flexwright.mixing.internal.pots, which is internal.",
        "imports-what-nobody-exports | org.flexwright.mixing imports org.flexwright.core.secret, which no bundle exports.",
        "in-no-layer                 | org.flexwright.gadget is in no layer; give it a place in the table first." })
    void aBadManifestIsRefused(String fixture, String sentence) throws IOException {
        BundleManifest bad = BundleManifest.read(FIXTURES.resolve("bad").resolve(fixture + ".MF"));
        List<BundleManifest> bundles = new ArrayList<>(good());
        bundles.removeIf(bundle -> bundle.name().equals(bad.name()));
        bundles.add(bad);
        assertEquals(List.of(sentence), new Layers(bundles).violations());
    }

    @Test
    void everyBadManifestIsTried() throws IOException {
        String source = Files.readString(Path.of("src/test/java/org/flexwright/check/LayersTest.java"));
        try (Stream<Path> list = Files.list(FIXTURES.resolve("bad"))) {
            for (String name : list.map(file -> file.getFileName().toString().replace(".MF", "")).toList()) {
                assertTrue(source.contains("\"" + name + " "), name);
            }
        }
    }

    @Test
    void namesLeaveAttributesAndVersionRangesOut() {
        assertEquals(List.of("a.b", "c", "d"),
                BundleManifest.names("a.b;version=\"[1,2)\";resolution:=optional, c;d;x=\"y,z\""));
    }

    private static List<BundleManifest> good() throws IOException {
        List<BundleManifest> bundles = new ArrayList<>();
        try (Stream<Path> list = Files.list(FIXTURES.resolve("good"))) {
            for (Path file : list.sorted().toList()) {
                bundles.add(BundleManifest.read(file));
            }
        }
        return bundles;
    }
}
