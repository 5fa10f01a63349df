package org.flexwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.flexwright.core.find.Finding;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.ModelPackage;
import org.flexwright.report.Report;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** What a person waits for in a project: opening, an edit, saving, findings, side by side, the report. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ProjectBenchmark {

    /** How many trials the project holds: the example's own, and a busy workshop's years. */
    @Param({ "9", "300" })
    public int trials;

    private Registries registries;
    private Path folder;
    private Path project;
    private ProjectSession session;
    private int edits;

    /** Builds the project and opens it. */
    @Setup
    public void open() throws IOException, ReflectiveOperationException {
        registries = Components.registries();
        folder = Files.createTempDirectory("flexwright-bench");
        project = Projects.example(registries, folder, trials);
        session = Projects.store(registries).open(project);
    }

    /** Removes what the run made. */
    @TearDown
    public void close() throws IOException {
        session.close();
        Projects.delete(folder);
    }

    /** Reads the project from disk beside the open one. */
    @Benchmark
    public String openReadOnly() {
        try (ProjectSession other = Projects.store(registries).openReadOnly(project)) {
            return other.project().getTitle();
        }
    }

    /** One field typed, journalled and flushed. */
    @Benchmark
    public void edit() {
        edits++;
        session.execute("Title", edit -> edit.set(edit.project(), ModelPackage.Literals.PROJECT__TITLE, "Dome " + edits));
    }

    /** One edit and the whole project saved. */
    @Benchmark
    public void editAndSave() {
        edit();
        session.save();
    }

    /** All rules on all trials. */
    @Benchmark
    public List<Finding> findings() {
        return registries.findings().check(session.project(), Instant.now());
    }

    /** All trials against the target sheet. */
    @Benchmark
    public Comparison sideBySide() {
        return Comparison.of(session.project(), registries);
    }

    /** The whole record as one page. */
    @Benchmark
    public String report() {
        return Report.html(session.project(), registries, session.folder(), Instant.now(), "bench");
    }
}
