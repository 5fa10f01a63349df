package org.flexwright.core.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

import org.flexwright.core.Watch;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.flexwright.testsupport.RandomModel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Archives of a project: nothing is lost, damage is found and named, and nothing a stranger put in leaves its folder. */
class BackupTest {
    private static final int PROJECTS = 4;

    @TempDir
    Path temp;

    private final Demo demo = new Demo();
    private Path archive;

    @BeforeEach
    void place() {
        archive = temp.resolve("backup.zip");
    }

    private Path project(long seed) throws IOException {
        Path folder = temp.resolve("P" + seed + ".flexwright");
        ProjectStore.Draft draft = demo.store().draft();
        new RandomModel(seed, List.of(demo.ePackage), Tables::isBookkeeping).fill(draft.project(), 200);
        demo.store().create(folder, draft).close();
        byte[] photo = new byte[30_000];
        new Random(seed).nextBytes(photo);
        Files.write(folder.resolve("photos/a photo.jpg"), photo);
        Files.createDirectories(folder.resolve("curves/deep"));
        Files.write(folder.resolve("curves/deep/ö.csv"), new byte[0]);
        return folder;
    }

    private void back(Path folder) throws IOException {
        Backup.make(demo.store().snapshot(folder), "1.0.0", Demo.NOW, archive, Watch.NONE);
    }

