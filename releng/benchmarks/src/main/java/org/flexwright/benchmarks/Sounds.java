package org.flexwright.benchmarks;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

import org.flexwright.core.Watch;
import org.flexwright.core.recording.FoundMark;
import org.flexwright.core.recording.Look;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.recording.SoundFile;
import org.flexwright.core.recording.SoundWriter;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.ModelFactory;

/** Ten minutes of made sound at 48 kHz with a drop every six seconds, read from its file and searched, beside the same work by SciPy. */
final class Sounds {
    private static final int RATE = 48_000;
    private static final int SECONDS = 600;
    private static final double BETWEEN = 6;
    private static final int IMPACTS = 5;
    private static final double FIRST_FLIGHT = 0.4;
    private static final double SHARE = 0.7;
    private static final double HISS = 0.003;
    private static final double HUM = 0.02;
    private static final long SEED = 20_261_128;
    private static final int RUNS = 7;
    private static final double SAME = 0.005;
    private static final double AIM_MS = 1000;
    private static final double MILLI = 1000;
    private static final double NANOS = 1e9;
    private static final String KIND = "testing.bounce";

    private final RecordingKind kind;
    private final Path work;
    private final List<Double> truth = new ArrayList<>();

    Sounds(Registries registries, Path work) {
        this.kind = registries.findRecordingKind(KIND).orElseThrow();
        this.work = work;
    }

    void run(Figures figures) throws IOException, InterruptedException {
        Path file = work.resolve("ten-minutes.wav");
        make(file);
        Series series = new Series();
        Series processor = new Series();
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        Look look = null;
        for (int i = 0; i < RUNS; i++) {
            long busy = threads.getCurrentThreadCpuTime();
            long begun = System.nanoTime();
            look = kind.look(ModelFactory.eINSTANCE.createRecording(), SoundFile.open(file).read(Watch.NONE), Watch.NONE);
            series.add(System.nanoTime() - begun);
            processor.add(threads.getCurrentThreadCpuTime() - busy);
        }
        List<Double> found = look.marks().stream().map(FoundMark::position).toList();
        figures.note(String.format(Locale.ROOT, "(a sound with %d impacts: %s)", truth.size(), against(truth, found)));
        Optional<List<String>> scipy = SciPy.run(work, "sound.py", file.toString(), String.valueOf(RUNS));
        Series other = new Series();
        if (scipy.isPresent()) {
            List<Double> theirs = new ArrayList<>();
            for (String line : scipy.get()) {
                double value = Double.parseDouble(line.substring(line.indexOf(' ') + 1));
                if (line.startsWith("impact ")) {
                    theirs.add(value);
                } else {
                    other.add((long) (value * NANOS));
                }
            }
            figures.note("(beside SciPy: " + against(theirs, found) + ")");
            figures.line("the same by SciPy", other);
        }
        figures.line("10 minutes of 48 kHz sound, read and searched", series, AIM_MS);
        figures.line("the same, processor time", processor);
        Files.delete(file);
    }

    /** How many of them were found, and how far off at most. */
    private static String against(List<Double> wanted, List<Double> found) {
        int same = 0;
        double most = 0;
        for (double t : wanted) {
            double off = found.stream().mapToDouble(f -> Math.abs(f - t)).min().orElse(Double.POSITIVE_INFINITY);
            if (off <= SAME) {
                same++;
                most = Math.max(most, off);
            }
        }
        return String.format(Locale.ROOT, "%d of %d agree, off by %.3f ms at most; %d found in all", same, wanted.size(), MILLI * most, found.size());
    }

    private void make(Path file) throws IOException {
        double[] sound = new double[RATE * SECONDS];
        Random random = new Random(SEED);
        for (int i = 0; i < sound.length; i++) {
            sound[i] = HISS * random.nextGaussian() + HUM * Math.sin(2 * Math.PI * 50 * i / RATE);
        }
        for (double begin = 1; begin + BETWEEN < SECONDS; begin += BETWEEN) {
            double at = begin + random.nextDouble();
            double flight = FIRST_FLIGHT;
            for (int n = 0; n < IMPACTS; n++) {
                truth.add(at);
                blow(sound, at, 0.5 * Math.pow(SHARE, n));
                at += flight;
                flight *= SHARE;
            }
        }
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            SoundWriter.write(out, SoundWriter.Sample.WHOLE_16, RATE, sound);
        }
    }

    private static void blow(double[] sound, double at, double strength) {
        for (int i = (int) Math.ceil(at * RATE); i < Math.min(sound.length, (at + 0.1) * RATE); i++) {
            double t = i / (double) RATE - at;
            sound[i] += strength * (0.6 * Math.exp(-t / 0.003) * Math.sin(2 * Math.PI * 1400 * t) + 0.4 * Math.exp(-t / 0.014) * Math.sin(2 * Math.PI * 220 * t));
        }
    }
}
