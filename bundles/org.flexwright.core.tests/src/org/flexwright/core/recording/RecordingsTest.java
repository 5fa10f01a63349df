package org.flexwright.core.recording;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.reading.ReadingPrinter;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.trial.Attachments;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.Censoring;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.Measurement;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Part;
import org.flexwright.model.Provenance;
import org.flexwright.model.Recording;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordingsTest {
    private static final RecordingKind KIND = new PressLike();
    private static final PropertyDef FORCE = new PropertyDef(PressLike.FORCE, "Force", QuantityKind.FORCE, false, Set.of(), "", Source.commonPractice());
    private static final PropertyCatalogue PROPERTIES = new PropertyCatalogue() {
        @Override
        public List<PropertyDef> all() {
            return List.of(FORCE);
        }

        @Override
        public Optional<PropertyDef> find(String id) {
            return all().stream().filter(p -> p.id().equals(id)).findFirst();
        }
    };
    private static final String CURVE = "Travel [mm];Force [N]\n0;0\n1;0,8\n2;0,4\n";
    @TempDir
    Path temp;
    private ProjectStore store;

    @BeforeEach
    void create() {
        store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "Ann", "1.0.0", List.of()));
    }

    private ProjectSession project() {
        ProjectSession s = store.create(temp.resolve("Dome.flexwright"), "Dome");
        Part part = ModelFactory.eINSTANCE.createPart();
        part.setCode("P1");
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setCode("T01");
        trial.getParts().add(part);
        s.execute("Add", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, trial));
        return s;
    }

    private static Part part(ProjectSession s) {
        return s.project().getTrials().getFirst().getParts().getFirst();
    }

    private Recording add(ProjectSession s, String text) throws IOException {
        Path file = Files.writeString(temp.resolve("press.csv"), text);
        return Recordings.add(s, part(s), KIND, file, Recordings.defaults(s.project(), KIND, TableGuess.of(file, KIND)), Watch.NONE);
    }

    @Test
    void aFileComesInUnchangedAsOneStepAndIsReadAgainAfterOpening() throws IOException {
        Path folder;
        try (ProjectSession s = project()) {
            Recording r = add(s, CURVE);
            Files.delete(temp.resolve("press.csv"));
            folder = s.folder();
            assertEquals("C1", r.getCode());
            assertEquals(CURVE, Files.readString(folder.resolve(r.getFile().getPath())));
            assertTrue(r.getFile().getPath().startsWith("curves/"), r.getFile().getPath());
            assertEquals(Attachments.sha256(CURVE.getBytes()), r.getFile().getSha256());
            s.undo();
            assertTrue(part(s).getRecordings().isEmpty() && s.project().getAttachments().isEmpty());
            s.redo();
            s.save();
        }
        try (ProjectSession s = store.open(folder)) {
            Recording r = part(s).getRecordings().getFirst();
            RecordingData data = Recordings.data(s, r, KIND, Watch.NONE);
            assertArrayEquals(new double[] { 0, 0.8, 0.4 }, data.find(ChannelRole.FORCE).orElseThrow().values());
            assertEquals(1, Recordings.look(s, r, KIND, Watch.NONE).marks().getFirst().position());
            Files.writeString(folder.resolve(r.getFile().getPath()), "3;0,2\n", StandardOpenOption.APPEND);
            RefusedException changed = assertThrows(RefusedException.class, () -> Recordings.data(s, r, KIND, Watch.NONE));
            assertEquals("file.changed", changed.sentence().key());
            Files.writeString(folder.resolve(r.getFile().getPath()), "no table any more");
            assertEquals("file.changed", assertThrows(RefusedException.class, () -> Recordings.data(s, r, KIND, Watch.NONE)).sentence().key());
            Files.delete(folder.resolve(r.getFile().getPath()));
            assertEquals("file.gone", assertThrows(RefusedException.class, () -> Recordings.data(s, r, KIND, Watch.NONE)).sentence().key());
        }
    }

    @Test
    void whatIsRefusedOrCancelledLeavesNothingBehind() throws IOException {
        try (ProjectSession s = project()) {
            assertThrows(RefusedException.class, () -> add(s, "Travel [mm];Force [N]\n0;0\n1;0,8\n2;NaN\n"));
            Path file = Files.writeString(temp.resolve("press.csv"), CURVE);
            ImportSettings settings = Recordings.defaults(s.project(), KIND, TableGuess.of(file, KIND));
            Watch cancelled = new Watch() {
                @Override
                public void done(long part, long whole) {
                    // not looked at
                }

                @Override
                public boolean cancelled() {
                    return true;
                }
            };
            assertThrows(CancellationException.class, () -> Recordings.add(s, part(s), KIND, file, settings, cancelled));
            assertTrue(part(s).getRecordings().isEmpty() && s.project().getAttachments().isEmpty());
            if (Files.exists(s.folder().resolve("curves"))) {
                try (Stream<Path> left = Files.list(s.folder().resolve("curves"))) {
                    assertEquals(List.of(), left.toList());
                }
            }
        }
    }

    @Test
    void whatWasSaidOnceIsOfferedAgainAsCopied() throws IOException {
        try (ProjectSession s = project()) {
            Path file = Files.writeString(temp.resolve("press.csv"), "A;B\n0;0\n1;0,8\n2;0,4\n");
            TableGuess guess = TableGuess.of(file, KIND);
            ImportSettings first = Recordings.defaults(s.project(), KIND, guess);
            assertEquals("column.missing", assertThrows(RefusedException.class, () -> Recordings.add(s, part(s), KIND, file, first, Watch.NONE)).sentence().key());
            PropertyKey said = ModelFactory.eINSTANCE.createPropertyKey();
            said.setDwell(3.0);
            Recordings.add(s, part(s), KIND, file, first.withDetails(said, Set.of()).withColumns(List.of(guess.columns().get(0).withRole(ChannelRole.TRAVEL).withUnit("mm"), guess
                    .columns().get(1).withRole(ChannelRole.FORCE).withUnit("mN"))), Watch.NONE);
            ImportSettings second = Recordings.defaults(s.project(), KIND, guess);
            assertEquals("mN", second.columns().get(1).unit());
            Recording r = Recordings.add(s, part(s), KIND, file, second, Watch.NONE);
            assertEquals(3.0, ((PropertyKey) r.getDetails()).getDwell());
            assertEquals(Origin.COPIED, Provenances.origin(r.getDetails(), ModelPackage.Literals.PROPERTY_KEY__DWELL));
            assertArrayEquals(new double[] { 0, 8e-4, 4e-4 }, Recordings.data(s, r, KIND, Watch.NONE).find(ChannelRole.FORCE).orElseThrow().values(), 1e-18);
            assertEquals("C2", r.getCode());
        }
    }

    @Test
    void resultsBecomeReadingsAndTakeThePlaceOfFormerOnes() throws IOException {
        try (ProjectSession s = project()) {
            Recording r = add(s, CURVE);
            Look look = Recordings.look(s, r, KIND, Watch.NONE);
            s.execute("Keep", e -> Recordings.keep(e, r, look.results(), PROPERTIES, null));
            s.execute("Keep", e -> Recordings.keep(e, r, look.results(), PROPERTIES, null));
            Measurement m = part(s).getMeasurements().getFirst();
            assertEquals(List.of(m), Recordings.kept(r));
            assertSame(r, m.getRecording());
            assertEquals(0.8, m.getReadings().getFirst().getValue(), 1e-12);
            Provenance from = Provenances.of(m.getReadings().getFirst(), ModelPackage.Literals.READING__VALUE).orElseThrow();
            assertEquals(Origin.MEASURED, from.getOrigin());
            assertEquals(0.005, from.getUncertainty(), 1e-15);
            assertTrue(from.getSource().contains("C1") && from.getSource().contains("press.csv"), from.getSource());
            assertEquals("keep.none", assertThrows(RefusedException.class, () -> s.execute("Keep", e -> Recordings.keep(e, r, look.results().subList(1, 2), PROPERTIES,
                    null))).sentence().key());
        }
    }

    @Test
    void aPlaceFarFromTheBeginningKeepsItsThousandth() {
        assertEquals("101.267", new FoundMark("impact-101266", "Impact", 101.26652, true, false).place());
        assertEquals("3600", new FoundMark("x", "Impact", 3600, true, false).place());
        assertEquals("1.235", new FoundMark("x", "Impact", 1.23456, true, false).place());
        assertEquals("-0.01234", new FoundMark("x", "Impact", -0.012344, true, false).place());
    }

    @Test
    void aResultIsSaidWithTheUnitAsItIsPrinted() {
        assertEquals("111 ± 2 °C", new RecordingResult("peak", "Hottest", null, 111.4, 2.0, "degC", Source.commonPractice()).words());
        assertEquals("> 5 N", new RecordingResult("peak", "Peak", null, 5, null, "N", Source.commonPractice(), Censoring.MORE_THAN).words());
        assertEquals("0.79", new RecordingResult("ratio", "Ratio", null, 0.79, null, "", Source.commonPractice()).words());
    }

    /** A kind that throws is a mistake of its plugin: one sentence that names it, with the cause for whoever wrote it. */
    @Test
    void aKindThatBreaksOffIsNamed() throws IOException {
        RuntimeException mistake = new IndexOutOfBoundsException("row 7 of 4");
        try (ProjectSession s = project()) {
            Recording r = add(s, CURVE);
            RefusedException said = assertThrows(RefusedException.class, () -> Recordings.look(s, r, new PressLike() {
                @Override
                public Look look(Recording recording, RecordingData data, Watch watch) {
                    throw mistake;
                }
            }, Watch.NONE));
            assertEquals("look.broken", said.sentence().key());
            assertTrue(said.getMessage().contains("C1") && said.getMessage().contains("test.press") && said.getMessage().contains("row 7 of 4"), said.getMessage());
            assertEquals(mistake, said.getCause());
            assertEquals("look.broken", assertThrows(RefusedException.class, () -> Recordings.look(s, r, new PressLike() {
                @Override
                public Look look(Recording recording, RecordingData data, Watch watch) {
                    return null;
                }
            }, Watch.NONE)).sentence().key());
            assertThrows(CancellationException.class, () -> Recordings.look(s, r, new PressLike() {
                @Override
                public Look look(Recording recording, RecordingData data, Watch watch) {
                    throw new CancellationException();
                }
            }, Watch.NONE), "stopped by a person is no mistake");
        }
    }

    /** Three drops heard in one recording are three readings on one piece, not three pieces and not the last one alone. */
    @Test
    void resultsOfOnePropertyAreReadingsOfOneMeasurement() throws IOException {
        try (ProjectSession s = project()) {
            Recording r = add(s, CURVE);
            RecordingResult first = Recordings.look(s, r, KIND, Watch.NONE).results().getFirst();
            RecordingResult second = new RecordingResult("again", first.title(), first.property(), first.value() + 100, 7.0, first.unit(), first.source());
            s.execute("Keep", e -> Recordings.keep(e, r, List.of(first, second), PROPERTIES, null));
            Measurement m = Recordings.kept(r).getFirst();
            assertEquals(1, Recordings.kept(r).size());
            assertEquals(2, m.getReadings().size());
            assertEquals(0.1, m.getReadings().get(1).getValue() - m.getReadings().get(0).getValue(), 1e-12);
            assertEquals("0.9 N", ReadingPrinter.print(FORCE, m.getReadings().get(1)), "two digits of its band of 0.007, and no more");
            m.getReadings().get(1).setValue(0.923456);
            assertEquals("0.9235 N", ReadingPrinter.print(FORCE, m.getReadings().get(1)));
            m.getReadings().get(1).setTypedAs("0.923456 N");
            assertEquals("0.923456 N", ReadingPrinter.print(FORCE, m.getReadings().get(1)), "what was typed stays");
            assertEquals(0.007, Provenances.of(m.getReadings().get(1), ModelPackage.Literals.READING__VALUE).orElseThrow().getUncertainty(), 1e-12);
        }
    }

    @Test
    void marksAreSetLeftOutAndForgotten() throws IOException {
        try (ProjectSession s = project()) {
            Recording r = add(s, CURVE);
            s.execute("Mark", e -> Recordings.mark(e, r, "peak", 1.5));
            assertTrue(Recordings.look(s, r, KIND, Watch.NONE).marks().getFirst().byHand());
            s.execute("Leave out", e -> Recordings.leaveOut(e, r, "peak", "knocked"));
            s.execute("Count", e -> Recordings.leaveOut(e, r, "peak", null));
            assertNull(Recordings.mark(r, "peak").orElseThrow().getLeftOut());
            s.execute("Back", e -> Recordings.unmark(e, r, "peak"));
            assertTrue(r.getMarks().isEmpty());
            assertEquals("mark.why", assertThrows(RefusedException.class, () -> s.execute("x", e -> Recordings.leaveOut(e, r, "peak", " "))).sentence().key());
            assertTrue(r.getMarks().isEmpty(), "nothing half");
        }
    }

    /** However long a curve is and whichever stretch is drawn, no drawn stretch is lower than its highest row or higher than its lowest. */
    @Test
    void thinningKeepsEveryPeak() {
        Random random = new Random(5);
        for (int n : new int[] { 1, 2, 3, 100, 101, 5000 }) {
            double[] x = IntStream.range(0, n).mapToDouble(i -> i * 0.01).toArray();
            double[] y = IntStream.range(0, n).mapToDouble(i -> random.nextGaussian() + (i == n / 3 ? 50 : 0) - (i == n / 2 ? 50 : 0)).toArray();
            for (int points : new int[] { 2, 7, 100 }) {
                int[] rows = Thinning.rows(y, 0, n, points);
                assertTrue(rows.length <= points + 3, n + " " + points + " " + rows.length);
                assertEquals(IntStream.range(0, n).mapToDouble(i -> y[i]).max().orElseThrow(), IntStream.of(rows).mapToDouble(i -> y[i]).max().orElseThrow());
                assertEquals(IntStream.range(0, n).mapToDouble(i -> y[i]).min().orElseThrow(), IntStream.of(rows).mapToDouble(i -> y[i]).min().orElseThrow());
                assertEquals(0, rows[0]);
                assertEquals(n - 1, rows[rows.length - 1]);
                assertTrue(IntStream.range(1, rows.length).allMatch(i -> rows[i] > rows[i - 1]));
            }
            CurvePlot plot = new CurvePlot("p", "P", true, "x", "mm", "y", "N", List.of(new CurvePlot.Curve("c", x, y)));
            PlotModel part = plot.part(10, 20, 50);
            assertEquals(10, part.x().min());
            List<PlotModel.Point> drawn = part.series().getFirst().points();
            assertTrue(drawn.stream().allMatch(p -> p.x() >= 10 && p.x() <= 20));
            if (n == 5000) {
                assertEquals(IntStream.rangeClosed(1000, 2000).mapToDouble(i -> y[i]).max().orElseThrow(), drawn.stream().mapToDouble(PlotModel.Point::y).max().orElseThrow());
                assertTrue(drawn.size() <= 60);
            }
        }
        CurvePlot sparse = new CurvePlot("p", "P", true, "x", "mm", "y", "N", List.of(new CurvePlot.Curve("c", new double[] { 0, 100 }, new double[] { 0, 10 })));
        assertEquals(List.of(PlotModel.Point.of(20, 2), PlotModel.Point.of(30, 3)), sparse.part(20, 30, 10).series().getFirst().points());
    }
}
