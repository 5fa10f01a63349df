package org.flexwright.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs a class of ours in a Java of its own and gives back its lines. */
final class Beside {
    private static final long PATIENCE_SECONDS = 300;

    private Beside() {
    }

    /** The lines a class of ours prints, in a Java of its own with so much memory and the options of the product's script. */
    static List<String> java(Class<?> main, String memory, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx" + memory,
                "-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(List.of(arguments));
        return lines(command);
    }

    private static List<String> lines(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        List<String> lines = process.inputReader().lines().toList();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
            throw new IOException("It did not end well: " + lines);
        }
        return lines;
    }
}
