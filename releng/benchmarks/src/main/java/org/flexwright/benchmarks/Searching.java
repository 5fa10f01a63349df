package org.flexwright.benchmarks;

import java.lang.ref.Reference;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;

import org.flexwright.core.registry.Registries;
import org.flexwright.core.search.ProjectSearch;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;

/** Searches of every sort in a project of ten thousand trials with a note each. The notes are invented words, the same each time. */
final class Searching {
    static final int TRIALS = 10_000;
    private static final int MOST = 120;
    private static final int RUNS = 15;
    private static final int EDITS = 50;
    private static final int WORDS_A_NOTE = 12;
    private static final long SEED = 20_261_128;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T09:30:00Z"), ZoneOffset.UTC);
    private static final List<String> ASKED = List.of("snapped 40-44 A last year", "40-44 A", "40-44 A 5-8 N this year", "> 8 N", "44.4 A", "cast", "number 7777", "T0777",
            "baro", "b", "notes dika", "\"baro dika\"", "not baro", "trials this year not cast", "lots", "no such word at all", "before 2025", "22.9 g", "12");

    private final Registries registries;
    private final ProjectStore store;
    private final Path folder;

    /** Reading the whole project into the index. */
    final Series read = new Series();
    /** One search, of every sort. */
    final Series find = new Series();
    /** An edit of a trial until the index has it. */
    final Series follow = new Series();
    private long held;

    Searching(Registries registries, ProjectStore store, Path folder) {
        this.registries = registries;
        this.store = store;
        this.folder = folder;
    }

    void run() {
        try (ProjectSession session = store.open(folder)) {
            notes(session);
            long before = used();
            long begun = System.nanoTime();
            try (ProjectSearch search = new ProjectSearch(session, registries, CLOCK)) {
                search.readAll();
                read.add(System.nanoTime() - begun);
                held = used() - before;
                ASKED.forEach(asked -> search.find(asked, MOST));
                for (int i = 0; i < RUNS; i++) {
                    for (String asked : ASKED) {
                        begun = System.nanoTime();
                        search.find(asked, MOST);
                        find.add(System.nanoTime() - begun);
                    }
                }
                Random random = new Random(SEED);
                for (int i = 0; i < EDITS; i++) {
                    Trial trial = session.project().getTrials().get(random.nextInt(TRIALS));
                    String note = note(random);
                    session.execute("note", edit -> edit.set(trial, ModelPackage.Literals.ENTRY__NOTE, note));
                    begun = System.nanoTime();
                    search.readAll();
                    follow.add(System.nanoTime() - begun);
                }
                Reference.reachabilityFence(search);
            }
        }
    }

    /** What the index holds of the memory, in bytes. */
    long held() {
        return held;
    }

    private void notes(ProjectSession session) {
        Random random = new Random(SEED);
        session.execute("notes", edit -> session.project().getTrials().forEach(trial -> edit.set(trial, ModelPackage.Literals.ENTRY__NOTE, note(random))));
    }

    /** Words of two or three syllables, 8 000 of them. */
    private static String note(Random random) {
        String[] syllables = {"ba", "ro", "di", "ka", "mu", "le", "so", "ti", "na", "po", "ve", "gu", "ra", "mi", "fo", "xe", "lu", "pi", "do", "sa"};
        StringBuilder note = new StringBuilder();
        for (int i = 0; i < WORDS_A_NOTE; i++) {
            int parts = 2 + random.nextInt(2);
            for (int p = 0; p < parts; p++) {
                note.append(syllables[random.nextInt(syllables.length)]);
            }
            note.append(' ');
        }
        return note.toString().strip();
    }

    private static long used() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
