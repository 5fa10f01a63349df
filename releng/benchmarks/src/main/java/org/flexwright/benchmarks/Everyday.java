package org.flexwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Supplier;

import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.ModelPackage;
import org.flexwright.report.Report;

/** What a person waits for in a project of usual size: an edit, findings, side by side, the report. */
final class Everyday {

    private static final int WARM_UP = 3;
    private static final int RUNS = 7;

    private final Registries registries;
    private final Path folder;
    private final int trials;
    private int edits;

    /** @param trials how many the project holds */
    Everyday(Registries registries, Path work, int trials) {
        this.registries = registries;
        this.folder = work.resolve("trials-" + trials);
        this.trials = trials;
    }

    void run(Figures figures) throws IOException {
        Files.createDirectories(folder);
        Path project = Projects.example(registries, folder, trials);
        try (ProjectSession session = Projects.store(registries).open(project)) {
            String of = " of " + session.project().getTrials().size() + " trials";
            figures.line("an edit, on the disk when it returns", measured(() -> edit(session)));
            figures.line("findings" + of, measured(() -> registries.findings().check(session.project(), Instant.now())));
            figures.line("side by side" + of, measured(() -> Comparison.of(session.project(), registries)));
            figures.line("report" + of, measured(() -> Report.html(session.project(), registries, session.folder(), Instant.now(), "bench")));
        }
    }

    private String edit(ProjectSession session) {
        edits++;
        String title = "Dome " + edits;
        session.execute("title", edit -> edit.set(edit.project(), ModelPackage.Literals.PROJECT__TITLE, title));
        return title;
    }

    private static Series measured(Supplier<?> work) {
        Series series = new Series();
        for (int i = 0; i < WARM_UP + RUNS; i++) {
            long begun = System.nanoTime();
            Object result = work.get();
            long taken = System.nanoTime() - begun;
            if (result == null) {
                throw new IllegalStateException("What is measured gave nothing.");
            }
            if (i >= WARM_UP) {
                series.add(taken);
            }
        }
        return series;
    }
}
