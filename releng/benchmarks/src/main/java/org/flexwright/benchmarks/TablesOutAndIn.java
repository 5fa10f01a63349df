package org.flexwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Random;

import org.flexwright.core.exchange.CsvExport;
import org.flexwright.core.exchange.TableImport;
import org.flexwright.core.Watch;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Part;
import org.flexwright.model.Project;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.model.Weighing;

/** Writing a project of many trials as tables into a folder, and making a project of them again; its values are invented. */
final class TablesOutAndIn {
    static final int TRIALS = 10_000;
    private static final int STEPS = 4;
    private static final int PARTS = 2;
    private static final int READINGS = 3;
    private static final int WARM_UP = 2;
    private static final int RUNS = 5;

    private final Path work;
    private final ProjectStore store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "bench", "bench", List.of()));
    private final Random random = new Random(1);

    /** Out and in again. */
    final Series both = new Series();
    /** Out alone. */
    final Series out = new Series();
    /** Rows of all tables. */
    long rows;

    TablesOutAndIn(Path work) {
        this.work = work;
    }

    void run() throws IOException {
        ProjectStore.Draft draft = store.draft();
        fill(draft.project());
        try (ProjectSession session = store.create(work.resolve("Many.flexwright"), draft)) {
            for (int i = 0; i < WARM_UP + RUNS; i++) {
                Path tables = work.resolve("tables" + i);
                System.gc();
                long begun = System.nanoTime();
                rows = new CsvExport(List.of()).write(session.project(), session.unknown(), tables, Watch.NONE);
                long written = System.nanoTime();
                Path again = work.resolve("Again" + i + ".flexwright");
                TableImport.create(store, List.of(), tables, again, Watch.NONE).close();
                long end = System.nanoTime();
                if (Files.mismatch(session.folder().resolve("project.xmi"), again.resolve("project.xmi")) >= 0) {
                    throw new IllegalStateException("What came in is not what went out.");
                }
                if (i >= WARM_UP) {
                    both.add(end - begun);
                    out.add(written - begun);
                }
            }
        }
    }

    private void fill(Project project) {
        MaterialGrade grade = ModelFactory.eINSTANCE.createMaterialGrade();
        grade.setId("_a");
        grade.setCode("A");
        project.setId("_project");
        project.setTitle("Many trials (invented)");
        project.getGrades().add(grade);
        for (int t = 0; t < TRIALS; t++) {
            Trial trial = ModelFactory.eINSTANCE.createTrial();
            trial.setCode("T" + t);
            trial.setTitle("Cast number " + t);
            trial.setIdea("One factor changed at a time, the others as before.");
            for (int s = 0; s < STEPS; s++) {
                Step step = ModelFactory.eINSTANCE.createStep();
                step.setKind("demo.step" + s);
                step.setTitle("Step " + s);
                step.setStartedAt(Instant.ofEpochSecond(1_700_000_000L + t));
                trial.getSteps().add(step);
            }
            for (int u = 0; u < 2; u++) {
                MaterialUse use = ModelFactory.eINSTANCE.createMaterialUse();
                use.setGrade(grade);
                Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
                weighing.setNet(random.nextInt(1000) / 100.0);
                use.getWeighings().add(weighing);
                trial.getSteps().get(0).getUses().add(use);
            }
            for (int p = 0; p < PARTS; p++) {
                Part part = ModelFactory.eINSTANCE.createPart();
                part.setCode("P" + p);
                Measurement measurement = ModelFactory.eINSTANCE.createMeasurement();
                PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
                key.setProperty("testing.shore-a");
                measurement.setKey(key);
                for (int r = 0; r < READINGS; r++) {
                    Reading reading = ModelFactory.eINSTANCE.createReading();
                    reading.setValue(random.nextInt(1000) / 10.0);
                    reading.setTypedAs(reading.getValue().toString());
                    measurement.getReadings().add(reading);
                }
                part.getMeasurements().add(measurement);
                trial.getParts().add(part);
            }
            project.getTrials().add(trial);
        }
    }
}
