package org.flexwright.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any sequence of edits, tried with many. */
class SessionPropertyTest {
    private static final int EDITS = 60;

    @TempDir
    Path temp;

    private final Demo demo = new Demo();

    static Stream<Long> seeds() {
        return new Random(20260301).longs(12).boxed();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void undoAndRedoRestoreTheExactBytes(long seed) {
        try (ProjectSession s = demo.store().create(Demo.folder(temp), "Dome")) {
            RandomEdits edits = new RandomEdits(seed, demo);
            Random random = new Random(seed);
            List<byte[]> states = new ArrayList<>(List.of(s.bytes()));
            for (int i = 0; i < EDITS; i++) {
                // walk back and forth, so that new steps also follow undone ones
                int back = random.nextInt(4) == 0 ? random.nextInt(4) : 0;
                for (int k = 0; k < back && s.canUndo(); k++) {
                    s.undo();
                    states.removeLast();
                    assertSameText(states.getLast(), s.bytes(), "");
                }
                s.execute("edit " + i, edits::some);
                if (s.undoName().equals("edit " + i)) {
                    states.add(s.bytes());
                }
            }
            int steps = 0;
            for (int k = states.size() - 2; k >= 0; k--) {
                s.undo();
                steps++;
                assertSameText(states.get(k), s.bytes(), "");
            }
            assertFalse(s.canUndo());
            for (int k = 1; k <= steps; k++) {
                s.redo();
                assertSameText(states.get(k), s.bytes(), "");
            }
            assertFalse(s.canRedo());
            assertTrue(steps > EDITS / 4, "too few edits changed anything: " + steps);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theJournalBringsBackEveryState(long seed) throws IOException {
        Path folder = Demo.folder(temp);
        List<byte[]> states = new ArrayList<>();
        List<Integer> lengths = new ArrayList<>();
        try (ProjectSession s = demo.store().create(folder, "Dome")) {
            RandomEdits edits = new RandomEdits(seed, demo);
            Random random = new Random(seed);
            states.add(s.bytes());
            lengths.add(0);
            for (int i = 0; i < EDITS; i++) {
                int what = random.nextInt(6);
                if (what == 0) {
                    s.undo();
                } else if (what == 1) {
                    s.redo();
                } else if (what == 2) {
                    s.merge("typing", "key", edits::some);
                } else {
                    s.execute("edit", edits::some);
                }
                int length = journal(folder).length;
                if (length > lengths.getLast()) {
                    states.add(s.bytes());
                    lengths.add(length);
                }
            }
        }
        byte[] journal = journal(folder);
        Random random = new Random(seed);
        // every cut near a line's end, and some anywhere
        for (int k = 0; k < lengths.size(); k++) {
            for (int cut : new int[] { lengths.get(k) - 1, lengths.get(k), lengths.get(k) + 1, random.nextInt(journal.length) }) {
                if (cut >= 0 && cut <= journal.length) {
                    expectPrefix(folder, journal, cut, lengths, states);
                }
            }
        }
    }

    private void expectPrefix(Path folder, byte[] journal, int cut, List<Integer> lengths, List<byte[]> states) throws IOException {
        Files.write(journalFile(folder), Arrays.copyOf(journal, cut));
        int whole = 0;
        // a line that only lacks its line end is complete
        while (whole + 1 < lengths.size() && lengths.get(whole + 1) - 1 <= cut) {
            whole++;
        }
        try (ProjectSession s = demo.store().openReadOnly(folder)) {
            assertSameText(states.get(whole), s.bytes(), "cut at " + cut);
        }
    }

    @Test
    void aJournalCutAnywhereGivesAPrefixAndCanBeContinued() throws IOException {
        Path folder = Demo.folder(temp);
        List<byte[]> states = new ArrayList<>();
        List<Integer> lengths = new ArrayList<>();
        try (ProjectSession s = demo.store().create(folder, "Dome")) {
            RandomEdits edits = new RandomEdits(4, demo);
            states.add(s.bytes());
            lengths.add(0);
            for (int i = 0; i < 4; i++) {
                s.execute("edit", edits::some);
                states.add(s.bytes());
                lengths.add(journal(folder).length);
            }
        }
        byte[] journal = journal(folder);
        for (int cut = 0; cut <= journal.length; cut += 3) {
            expectPrefix(folder, journal, cut, lengths, states);
            byte[] after;
            try (ProjectSession s = demo.store().open(folder)) {
                s.execute("go on", e -> e.set(s.project(), org.flexwright.model.ModelPackage.Literals.PROJECT__JOB, "go on"));
                after = s.bytes();
            }
            try (ProjectSession s = demo.store().open(folder)) {
                assertSameText(after, s.bytes(), "cut at " + cut);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void savingAndOpeningGivesTheSameBytesWithAndWithoutThePlugin(long seed) throws IOException {
        Path folder = Demo.folder(temp);
        try (ProjectSession s = demo.store().create(folder, "Dome")) {
            RandomEdits edits = new RandomEdits(seed, demo);
            for (int i = 0; i < EDITS; i++) {
                s.execute("edit", edits::some);
            }
            s.save();
            assertFalse(s.dirty());
            assertEquals(0, journal(folder).length);
            assertSameText(Files.readAllBytes(folder.resolve("project.xmi")), s.bytes(), "");
        }
        byte[] saved = Files.readAllBytes(folder.resolve("project.xmi"));
        try (ProjectSession with = demo.store().open(folder)) {
            assertSameText(saved, with.bytes(), "");
            assertTrue(with.missingPlugins().isEmpty());
        }
        try (ProjectSession without = demo.storeWithoutPlugin().open(folder)) {
            assertSameText(saved, without.bytes(), "");
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void detailsOfAnAbsentPluginGoThroughAnyEditsAndTheJournal(long seed) throws IOException {
        Path folder = Demo.folder(temp);
        try (ProjectSession s = demo.store().create(folder, "Dome")) {
            RandomEdits edits = new RandomEdits(seed, demo);
            for (int i = 0; i < EDITS; i++) {
                s.execute("edit", edits::some);
            }
            s.save();
        }
        byte[] saved = Files.readAllBytes(folder.resolve("project.xmi"));
        RandomEdits edits = new RandomEdits(seed + 1, null);
        byte[] edited;
        try (ProjectSession s = demo.storeWithoutPlugin().open(folder)) {
            int steps = 0;
            for (int i = 0; i < EDITS; i++) {
                s.execute("edit " + i, edits::some);
            }
            edited = s.bytes();
            for (; s.canUndo(); steps++) {
                s.undo();
            }
            assertSameText(saved, s.bytes(), "all undone");
            for (; s.canRedo(); steps--) {
                s.redo();
            }
            assertEquals(0, steps);
            assertSameText(edited, s.bytes(), "all redone");
        }
        try (ProjectSession s = demo.storeWithoutPlugin().openReadOnly(folder)) {
            assertSameText(edited, s.bytes(), "from the journal, without the plugin");
        }
        try (ProjectSession s = demo.store().openReadOnly(folder)) {
            assertSameText(edited, s.bytes(), "from the journal, with the plugin");
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void workThatThrowsLeavesNothing(long seed) throws IOException {
        Path folder = Demo.folder(temp);
        try (ProjectSession s = demo.store().create(folder, "Dome")) {
            RandomEdits edits = new RandomEdits(seed, demo);
            for (int i = 0; i < EDITS / 2; i++) {
                s.execute("edit", edits::some);
                byte[] before = s.bytes();
                int journal = journal(folder).length;
                assertThrows(ArithmeticException.class, () -> s.execute("fails", e -> {
                    edits.some(e);
                    edits.some(e);
                    throw new ArithmeticException();
                }));
                assertSameText(before, s.bytes(), "");
                assertEquals(journal, journal(folder).length);
            }
        }
    }

    static Path journalFile(Path folder) {
        return folder.resolve("journal").resolve("edits.jsonl");
    }

    static byte[] journal(Path folder) throws IOException {
        return Files.exists(journalFile(folder)) ? Files.readAllBytes(journalFile(folder)) : new byte[0];
    }

    /** Names the first line that differs, since whole files are too long to look at. */
    static void assertSameText(byte[] expected, byte[] actual, String where) {
        if (!Arrays.equals(expected, actual)) {
            List<String> a = text(expected).lines().toList();
            List<String> b = text(actual).lines().toList();
            int i = 0;
            while (i < a.size() && i < b.size() && a.get(i).equals(b.get(i))) {
                i++;
            }
            fail(where + " line " + (i + 1) + ": expected " + a.subList(Math.max(0, i - 3), Math.min(a.size(), i + 5)) + " but was "
                    + b.subList(Math.max(0, i - 3), Math.min(b.size(), i + 5)));
        }
    }

    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
