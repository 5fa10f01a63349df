package org.flexwright.core.session;

import static org.flexwright.core.session.SessionPropertyTest.assertSameText;
import static org.flexwright.core.session.SessionPropertyTest.journal;
import static org.flexwright.core.session.SessionPropertyTest.journalFile;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.flexwright.core.session.StoreException.Kind;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StoreTest {
    @TempDir
    Path temp;

    private final Demo demo = new Demo();

    private Path made() {
        Path folder = Demo.folder(temp);
        try (ProjectSession s = demo.store().create(folder, "Dome")) {
            addTrial(s, "T01");
            s.save();
        }
        return folder;
    }

    private static void addTrial(ProjectSession s, String code) {
        s.execute("Add trial " + code, e -> {
            Trial t = ModelFactory.eINSTANCE.createTrial();
            t.setCode(code);
            e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, t);
        });
    }

    private static List<String> codes(ProjectSession s) {
        return s.project().getTrials().stream().map(Trial::getCode).toList();
    }

    /** Every file under a folder with its content. */
    private static Map<String, String> everything(Path folder) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path p : files.toList()) {
                all.put(folder.relativize(p).toString(), Files.isDirectory(p) ? "folder" : Files.readString(p, StandardCharsets.ISO_8859_1));
            }
        }
        return all;
    }

    private static String oneSentence(StoreException e) {
        assertFalse(e.getMessage().contains("\n") || e.getMessage().contains("Exception"), e.getMessage());
        return e.getMessage();
    }

    @Test
    void aNewProjectHasItsFoldersAndOpensAgain() throws IOException {
        Path folder = made();
        for (String sub : List.of("photos", "curves", "journal", "kept")) {
            assertTrue(Files.isDirectory(folder.resolve(sub)), sub);
        }
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals("Dome", s.project().getTitle());
            assertEquals(1, s.project().getFormatVersion());
            assertEquals("1.0.0", s.project().getWrittenBy());
            assertEquals(List.of("T01"), codes(s));
            assertFalse(s.readOnly());
            assertFalse(s.dirty());
            assertTrue(s.notices().isEmpty(), s.notices().toString());
        }
        assertTrue(Files.readAllLines(folder.resolve("project.xmi")).stream().allMatch(l -> l.chars().filter(c -> c == '=').count() <= 1
                || l.startsWith("<?xml")), "one attribute a line");
    }

    @ParameterizedTest
    @ValueSource(strings = { "Dome", ".flexwright", "Dome.flexwright.zip", "Do:me.flexwright", "Do\nme.flexwright" })
    void aFolderThatCannotBeAProjectIsRefused(String name) {
        StoreException e = assertThrows(StoreException.class, () -> demo.store().create(temp.resolve(name), "Dome"));
        assertEquals(Kind.NAME, e.kind());
        assertFalse(Files.exists(temp.resolve(name)));
    }

    @Test
    void whatIsThereAlreadyIsNotOverwritten() throws IOException {
        Path folder = made();
        Map<String, String> before = everything(folder);
        StoreException e = assertThrows(StoreException.class, () -> demo.store().create(folder, "Other"));
        assertEquals(Kind.EXISTS, e.kind());
        assertEquals(before, everything(folder));
    }

    @Test
    void whereNothingIsNothingOpens() throws IOException {
        StoreException e = assertThrows(StoreException.class, () -> demo.store().open(temp.resolve("No.flexwright")));
        assertEquals(Kind.NOT_FOUND, e.kind());
        Path empty = Files.createDirectory(temp.resolve("Empty.flexwright"));
        e = assertThrows(StoreException.class, () -> demo.store().open(empty));
        assertEquals(Kind.NOT_FOUND, e.kind());
        assertTrue(everything(empty).size() == 1, "nothing is made in it");
    }

    @Test
    void aSecondOpenerIsReadOnlyAndToldWhoHasIt() throws IOException {
        Path folder = made();
        try (ProjectSession first = demo.store().open(folder)) {
            addTrial(first, "T02");
            try (ProjectSession second = demo.store().open(folder)) {
                assertTrue(second.readOnly());
                assertTrue(second.readOnlyReason().contains("already open in this program"), second.readOnlyReason());
                assertEquals(List.of("T01", "T02"), codes(second), "sees what is in the journal");
                StoreException e = assertThrows(StoreException.class, () -> addTrial(second, "T03"));
                assertEquals(Kind.READ_ONLY, e.kind());
                assertThrows(StoreException.class, second::save);
                assertThrows(StoreException.class, second::undo);
                assertEquals(List.of("T01", "T02"), codes(second));
            }
            addTrial(first, "T03");
            assertTrue(Files.readString(folder.resolve("lock")).contains("\"who\":\"Tester\""));
        }
        try (ProjectSession again = demo.store().open(folder)) {
            assertFalse(again.readOnly());
            assertEquals(List.of("T01", "T02", "T03"), codes(again));
        }
    }

    @Test
    void aLockOfAProgramThatEndedIsTakenOver() throws IOException {
        Path folder = made();
        Files.writeString(folder.resolve("lock"),
                "{\"who\":\"Ann\",\"host\":\"bench\",\"pid\":1,\"since\":\"2026-01-01T00:00:00Z\",\"start\":\"2026-01-01T00:00:00Z\"}");
        try (ProjectSession s = demo.store().open(folder)) {
            assertFalse(s.readOnly());
            assertTrue(Files.readString(folder.resolve("lock")).contains("Tester"));
        }
        assertFalse(Files.exists(folder.resolve("lock")));
    }

    @Test
    void openingToLookMakesNothing() throws IOException {
        Path folder = made();
        Files.delete(folder.resolve("lock.held"));
        Map<String, String> before = everything(folder);
        try (ProjectSession s = demo.store().openReadOnly(folder)) {
            assertTrue(s.readOnly());
            assertThrows(StoreException.class, () -> addTrial(s, "T02"));
            assertEquals(before, everything(folder));
        }
        assertEquals(before, everything(folder));
    }

    @Test
    void aFolderThatMayNotBeWrittenOpensReadOnlyAndSaysSo() throws IOException {
        Path folder = made();
        Map<String, String> before = everything(folder);
        FaultyDisk disk = new FaultyDisk();
        disk.readOnly();
        try (ProjectSession s = new ProjectStore(demo.context(), disk).open(folder)) {
            assertTrue(s.readOnly());
            assertTrue(s.readOnlyReason().contains(folder.toString()), s.readOnlyReason());
            assertEquals(List.of("T01"), codes(s));
        }
        assertEquals(before, everything(folder));
    }

    @ParameterizedTest
    @ValueSource(strings = { "formatVersion=\"2\"", "urn:flexwright:model:2" })
    void aNewerFileOpensReadOnlyAndIsLeftAlone(String newer) throws IOException {
        Path folder = made();
        Path main = folder.resolve("project.xmi");
        String text = Files.readString(main);
        Files.writeString(main, newer.startsWith("urn") ? text.replace("urn:flexwright:model:1", newer).replace("code=", "shade=\"dark\"\n code=")
                : text.replace("formatVersion=\"1\"", newer));
        Files.delete(folder.resolve("lock.held"));
        Map<String, String> before = everything(folder);
        try (ProjectSession s = demo.store().open(folder)) {
            assertTrue(s.readOnly());
            assertTrue(s.readOnlyReason().contains("newer"), s.readOnlyReason());
            assertEquals(List.of("T01"), codes(s));
        }
        assertEquals(before, everything(folder));
    }

    @Test
    void hostileFilesAreRefusedAndNothingIsFetched() throws IOException {
        Path secret = Files.writeString(temp.resolve("secret.txt"), "SECRET");
        String start = "<?xml version=\"1.0\"?>\n";
        String project = "<fw:Project xmlns:fw=\"urn:flexwright:model:1\" title=\"%s\"/>";
        String bomb = "<!DOCTYPE b [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;\">]>";
        for (String hostile : List.of(
                start + "<!DOCTYPE x SYSTEM \"" + secret.toUri() + "\">" + project.formatted("a"),
                start + "<!DOCTYPE x [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>" + project.formatted("&e;"),
                start + "<!DOCTYPE x [<!ENTITY % p SYSTEM \"" + secret.toUri() + "\">%p;]>" + project.formatted("a"),
                start + bomb + project.formatted("&c;"),
                start + "<fw:Project xmlns:fw=\"urn:flexwright:model:1\"><trials><basedOn href=\"" + secret.toUri() + "#/\"/></trials></fw:Project>",
                start + "<fw:Project xmlns:fw=\"urn:flexwright:model:1\"><trials href=\"" + secret.toUri() + "#/\"/></fw:Project>",
                start + "<fw:Project xmlns:fw=\"urn:flexwright:model:1\">" + "<x>".repeat(5000) + "</x>".repeat(5000) + "</fw:Project>")) {
            Path folder = Files.createDirectories(temp.resolve("Hostile.flexwright"));
            Files.writeString(folder.resolve("project.xmi"), hostile);
            StoreException e = assertThrows(StoreException.class, () -> demo.store().open(folder), hostile);
            assertEquals(Kind.HOSTILE, e.kind(), e.getMessage());
            assertFalse(oneSentence(e).contains("SECRET"));
            assertEquals(hostile, Files.readString(folder.resolve("project.xmi")));
        }
    }

    @Test
    void aClassNamedInAFileIsNotLoaded() throws IOException {
        Path folder = Files.createDirectories(temp.resolve("Java.flexwright"));
        Files.writeString(folder.resolve("project.xmi"), "<fw:Project xmlns:fw=\"urn:flexwright:model:1\" xmlns:j=\"java://" + Trap.class.getName()
                + "\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xsi:schemaLocation=\"java://" + Trap.class.getName()
                + " java://" + Trap.class.getName() + "\"><trials><steps><details xsi:type=\"j:X\"/></steps></trials></fw:Project>");
        try (ProjectSession s = demo.store().openReadOnly(folder)) {
            assertEquals(1, s.missingPlugins().size());
        }
        assertEquals(null, System.getProperty(Trap.class.getName()));
    }

    /** Leaves a mark when it is initialised. */
    public static final class Trap {
        public static final Object eINSTANCE = System.setProperty(Trap.class.getName(), "sprung");

        private Trap() {
        }
    }

    @Test
    void aFileCutAnywhereIsRefusedInOneSentenceAndLeftAsItIs() throws IOException {
        Path folder = made();
        try (ProjectSession s = demo.store().open(folder)) {
            addTrial(s, "T02");
            s.save();
        }
        Path main = folder.resolve("project.xmi");
        byte[] whole = Files.readAllBytes(main);
        int kept = demo.store().kept(folder).size();
        assertTrue(kept > 0);
        for (int cut = 0; cut < whole.length - 1; cut++) {
            byte[] part = Arrays.copyOf(whole, cut);
            Files.write(main, part);
            StoreException e = assertThrows(StoreException.class, () -> demo.store().open(folder), "cut at " + cut);
            assertEquals(Kind.UNREADABLE, e.kind());
            assertTrue(oneSentence(e).contains(kept + " earlier saved states"), e.getMessage());
            assertArrayEquals(part, Files.readAllBytes(main));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "gross=\"heavy\"", "gross=\"NaN\"", "at=\"yesterday\"", "correction=\"maybe\"", "instrument=\"_nobody\"" })
    void aValueThatCannotBeIsNamedWithItsLine(String attribute) throws IOException {
        Path folder = Files.createDirectories(temp.resolve("Bad.flexwright"));
        Files.writeString(folder.resolve("project.xmi"), "<fw:Project xmlns:fw=\"urn:flexwright:model:1\">\n<trials><steps><uses>\n<weighings "
                + attribute + "/></uses></steps></trials></fw:Project>");
        StoreException e = assertThrows(StoreException.class, () -> demo.store().open(folder));
        assertEquals(Kind.UNREADABLE, e.kind());
        assertTrue(oneSentence(e).contains("line 3") && e.getMessage().contains(attribute.substring(0, attribute.indexOf('='))), e.getMessage());
    }

    @Test
    void aFileOfAnotherKindIsRefused() throws IOException {
        Path folder = Files.createDirectories(temp.resolve("Other.flexwright"));
        for (String other : List.of("", "hello", "<html/>", "<fw:Trial xmlns:fw=\"urn:flexwright:model:1\"/>", "\u0000\u0001", "<a><b></a>")) {
            Files.writeString(folder.resolve("project.xmi"), other);
            StoreException e = assertThrows(StoreException.class, () -> demo.store().open(folder), other);
            assertEquals(Kind.UNREADABLE, e.kind());
            oneSentence(e);
        }
    }

    @Test
    void theLastTenStatesAreKeptAndOneCanBeRestored() throws IOException {
        Path folder = made();
        List<byte[]> saved = new ArrayList<>();
        try (ProjectSession s = demo.store().open(folder)) {
            for (int i = 2; i <= 15; i++) {
                saved.add(Files.readAllBytes(folder.resolve("project.xmi")));
                addTrial(s, "T" + i);
                s.save();
            }
            addTrial(s, "unsaved");
            assertEquals(Kind.LOCKED, assertThrows(StoreException.class,
                    () -> demo.store().restore(folder, demo.store().kept(folder).getFirst())).kind());
        }
        List<KeptVersion> kept = demo.store().kept(folder);
        assertEquals(10, kept.size());
        for (int i = 0; i < kept.size(); i++) {
            assertArrayEquals(saved.get(saved.size() - 1 - i), Files.readAllBytes(kept.get(i).file()));
        }
        KeptVersion third = kept.get(2);
        byte[] content = Files.readAllBytes(third.file());
        demo.store().restore(folder, third);
        assertArrayEquals(content, Files.readAllBytes(folder.resolve("project.xmi")));
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(12, codes(s).size());
            assertFalse(s.dirty());
            assertTrue(s.notices().isEmpty(), s.notices().toString());
        }
        // what was there before, unsaved edits included, is kept
        boolean found = false;
        for (KeptVersion v : demo.store().kept(folder)) {
            found |= Files.readString(v.file()).contains("code=\"unsaved\"");
        }
        assertTrue(found);
    }

    @Test
    void aDamagedProjectIsRestoredAndTheDamagedFileKept() throws IOException {
        Path folder = made();
        try (ProjectSession s = demo.store().open(folder)) {
            addTrial(s, "T02");
            s.save();
        }
        Files.writeString(folder.resolve("project.xmi"), "damaged");
        demo.store().restore(folder, demo.store().kept(folder).getFirst());
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("T01"), codes(s));
        }
        assertEquals("damaged", Files.readString(demo.store().kept(folder).getFirst().file()));
    }

    @Test
    void onAFullDiskNothingIsLost() throws IOException {
        Path folder = made();
        byte[] saved = Files.readAllBytes(folder.resolve("project.xmi"));
        for (int room = 0; room < 4000; room += 23) {
            FaultyDisk disk = new FaultyDisk();
            List<String> expected;
            try (ProjectSession s = new ProjectStore(demo.context(), disk).open(folder)) {
                disk.room(room);
                expected = new ArrayList<>(codes(s));
                try {
                    addTrial(s, "R" + room);
                    expected.add("R" + room);
                    s.save();
                } catch (StoreException e) {
                    assertEquals(Kind.DISK_FULL, e.kind(), e.getMessage());
                    oneSentence(e);
                }
                assertEquals(expected, codes(s), "room " + room);
                // and there is room again
                disk.room(Long.MAX_VALUE);
                addTrial(s, "after");
                expected.add("after");
            }
            try (ProjectSession s = demo.store().open(folder)) {
                assertEquals(expected, codes(s), "room " + room);
            }
            Files.write(folder.resolve("project.xmi"), saved);
            Files.deleteIfExists(journalFile(folder));
        }
    }

    @Test
    void onADiskThatIsFullFromTheStartTheProjectCanBeLookedAt() {
        Path folder = made();
        FaultyDisk disk = new FaultyDisk();
        disk.room(0);
        try (ProjectSession s = new ProjectStore(demo.context(), disk).open(folder)) {
            assertTrue(s.readOnly());
            assertTrue(s.readOnlyReason().contains("no room"), s.readOnlyReason());
        }
    }

    @Test
    void aPowerCutAtAnyMomentLosesNoEditThatReturned() throws IOException {
        boolean wholeRunSeen = false;
        for (int stop = 0; !wholeRunSeen; stop++) {
            Path folder = temp.resolve("Cut" + stop + ".flexwright");
            FaultyDisk disk = new FaultyDisk();
            List<String> returned = new ArrayList<>();
            List<String> tried = new ArrayList<>();
            try (ProjectSession s = new ProjectStore(demo.context(), disk).create(folder, "Dome")) {
                disk.stopAfter(stop);
                for (int i = 1; i <= 5; i++) {
                    tried.add("T" + i);
                    addTrial(s, "T" + i);
                    returned.add("T" + i);
                    if (i % 2 == 0) {
                        s.save();
                    }
                }
                wholeRunSeen = true;
            } catch (StoreException e) {
                assertTrue(disk.stopped(), e.getMessage());
            }
            // the machine starts again: who held the lock is gone
            Files.deleteIfExists(folder.resolve("lock"));
            try (ProjectSession s = demo.store().open(folder)) {
                List<String> present = codes(s);
                assertTrue(present.equals(returned) || present.equals(tried), "stopped after " + stop + ": " + returned + " became " + present);
                addTrial(s, "on");
            }
            try (ProjectSession s = demo.store().open(folder)) {
                assertEquals("on", codes(s).getLast());
            }
        }
    }

    @Test
    void aJournalIsNotReplayedTwiceAfterASave() throws IOException {
        Path folder = made();
        byte[] journal;
        byte[] state;
        try (ProjectSession s = demo.store().open(folder)) {
            addTrial(s, "T02");
            journal = journal(folder);
            s.save();
            state = s.bytes();
        }
        // the power went between the save and the emptying of the journal
        Files.write(journalFile(folder), journal);
        try (ProjectSession s = demo.store().open(folder)) {
            assertSameText(state, s.bytes(), "");
            assertTrue(s.notices().isEmpty());
            addTrial(s, "T03");
        }
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("T01", "T02", "T03"), codes(s));
        }
    }

    @Test
    void aJournalOfAnotherStateIsPutAsideAndNamed() throws IOException {
        Path folder = made();
        try (ProjectSession s = demo.store().open(folder)) {
            addTrial(s, "T02");
        }
        Path main = folder.resolve("project.xmi");
        Files.writeString(main, Files.readString(main).replace("Dome", "Domes"));
        byte[] journal = journal(folder);
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("T01"), codes(s));
            assertEquals(List.of("journal.otherBase", "journal.aside"), s.notices().stream().map(m -> m.key()).toList());
            addTrial(s, "T05");
        }
        try (ProjectSession s = demo.store().open(folder); Stream<Path> files = Files.list(folder.resolve("journal"))) {
            assertEquals(List.of("T01", "T05"), codes(s));
            Path aside = files.filter(p -> p.getFileName().toString().startsWith("aside-")).findFirst().orElseThrow();
            assertArrayEquals(journal, Files.readAllBytes(aside));
        }
    }

    @Test
    void aDamagedJournalLineEndsTheReplayAndTheRestIsPutAside() throws IOException {
        Path folder = made();
        try (ProjectSession s = demo.store().open(folder)) {
            addTrial(s, "T02");
            addTrial(s, "T03");
            addTrial(s, "T04");
        }
        String journal = new String(journal(folder), StandardCharsets.UTF_8);
        Files.writeString(journalFile(folder), journal.replace("T03", "T33"));
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("T01", "T02"), codes(s));
            assertEquals(List.of("journal.back", "journal.damaged", "journal.aside"), s.notices().stream().map(m -> m.key()).toList());
            assertTrue(s.dirty());
            addTrial(s, "T05");
        }
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("T01", "T02", "T05"), codes(s));
        }
    }

    @Test
    void editsMadeWhileASaveIsWrittenAreKept() {
        Path folder = made();
        try (ProjectSession s = demo.store().open(folder)) {
            addTrial(s, "T02");
            ProjectSession.PendingSave save = s.beginSave();
            addTrial(s, "T03");
            save.write();
            addTrial(s, "T04");
            save.finish();
            assertTrue(s.dirty());
            addTrial(s, "T05");
        }
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("T01", "T02", "T03", "T04", "T05"), codes(s));
            s.save();
            assertFalse(s.dirty());
        }
        try (ProjectSession s = demo.store().open(folder)) {
            assertEquals(List.of("T01", "T02", "T03", "T04", "T05"), codes(s));
            assertTrue(s.notices().isEmpty());
        }
    }
}
