package org.flexwright.codegen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The committed code is what the models say, and the generator finds a changed or a broken model. */
class GeneratedCodeTest {

    private static final Path TOP = Path.of("..", "..").toAbsolutePath().normalize();

    @TempDir
    Path scratch;

    @ParameterizedTest
    @ValueSource(strings = { "bundles", "releng/fixtures" })
    void theCommittedCodeIsWhatTheModelsGenerate(String folder) throws IOException {
        Path bundles = TOP.resolve(folder);
        List<ModelCode> generated = new ModelGenerator(bundles).generate(scratch);
        assertFalse(generated.isEmpty(), folder);
        Set<String> stale = new TreeSet<>();
        for (ModelCode code : generated) {
            stale.addAll(differences(code.sources(), bundles.resolve(code.bundle()).resolve("src-gen")));
        }
        assertEquals(Set.of(), stale, "generate anew, see DEVELOPERS.md");
    }

    @Test
    void aPackageMayUseOneOfABundleThatSortsAfterIt() throws IOException {
        Path bundles = copyOfFixture();
        List<ModelCode> generated = new ModelGenerator(bundles).generate(scratch.resolve("out"));
        assertEquals(List.of("a.user", "b.base"), generated.stream().map(ModelCode::bundle).toList());
        String user = Files.readString(generated.get(0).sources().resolve("t/user/Pot.java"));
        assertTrue(user.contains("extends Vessel"), user);
    }

    @Test
    void aChangedModelIsNoticed() throws IOException {
        Path bundles = copyOfFixture();
        ModelGenerator generator = new ModelGenerator(bundles);
        for (ModelCode code : generator.generate(scratch.resolve("first"))) {
            code.install(bundles);
        }
        Path ecore = bundles.resolve("b.base/model/base.ecore");
        Files.writeString(ecore, Files.readString(ecore).replace("volume", "capacity"));
        ModelCode base = generator.generate(scratch.resolve("second")).get(1);
        assertTrue(differences(base.sources(), bundles.resolve("b.base/src-gen")).contains("t/base/Vessel.java"));
    }

    @Test
    void aBrokenModelIsRefusedByName() throws IOException {
        Path bundles = copyOfFixture();
        Path ecore = bundles.resolve("b.base/model/base.ecore");
        Files.writeString(ecore, Files.readString(ecore).replace("name=\"volume\"", "name=\"not a name\""));
        ModelGenerator generator = new ModelGenerator(bundles);
        IllegalStateException refusal = assertThrows(IllegalStateException.class,
                () -> generator.generate(scratch.resolve("out")));
        assertTrue(refusal.getMessage().contains("not a name"), refusal.getMessage());
    }

    @Test
    void oneBundleIsGeneratedAloneWhereItsFolderIsGiven() throws IOException {
        Path bundles = copyOfFixture();
        Generate.main(new String[] { bundles.resolve("a.user").toString() });
        assertTrue(Files.exists(bundles.resolve("a.user/src-gen/t/user/Pot.java")));
        assertTrue(Files.notExists(bundles.resolve("b.base/src-gen")), "the neighbour is left alone");
        Path none = Files.createDirectory(scratch.resolve("none"));
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> Generate.main(new String[] { none.toString() }));
        assertTrue(refusal.getMessage().contains("model/*.genmodel"), refusal.getMessage());
    }

    private Path copyOfFixture() throws IOException {
        Path bundles = scratch.resolve("bundles");
        Trees.copy(Path.of("src", "test", "resources", "bundles"), bundles);
        return bundles;
    }

    private static Set<String> differences(Path one, Path other) throws IOException {
        Set<Path> all = new TreeSet<>(Trees.files(one));
        all.addAll(Trees.files(other));
        Set<String> different = new TreeSet<>();
        for (Path file : all) {
            Path left = one.resolve(file);
            Path right = other.resolve(file);
            if (Files.notExists(left) || Files.notExists(right) || Files.mismatch(left, right) >= 0) {
                different.add(file.toString().replace('\\', '/'));
            }
        }
        return different;
    }
}
