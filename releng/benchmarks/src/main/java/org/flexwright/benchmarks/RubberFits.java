package org.flexwright.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.flexwright.core.Watch;
import org.flexwright.core.rubber.Loading;
import org.flexwright.core.rubber.OgdenStarts;
import org.flexwright.core.rubber.RubberFit;
import org.flexwright.core.rubber.RubberForm;
import org.flexwright.core.rubber.Treloar;
import org.flexwright.core.rubber.Weighting;

/** Three Ogden terms on Treloar's 53 points in three loadings together, from 50 starts, beside the same work by SciPy from the same starts. */
final class RubberFits {
    private static final int RUNS = 15;
    private static final int THEIR_RUNS = 2;
    private static final int TERMS = 3;
    private static final double AIM_MS = 300;
    private static final double NANOS = 1e9;

    private final Path work;

    RubberFits(Path work) {
        this.work = work;
    }

    void run(Figures figures) throws IOException, InterruptedException {
        List<RubberFit.Point> points = Treloar.points();
        Series own = new Series();
        Series processor = new Series();
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        RubberFit fit = null;
        for (int i = 0; i < RUNS; i++) {
            long busy = threads.getCurrentThreadCpuTime();
            long begun = System.nanoTime();
            fit = RubberFit.of(RubberForm.OGDEN_3, Weighting.EQUAL, points, Watch.NONE).orElseThrow();
            own.add(System.nanoTime() - begun);
            processor.add(threads.getCurrentThreadCpuTime() - busy);
        }
        Path given = Files.write(work.resolve("points.csv"), points.stream().map(p -> free(p.loading()) + "," + p.stretch() + "," + p.stress()).toList());
        Path starts = Files.write(work.resolve("starts.csv"), OgdenStarts.all(TERMS).stream().map(RubberFits::row).toList());
        Optional<List<String>> scipy = SciPy.run(work, "rubber.py", given.toString(), starts.toString(), String.valueOf(THEIR_RUNS));
        if (scipy.isPresent()) {
            Series other = new Series();
            List<Double> values = new ArrayList<>();
            double rms = 0;
            for (String line : scipy.get()) {
                double value = Double.parseDouble(line.substring(line.indexOf(' ') + 1));
                switch (line.substring(0, line.indexOf(' '))) {
                    case "took" -> other.add((long) (value * NANOS));
                    case "rms" -> rms = value;
                    default -> values.add(value);
                }
            }
            double off = 0;
            for (int i = 0; i < values.size(); i++) {
                off = Math.max(off, Math.abs(values.get(i) / fit.coefficients().get(i).value() - 1));
            }
            figures.note(String.format(Locale.ROOT, "(beside SciPy: rms %.8f and %.8f MPa, coefficients differ by %.1e of their size at most; %d of %d starts ended there)", rms, fit.rms(), off, fit
                    .reached(), fit.starts()));
            figures.line("three Ogden terms, 50 starts, by SciPy", other);
        }
        figures.line("three Ogden terms on 53 points from 50 starts", own, AIM_MS);
        figures.line("the same, processor time", processor);
    }

    private static String row(double[] start) {
        return IntStream.range(0, start.length).mapToObj(i -> String.valueOf(start[i])).collect(Collectors.joining(","));
    }

    private static double free(Loading loading) {
        return switch (loading) {
            case UNIAXIAL -> -0.5;
            case EQUIBIAXIAL -> -2;
            case PLANAR -> -1;
        };
    }
}
