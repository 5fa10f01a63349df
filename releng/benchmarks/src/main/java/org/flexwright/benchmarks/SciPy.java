package org.flexwright.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** The same work done by a script with SciPy, where that is installed. */
final class SciPy {
    private static final long PATIENCE_MINUTES = 5;

    private SciPy() {
    }

    /**
     * Runs a script that lies beside this class, with a file of its words in {@code work}.
     *
     * @return the lines it printed; empty when there is no Python with SciPy, or the script failed
     */
    static Optional<List<String>> run(Path work, String script, String... arguments) throws IOException, InterruptedException {
        Path file = work.resolve(script);
        try (InputStream in = SciPy.class.getResourceAsStream(script)) {
            Files.write(file, in.readAllBytes());
        }
        Path out = Files.createTempFile(work, "scipy", ".txt");
        List<String> command = new ArrayList<>(List.of("python3", file.toString()));
        command.addAll(List.of(arguments));
        try {
            Process process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
                process.destroy();
                return Optional.empty();
            }
            return process.exitValue() == 0 ? Optional.of(Files.readAllLines(out)) : Optional.empty();
        } catch (IOException noPython) {
            return Optional.empty();
        }
    }
}
