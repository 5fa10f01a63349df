package org.flexwright.core.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Watch;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.model.ModelPackage;
import org.flexwright.testsupport.RandomModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random projects that hold everything there is, written as tables and read again: not a byte of the project's file differs. */
class TablesRoundTripTest {
    private static final int PROJECTS = 12;
    private static final int OBJECTS = 600;

    @TempDir
    Path temp;

    private final Demo demo = new Demo();
    private final Set<EClass> classes = new HashSet<>();
    private final Set<String> features = new HashSet<>();

    Path random(long seed) throws IOException {
        return random(seed, OBJECTS);
    }

    Path random(long seed, int objects) throws IOException {
        Path folder = temp.resolve("P" + seed + ".flexwright");
        ProjectStore.Draft draft = demo.store().draft();
        RandomModel model = new RandomModel(seed, List.of(demo.ePackage), Tables::isBookkeeping);
        model.fill(draft.project(), objects);
        demo.store().create(folder, draft).close();
        classes.addAll(model.classes());
        features.addAll(model.features());
        return folder;
    }

    static byte[] file(Path folder) throws IOException {
        return Files.readAllBytes(folder.resolve("project.xmi"));
    }

    private byte[] throughTables(ProjectStore store, List<DetailsPackage> packages, Path folder, Path tables) throws IOException {
        try (ProjectSession session = store.openReadOnly(folder)) {
            new CsvExport(packages).write(session.project(), session.unknown(), tables, Watch.NONE);
        }
        Path again = temp.resolve("Again-" + tables.getFileName() + ".flexwright");
        TableImport.create(store, packages, tables, again, Watch.NONE).close();
        return file(again);
    }

    @Test
    void allThatIsKnownComesBack() throws IOException {
        for (int seed = 0; seed < PROJECTS; seed++) {
            Path folder = random(seed);
            assertArrayEquals(file(folder), throughTables(demo.store(), List.of(demo.here()), folder, temp.resolve("t" + seed + (seed % 2 == 0 ? "" : ".zip"))),
                    "seed " + seed);
        }
        for (EClassifier c : ModelPackage.eINSTANCE.getEClassifiers()) {
            if (c instanceof EClass e && !e.isAbstract()) {
                assertTrue(classes.contains(e), "The random projects hold no " + e.getName());
                for (EStructuralFeature f : e.getEAllStructuralFeatures()) {
                    assertTrue(Tables.isBookkeeping(f) || features.contains(e.getName() + "." + f.getName()) || f.getName().equals("id"),
                            "The random projects give no value to " + e.getName() + "." + f.getName());
                }
            }
        }
    }

    @Test
    void whatNoPluginHereKnowsComesBack() throws IOException {
        for (int seed = 100; seed < 104; seed++) {
            Path folder = random(seed);
            Path main = folder.resolve("project.xmi");
            // what a newer program would have written
            Files.writeString(main, Files.readString(main).replaceFirst("<(trials|needs|sessions|grades)", "<$1\n      future=\"a &amp; b\"")
                    .replaceFirst("</(trials|sessions|grades|moulds)>", "<later when=\"2\"><inner>text</inner></later></$1>"), StandardCharsets.UTF_8);
            byte[] rewritten = rewritten(folder);
            assertArrayEquals(rewritten, throughTables(demo.storeWithoutPlugin(), List.of(), folder, temp.resolve("u" + seed)), "seed " + seed);
            assertTrue(new String(rewritten, StandardCharsets.UTF_8).contains("future=\"a &amp; b\""));
        }
    }

    /** As this program would write it now. */
    private byte[] rewritten(Path folder) throws IOException {
        try (ProjectSession session = demo.storeWithoutPlugin().open(folder)) {
            session.execute("Touch", edit -> edit.set(edit.project(), ModelPackage.Literals.PROJECT__JOB, "other"));
            session.undo();
            session.save();
        }
        String text = new String(file(folder), StandardCharsets.UTF_8);
        return text.replaceFirst("\n *journalSeq=\"2\"", "").getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void theSameTablesAgainChangeNothing() throws IOException {
        Path folder = random(200);
        try (ProjectSession session = demo.store().open(folder)) {
            Path tables = temp.resolve("same");
            new CsvExport(List.of(demo.here())).write(session.project(), session.unknown(), tables, Watch.NONE);
            ImportPlan plan = TableImport.plan(session, List.of(demo.here()), tables, new ImportOptions(true, ImportOptions.Decimal.ASK, true), Watch.NONE);
            assertEquals(List.of(), plan.refusals().stream().map(ImportRefusal::text).toList());
            assertEquals(List.of(), plan.changes());
            assertEquals(List.of(), plan.notes().stream().map(m -> m.text()).toList());
        }
    }

    @Test
    void twoExportsAreTheSameBytes() throws IOException {
        Path folder = random(201);
        List<byte[]> both = new ArrayList<>();
        for (String name : List.of("a.zip", "b.zip")) {
            try (ProjectSession session = demo.store().openReadOnly(folder)) {
                new CsvExport(List.of(demo.here())).write(session.project(), session.unknown(), temp.resolve(name), Watch.NONE);
            }
            both.add(Files.readAllBytes(temp.resolve(name)));
        }
        assertArrayEquals(both.get(0), both.get(1));
    }
}
