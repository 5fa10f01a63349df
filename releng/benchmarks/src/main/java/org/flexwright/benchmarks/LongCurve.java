package org.flexwright.benchmarks;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.flexwright.core.Watch;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingData;
import org.flexwright.core.recording.RecordingFile;
import org.flexwright.core.recording.RecordingPlot;
import org.flexwright.core.recording.Recordings;
import org.flexwright.core.recording.TableGuess;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.core.view.PlotModel;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recording;
import org.flexwright.testing.curve.PressKind;
import org.flexwright.testing.data.TestingDataPackage;

/** A curve of two million rows taken into a project, read again and drawn, in a Java of its own that has 512 MiB; beside NumPy where it is there. */
final class LongCurve {
    static final int ROWS = 2_000_000;
    private static final int RUNS = 5;
    private static final int POINTS = 1600;
    private static final int ZOOMS = 40;
    private static final long SEED = 20_261_129;

    private LongCurve() {
    }

    /** Writes the curve: a press of twenty minutes with 1.7 kHz, invented, the same each time. */
    static void write(Path file) throws IOException {
        Random random = new Random(SEED);
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("Time [s],Travel [mm],Force [N]\n");
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < ROWS; i++) {
                double travel = 6.0 * i / ROWS;
                double force = (travel < 2 ? Math.sin(Math.PI / 4 * travel) : 0.4 + 0.6 * Math.pow(4 - Math.min(travel, 4), 2) / 4 + Math.max(0, travel - 4)) * 0.8 + random.nextGaussian()
                        * 0.002;
                line.setLength(0);
                fixed(line, i * 600L, 6).append(',');
                fixed(line, Math.round(travel * 1e6), 6).append(',');
                out.write(fixed(line, Math.round(force * 1e5), 5).append('\n').toString());
            }
        }
    }

    private static StringBuilder fixed(StringBuilder line, long units, int places) {
        String digits = String.format("%0" + (places + 1) + "d", Math.abs(units));
        return line.append(units < 0 ? "-" : "").append(digits, 0, digits.length() - places).append('.').append(digits, digits.length() - places, digits.length());
    }

    /**
     * Measures in this very Java.
     *
     * @param arguments the file and a folder to work in
     */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[0]);
        Path work = Path.of(arguments[1]);
        PressKind kind = new PressKind();
        ProjectStore store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "bench", "1.0.0", List.of(new DetailsPackage(TestingDataPackage.eINSTANCE, "org.flexwright.testing", "1.0.0"))));
        Series add = new Series();
        Series again = new Series();
        Series look = new Series();
        Series zoom = new Series();
        Look seen = null;
        RecordingData data = null;
        for (int run = 0; run < RUNS; run++) {
            try (ProjectSession session = store.create(work.resolve("curve" + run + ".flexwright"), "bench")) {
                ControlPiece piece = ModelFactory.eINSTANCE.createControlPiece();
                session.execute("piece", edit -> edit.add(edit.project(), ModelPackage.Literals.PROJECT__CONTROL_PIECES, piece));
                data = null;
                seen = null;
                long begun = System.nanoTime();
                Recording recording = Recordings.add(session, piece, kind, file, Recordings.defaults(session.project(), kind, TableGuess.of(file, kind)), Watch.NONE);
                add.add(System.nanoTime() - begun);
                RecordingFile raw = RecordingFile.of(session.folder(), recording, kind);
                begun = System.nanoTime();
                data = raw.data(Watch.NONE);
                again.add(System.nanoTime() - begun);
                begun = System.nanoTime();
                seen = raw.look(data, Watch.NONE);
                look.add(System.nanoTime() - begun);
                RecordingPlot plot = seen.plots().getFirst();
                for (int i = 0; i < ZOOMS; i++) {
                    double half = 3 * Math.pow(0.85, i);
                    begun = System.nanoTime();
                    PlotModel drawn = plot.part(2 - half / 2, 2 + half, POINTS);
                    zoom.add(System.nanoTime() - begun);
                    if (drawn.series().isEmpty()) {
                        throw new IllegalStateException("Nothing is drawn.");
                    }
                }
            }
        }
        double[] force = data.find(ChannelRole.FORCE).orElseThrow().values();
        double sum = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (double f : force) {
            sum += f;
            highest = Math.max(highest, f);
        }
        double drawnHighest = seen.plots().getFirst().whole(POINTS).series().stream().flatMap(s -> s.points().stream()).mapToDouble(PlotModel.Point::y).max().orElseThrow();
        double peak = seen.results().stream().filter(r -> r.id().equals("peak-force")).findFirst().orElseThrow().value();
        System.out.printf(Locale.ROOT, "%d %.17g %.17g %.17g %.17g%n", data.rows(), sum, highest, drawnHighest, peak);
        for (Series series : List.of(add, again, look, zoom)) {
            System.out.println(series);
        }
        System.out.println(Runtime.getRuntime().maxMemory());
    }
}