    private static Map<String, byte[]> files(Path folder) throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>();
        try (Stream<Path> s = Files.walk(folder)) {
            for (Path p : s.filter(Files::isRegularFile).sorted().toList()) {
                String path = folder.relativize(p).toString();
                if (!path.startsWith("kept") && !path.startsWith("lock")) {
                    all.put(path, Files.readAllBytes(p));
                }
            }
        }
        return all;
    }

    @Test
    void everyByteComesBackAlsoOfAnOpenProject() throws IOException {
        for (int seed = 0; seed < PROJECTS; seed++) {
            Path folder = project(seed);
            Path again = temp.resolve("Again" + seed + ".flexwright");
            Map<String, byte[]> before;
            archive = temp.resolve("b" + seed + ".zip");
            try (ProjectSession session = demo.store().open(folder)) {
                session.execute("Job", edit -> edit.set(edit.project(), ModelPackage.Literals.PROJECT__JOB, "not saved yet"));
                Backup.make(session.snapshot(), "1.0.0", Demo.NOW, archive, Watch.NONE);
                before = files(folder);
            }
            try (Backup b = Backup.open(archive)) {
                b.restore(demo.store(), again, Watch.NONE);
            }
            Map<String, byte[]> after = files(again);
            assertEquals(before.keySet(), after.keySet());
            before.forEach((path, bytes) -> assertArrayEquals(bytes, after.get(path), path));
            try (ProjectSession session = demo.store().open(again)) {
                assertEquals("not saved yet", session.project().getJob());
            }
            assertEquals(List.of(), Backup.compare(demo.store(), archive, folder, Watch.NONE).stream().map(Difference::text).toList());
        }
    }

    @Test
    void whatDiffersIsSaidInWords() throws IOException {
        Path folder = temp.resolve("Dome.flexwright");
        try (ProjectSession session = demo.store().create(folder, "Dome")) {
            Trial[] trials = new Trial[2];
            session.execute("Two trials", edit -> {
                for (int i = 0; i < 2; i++) {
                    trials[i] = ModelFactory.eINSTANCE.createTrial();
                    trials[i].setCode("T0" + (i + 1));
                    edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trials[i]);
                }
            });
            session.save();
            back(folder);
            session.execute("Change", edit -> {
                edit.set(trials[0], ModelPackage.Literals.TRIAL__COST, 2.5);
                edit.remove(trials[1]);
            });
        }
        Files.writeString(folder.resolve("photos/new.jpg"), "x");
        assertEquals(List.of("T01 (trial), Cost: (nothing) -> 2.5 EUR", "removed: T02 (trial)", "added: file photos/new.jpg"), Backup.compare(demo.store(), archive,
                folder, Watch.NONE).stream().map(Difference::text).toList());
    }

    @Test
    void nothingIsOverwrittenAndACancelledOneLeavesNothing() throws IOException {
        Path folder = project(1);
        Watch stop = new Watch() {
            @Override
            public void done(long part, long whole) {
                // only the question matters
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        List<Path> before = list();
        assertThrows(CancellationException.class, () -> Backup.make(demo.store().snapshot(folder), "1", Demo.NOW, archive, stop));
        assertEquals(before, list());
        back(folder);
        byte[] bytes = Files.readAllBytes(archive);
        assertThrows(RefusedException.class, () -> back(folder));
        assertArrayEquals(bytes, Files.readAllBytes(archive));
        try (Backup b = Backup.open(archive)) {
            assertThrows(RefusedException.class, () -> b.restore(demo.store(), folder, Watch.NONE));
            assertThrows(RefusedException.class, () -> b.restore(demo.store(), temp.resolve("other name"), Watch.NONE));
            List<Path> here = list();
            assertThrows(CancellationException.class, () -> b.restore(demo.store(), temp.resolve("N.flexwright"), stop));
            assertEquals(here, list());
        }
    }

    @Test
    void cancelledWhileItChecksItselfItLeavesNothingEither() throws IOException {
        Path folder = project(1);
        List<Path> before = list();
        boolean[] again = new boolean[1];
        long[] most = new long[1];
        assertThrows(CancellationException.class, () -> Backup.make(demo.store().snapshot(folder), "1", Demo.NOW, archive, new Watch() {
            @Override
            public void done(long part, long whole) {
                // counted from the beginning again: it reads what it wrote
                again[0] |= part < most[0];
                most[0] = Math.max(most[0], part);
            }

            @Override
            public boolean cancelled() {
                return again[0];
            }
        }));
        assertEquals(before, list());
    }

    private List<Path> list() throws IOException {
        try (Stream<Path> s = Files.list(temp)) {
            return s.sorted().toList();
        }
    }

    // --- archives from strangers

    private Map<String, byte[]> members() throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            for (ZipEntry e : zip.stream().toList()) {
                all.put(e.getName(), zip.getInputStream(e).readAllBytes());
            }
        }
        return all;
    }

    private void write(Map<String, byte[]> members) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(archive))) {
            for (Map.Entry<String, byte[]> m : members.entrySet()) {
                zip.putNextEntry(new ZipEntry(m.getKey()));
                zip.write(m.getValue());
                zip.closeEntry();
            }
        }
    }

    /** Refused, with nothing left behind. */
    private String refused() throws IOException {
        List<Path> before = list();
        Path target = temp.resolve("Restored.flexwright");
        RuntimeException e = assertThrows(RuntimeException.class, () -> {
            try (Backup b = Backup.open(archive)) {
                b.restore(demo.store(), target, Watch.NONE);
            }
        });
        assertTrue(e instanceof RefusedException || e instanceof StoreException, () -> e.toString());
        assertEquals(before, list());
        return e.getMessage();
    }

    @Test
    void aDamagedMemberIsNamed() throws IOException {
        back(project(2));
        Map<String, byte[]> members = members();
        members.get("project/photos/a photo.jpg")[17] ^= 1;
        write(members);
        assertTrue(refused().endsWith("the file photos/a photo.jpg is damaged; nothing was taken from it."), refused());
        try (Backup b = Backup.open(archive)) {
            assertThrows(RefusedException.class, () -> b.check(Watch.NONE));
        }
    }

    @Test
    void anyFlippedByteOrCutIsFound() throws IOException {
        back(project(3));
        byte[] good = Files.readAllBytes(archive);
        Map<String, byte[]> members = members();
        Random random = new Random(7);
        int found = 0;
        for (int i = 0; i < 60; i++) {
            byte[] bad = good.clone();
            bad[random.nextInt(bad.length)] ^= 1 << random.nextInt(8);
            Files.write(archive, bad);
            try (Backup b = Backup.open(archive)) {
                b.check(Watch.NONE);
                // a byte that says nothing, like a member's time: then all is as it was
                members.forEach((name, bytes) -> assertArrayEquals(bytes, assertSame(name), name));
            } catch (RefusedException e) {
                found++;
            }
        }
        assertTrue(found > 40, "Only " + found + " of 60 were found.");
        for (int i = 0; i < 20; i++) {
            Files.write(archive, java.util.Arrays.copyOf(good, random.nextInt(good.length)));
            refused();
        }
    }

    private byte[] assertSame(String name) {
        try {
            return members().get(name);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void namesThatLeadOutAreRefused() throws IOException {
        back(project(4));
        Map<String, byte[]> good = members();
        for (String name : List.of("../evil", "project/../../evil", "/evil", "C:/evil", "C:\\evil", "project\\evil", "project/./evil", "project//evil",
                "project/evil/", "project/a\u0000b", "project/nul", "project/aux.txt", "project/x.", "a/b/c/d/e/f/g/h/i/j", "project/PROJECT.XMI",
                "project/unlisted", "x".repeat(300))) {
            Map<String, byte[]> bad = new LinkedHashMap<>(good);
            bad.put(name, new byte[] { 1 });
            write(bad);
            refused();
            assertFalse(Files.exists(temp.resolve("evil")));
        }
    }

    @Test
    void aListThatSaysSomethingElseIsRefused() throws IOException {
        back(project(5));
        Map<String, byte[]> good = members();
        String list = new String(good.get("list.json"));
        for (String bad : List.of("", "{}", "null", "[1]", "{", list.replace("flexwright-backup", "other"), list.replace("\"version\": 1", "\"version\": 99"),
                list.replace("photos/a photo.jpg", "photos/../../evil"), list.replace("photos/a photo.jpg", "kept/a"), list.replaceFirst("\"bytes\": \\d+",
                        "\"bytes\": -1"), list.replaceFirst("\"bytes\": \\d+", "\"bytes\": 3"), list.replaceFirst("\"sha256\": \"..", "\"sha256\": \"zz"))) {
            good.put("list.json", bad.getBytes());
            write(good);
            refused();
        }
        good.remove("list.json");
        write(good);
        assertTrue(refused().contains("it lacks its list"));
        Files.writeString(archive, "no zip at all");
        refused();
        Files.delete(archive);
        refused();
    }

    @Test
    void bombsAreNotUnpacked() throws IOException {
        back(project(6));
        Map<String, byte[]> good = members();
        Map<String, byte[]> bad = new LinkedHashMap<>(good);
        bad.put("project/photos/zeros", new byte[24 << 20]);
        write(bad);
        assertTrue(refused().contains("is packed more than 250 to one"), refused());
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(archive))) {
            zip.setMethod(ZipOutputStream.STORED);
            for (int i = 0; i <= ZipGuard.MOST_MEMBERS; i++) {
                ZipEntry e = new ZipEntry("project/photos/" + i);
                e.setSize(0);
                e.setCrc(0);
                e.setTime(0);
                zip.putNextEntry(e);
            }
        }
        assertTrue(refused().contains("more than 20000 files"));
        // the same bytes offered as several members
        write(good);
        byte[] bytes = Files.readAllBytes(archive);
        List<Integer> centrals = new ArrayList<>();
        for (int i = 0; i + 46 < bytes.length; i++) {
            if (bytes[i] == 'P' && bytes[i + 1] == 'K' && bytes[i + 2] == 1 && bytes[i + 3] == 2) {
                centrals.add(i);
            }
        }
        int photo = centrals.get(good.keySet().stream().toList().indexOf("project/photos/a photo.jpg"));
        for (int c : centrals) {
            // sizes, checksum and place of the photo for every member
            System.arraycopy(bytes, photo + 16, bytes, c + 16, 12);
            System.arraycopy(bytes, photo + 42, bytes, c + 42, 4);
        }
        Files.write(archive, bytes);
        refused();
    }

    @Test
    void aProjectInsideThatCannotBeReadIsNotPutAnywhere() throws IOException {
        Path folder = project(8);
        Files.writeString(folder.resolve("project.xmi"), "<not a project/>");
        back(folder);
        refused();
    }
}
