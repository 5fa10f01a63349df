package org.flexwright.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A program in a folder, started by its own script in a home of its own.
 *
 * @param folder where the program is
 * @param home   where its cache and data go
 */
record Installation(Path folder, Path home) {

    private static final long PATIENCE_SECONDS = 180;
    private static final String FIXTURE = "org.flexwright.tests.emptywindow";
    /** What the drop-in mechanism needs; every other bundle of ours stays away from the empty window. */
    private static final Predicate<String> OTHERS = Pattern
            .compile("org\\.flexwright\\.(?!(quantity|numerics|model|core|dropins)_)").asPredicate();

    /** Copies this program without its capabilities and its window; it starts the empty window of the fixture. */
    Installation emptied(Path copy, Path copyHome) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path from : all.toList()) {
                Path to = copy.resolve(folder.relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
        Path ini = copy.resolve("configuration/config.ini");
        Properties properties = new Properties();
        try (InputStream in = Files.newInputStream(ini)) {
            properties.load(in);
        }
        properties.setProperty("osgi.bundles",
                Arrays.stream(properties.getProperty("osgi.bundles").split(",")).filter(OTHERS.negate()).collect(Collectors.joining(",")));
        properties.setProperty("eclipse.product", FIXTURE + ".product");
        properties.setProperty("eclipse.application", FIXTURE + ".app");
        try (OutputStream out = Files.newOutputStream(ini)) {
            properties.store(out, null);
        }
        return new Installation(copy, copyHome);
    }

    /** Runs it to its end and gives the time from before its start until it ended, in ns. Throws when it fails. */
    long run(Map<String, String> environment, String... arguments) throws IOException, InterruptedException {
        Files.createDirectories(home);
        Path said = home.resolve("said.txt");
        List<String> command = new ArrayList<>(List.of(folder.resolve("flexwright").toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile());
        Map<String, String> variables = builder.environment();
        variables.keySet().removeIf(name -> name.startsWith("XDG_") || name.startsWith("FLEXWRIGHT_"));
        variables.put("HOME", home.toString());
        variables.put("FLEXWRIGHT_JAVA", Path.of(System.getProperty("java.home"), "bin", "java").toString());
        variables.putAll(environment);
        long begun = System.nanoTime();
        Process process = builder.start();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("It did not end: " + command + "\n" + Files.readString(said));
        }
        long taken = System.nanoTime() - begun;
        if (process.exitValue() != 0) {
            throw new IllegalStateException("It failed: " + command + "\n" + Files.readString(said));
        }
        return taken;
    }
}
