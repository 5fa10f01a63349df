package org.flexwright.benchmarks;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.trial.BenchSessions;
import org.flexwright.core.trial.Measurements;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Instrument;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Reading;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;

/**
 * A project larger than any workshop's, with all steps of a cast and their details. Its values are invented and are the same each time it
 * is made; only the ids differ. 50 readings a trial: five parts, two properties, five readings each.
 */
final class BigProject {

    static final int TRIALS = 2000;
    static final int READINGS_A_TRIAL = 50;
    private static final int PARTS = 5;
    private static final int READINGS = 5;
    private static final int TRIALS_AN_EDIT = 100;
    private static final int TRIALS_A_SESSION = 50;
    private static final long SEED = 20_260_301;
    private static final Instant NOW = Instant.parse("2026-03-01T09:30:00Z");

    private final Registries registries;
    private final ProcessKind route;
    private final ProjectStore store;
    private final Random random = new Random(SEED);
    private Instrument durometer;
    private Session session;

    BigProject(Registries registries) {
        this.registries = registries;
        route = registries.findProcessKind("moulding.cast").orElseThrow();
        store = new ProjectStore(
                new StoreContext(ModelThread.current(), Clock.fixed(NOW, ZoneOffset.UTC), "Benchmark", "1.0.0", registries.packages()));
    }

    /** A store that knows all the classes of the project. */
    ProjectStore store() {
        return store;
    }

    /** Makes the project and saves it. */
    void make(Path folder, int trials) {
        try (ProjectSession project = store.create(folder, "A large project (invented)")) {
            project.execute("gauge", this::gauge);
            for (int i = 0; i < trials; i += TRIALS_AN_EDIT) {
                int first = i;
                project.execute("trials", edit -> IntStream.range(first, Math.min(first + TRIALS_AN_EDIT, trials)).forEach(n -> trial(edit, n)));
            }
            project.save();
        }
    }

    private void gauge(Edit edit) {
        durometer = ModelFactory.eINSTANCE.createInstrument();
        durometer.setName("Durometer A (invented)");
        durometer.setUnit("Shore A");
        durometer.setResolution(0.5);
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__INSTRUMENTS, durometer);
    }

    private void trial(Edit edit, int number) {
        if (number % TRIALS_A_SESSION == 0) {
            session = ModelFactory.eINSTANCE.createSession();
            session.setRoomC(tenths(18, 26));
            session.setRoomRh(tenths(35, 60));
            BenchSessions.add(edit, session);
        }
        Trial trial = Trials.create(edit, route, registries::findStepKind, null, "Cast number " + (number + 1), "One factor changed at a time.");
        trial.getSteps().forEach(step -> {
            edit.set(step, ModelPackage.Literals.STEP__SESSION, session);
            Trials.start(edit, step);
            Trials.finish(edit, step);
        });
        for (int p = 0; p < PARTS; p++) {
            Part part = Trials.addPart(edit, trial, null, PieceKind.PART, tenths(1, 2), NOW.minus(Duration.ofDays(2)));
            measure(edit, part, "testing.shore-a", 30, 60);
            measure(edit, part, "testing.peak-force", 2, 12);
        }
    }

    private void measure(Edit edit, Part part, String property, int low, int high) {
        PropertyKey key = ModelFactory.eINSTANCE.createPropertyKey();
        key.setProperty(property);
        key.setSpot("crown");
        key.setDwell(3.0);
        List<Reading> readings = IntStream.range(0, READINGS).mapToObj(i -> reading(low, high)).toList();
        Measurements.add(edit, part, key, readings, session, durometer, NOW.minus(Duration.ofHours(1)));
    }

    private Reading reading(int low, int high) {
        Reading reading = ModelFactory.eINSTANCE.createReading();
        reading.setValue(tenths(low, high));
        reading.setTypedAs(reading.getValue().toString());
        reading.setAt(NOW.minus(Duration.ofSeconds(random.nextInt(3600))));
        return reading;
    }

    private double tenths(int low, int high) {
        return random.nextInt(10 * low, 10 * high) / 10.0;
    }
}
