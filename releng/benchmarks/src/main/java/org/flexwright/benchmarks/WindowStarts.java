package org.flexwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Starts windows and has the probe of the fixture tell when they were painted. */
final class WindowStarts {

    private static final long NANOS_PER_MICRO = 1000;

    private final Path dropins;
    private final Path result;

    /** @param dropins folder with the fixture's jar */
    WindowStarts(Path dropins, Path work) {
        this.dropins = dropins;
        this.result = work.resolve("painted.txt");
    }

    /** From before the start of the program until its window was painted, in ns. */
    long painted(Installation program, String... arguments) throws IOException, InterruptedException {
        long begun = ChronoUnit.MICROS.between(Instant.EPOCH, Instant.now());
        List<Long> painted = figures("painted", start(program, Map.of(), arguments));
        return (painted.getFirst() - begun) * NANOS_PER_MICRO;
    }

    /** Scrolls through the longest list of the window's trees. */
    Series scroll(Installation program, String... arguments) throws IOException, InterruptedException {
        Series pages = new Series();
        figures("page", start(program, Map.of("FLEXWRIGHT_BENCH_SCROLL", "1"), arguments)).forEach(pages::add);
        return pages;
    }

    private List<String> start(Installation program, Map<String, String> more, String... arguments) throws IOException, InterruptedException {
        Files.deleteIfExists(result);
        Map<String, String> environment = new HashMap<>(more);
        environment.put("FLEXWRIGHT_PLUGINS", dropins.toString());
        environment.put("FLEXWRIGHT_BENCH_RESULT", result.toString());
        program.run(environment, arguments);
        if (Files.notExists(result)) {
            throw new IllegalStateException("The window of " + program.folder() + " ended and nobody told when it was painted.");
        }
        return Files.readAllLines(result);
    }

    private static List<Long> figures(String name, List<String> lines) {
        return lines.stream().filter(line -> line.startsWith(name + " ")).map(line -> Long.valueOf(line.substring(name.length() + 1))).toList();
    }
}
