package org.flexwright.testing.motion;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;

import org.flexwright.core.Watch;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertySet;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.recording.SoundWriter;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Part;
import org.flexwright.model.Recording;
import org.flexwright.model.Trial;
import org.flexwright.testing.TestingProperties;
import org.flexwright.testing.data.BounceDetails;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole way of a sound: from the file of a recorder to readings of a part. */
class BounceFromFileToReadingTest {
    private static final BounceKind KIND = new BounceKind();
    @TempDir
    private Path folder;
    private Registries registries;
    private ProjectStore store;
    private Part part;

    @BeforeEach
    void plugins() {
        registries = new Registries(List.of(), List.of(), List.of(), List.of(), List.<PropertySet>of(new TestingProperties()), List.of(), List.of(), List.of(KIND));
        store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "Ann", "1.0.0", registries.packages()));
    }

    private ProjectSession project() {
        ProjectSession session = store.create(folder.resolve("Dome.flexwright"), "Dome");
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode("T01");
        part = ModelFactory.eINSTANCE.createPart();
        part.setCode("P1");
        trial.getParts().add(part);
        session.execute("Add", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, trial));
        return session;
    }

    /** Two drops from 300 mm at 0.65, in one of two channels. */
    private Path sound(SoundWriter.Sample sample, int rate) throws IOException {
        MadeSound sound = new MadeSound(rate, 5.5, 7).room(0.003, 0.01, 0.01);
        for (double begin : new double[] {0.5, 3.1}) {
            double[] times = MadeSound.times(begin, 0.3, 0.65, 4);
            for (int i = 0; i < times.length; i++) {
                sound.blow(times[i], 0.5 * Math.pow(0.65, i));
            }
        }
        Path file = folder.resolve("drop.wav");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            SoundWriter.write(out, sample, rate, sound.samples, new MadeSound(rate, 5.5, 8).room(0.003, 0, 0).samples);
        }
        return file;
    }

    private Recording add(ProjectSession session, Path file) {
        var settings = Recordings.defaults(session.project(), KIND, null);
        ((BounceDetails) settings.details()).setDrop(300.0);
        return Recordings.add(session, part, KIND, file, settings, Watch.NONE);
    }

    @Test
    void twoDropsBecomeTwoReadingsOfOnePart() throws IOException {
        for (SoundWriter.Sample sample : List.of(SoundWriter.Sample.WHOLE_24, SoundWriter.Sample.FLOAT_32, SoundWriter.Sample.WHOLE_8)) {
            Path file = sound(sample, sample == SoundWriter.Sample.WHOLE_8 ? 8_000 : 44_100);
            try (ProjectSession session = project()) {
                Recording recording = add(session, file);
                Look look = Recordings.look(session, recording, KIND, Watch.NONE);
                session.execute("Keep", edit -> Recordings.keep(edit, recording, look.results(), registries.properties(), null));
                Measurement drop = part.getMeasurements().stream().filter(m -> TestingProperties.REBOUND_DROP.equals(m.getKey().getProperty())).findFirst().orElseThrow();
                assertEquals(2, drop.getReadings().size(), "two readings of one part, never two parts");
                drop.getReadings().forEach(r -> {
                    var from = Provenances.of(r, ModelPackage.Literals.READING__VALUE).orElseThrow();
                    assertEquals(42.25, r.getValue(), from.getUncertainty());
                    assertEquals(Origin.MEASURED, from.getOrigin());
                });
                assertEquals(2, part.getMeasurements().size(), "own drop and second bounce, apart");
                assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(session.folder().resolve(recording.getFile().getPath())));
            }
            delete(folder.resolve("Dome.flexwright"));
        }
    }

    @Test
    void whatIsCutOffChangesNothing() throws IOException {
        Path file = sound(SoundWriter.Sample.WHOLE_16, 16_000);
        Files.write(file, Arrays.copyOf(Files.readAllBytes(file), 9_000));
        try (ProjectSession session = project()) {
            assertTrue(assertThrows(RefusedException.class, () -> add(session, file)).getMessage().startsWith("drop.wav is cut off: 5.5 s are announced"));
            assertTrue(part.getRecordings().isEmpty() && session.project().getAttachments().isEmpty());
            Path curves = session.folder().resolve("curves");
            assertTrue(!Files.exists(curves) || Files.list(curves).findAny().isEmpty(), "nothing is left half");
        }
    }

    private static void delete(Path tree) throws IOException {
        try (var all = Files.walk(tree)) {
            for (Path p : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(p);
            }
        }
    }
}
