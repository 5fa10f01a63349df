package org.flexwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

import org.flexwright.core.bench.Bench;
import org.flexwright.core.bench.BenchPlace;
import org.flexwright.core.bench.BenchTaps;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Trial;

/** What a gloved finger waits for: a tap at the bench until it is on the disk and its next screen is made. */
final class Taps {
    /** Aims of the bench view, ms. */
    private static final double MEDIAN_AIM = 30;
    private static final double MOST_AIM = 100;
    private static final int WARM_UP = 20;
    private static final int TAPS = 500;

    private final Registries registries;
    private final Path folder;
    private final int trials;

    /** @param trials how many the project holds */
    Taps(Registries registries, Path work, int trials) {
        this.registries = registries;
        this.folder = work.resolve("taps-" + trials);
        this.trials = trials;
    }

    void run(Figures figures) throws IOException {
        Files.createDirectories(folder);
        Path project = Projects.example(registries, folder, trials);
        Bench bench = new Bench(registries);
        try (ProjectSession session = Projects.store(registries).open(project)) {
            Trial trial = pour(session);
            String weigh = bench.places(trial, Instant.now()).stream().filter(p -> p.part() == BenchPlace.Part.USE).map(BenchPlace::key).findFirst().orElseThrow();
            Series flushed = new Series();
            Series shown = new Series();
            for (int i = 0; i < WARM_UP + TAPS; i++) {
                long begun = System.nanoTime();
                BenchTaps.tap(session, bench, trial, Instant.now(), weigh, i % 2 == 0 ? "weigh" : "odd", i % 2 == 0 ? "0.01" : "");
                long onDisk = System.nanoTime();
                if (bench.view(trial, Instant.now()).taps().isEmpty()) {
                    throw new IllegalStateException("What is measured gave nothing.");
                }
                if (i >= WARM_UP) {
                    flushed.add(onDisk - begun);
                    shown.add(System.nanoTime() - begun);
                }
            }
            String of = " of " + session.project().getTrials().size() + " trials";
            figures.shares("a tap at the bench until it is on the disk" + of, flushed, MEDIAN_AIM, MOST_AIM);
            figures.shares("the same, and its next screen made" + of, shown, MEDIAN_AIM, MOST_AIM);
        }
    }

    private static Trial pour(ProjectSession session) {
        Trial made = session.project().getTrials().stream().filter(t -> "T08".equals(t.getCode())).findFirst().orElseThrow();
        session.execute("Copy", edit -> Trials.copy(edit, made, null, null));
        return session.project().getTrials().getLast();
    }
}
