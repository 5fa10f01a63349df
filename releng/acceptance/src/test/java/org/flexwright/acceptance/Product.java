package org.flexwright.acceptance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A built product, started by its own script in a home of its own. */
final class Product {

    private static final long PATIENCE_SECONDS = 120;

    private final Path folder;
    private final Path home;

    /**
     * @param name the name of the product
     * @param home the folder that its cache and data go to
     */
    Product(String name, Path home) {
        String arch = System.getProperty("os.arch").equals("aarch64") ? "aarch64" : "x86_64";
        this.folder = Path.of("..", "products", "target", "products", name, "linux", "gtk", arch, "flexwright").toAbsolutePath()
                .normalize();
        this.home = home;
    }

    /** What a run printed and how it ended. */
    record Run(int status, String out, String err) {
    }

    /** The file names of its bundles. */
    List<String> bundles() throws IOException {
        try (Stream<Path> list = Files.list(folder.resolve("plugins"))) {
            return list.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** Runs it to its end. */
    Run run(Map<String, String> environment, String... arguments) throws IOException, InterruptedException {
        Path out = Files.createTempFile(home, "out", ".txt");
        Path err = Files.createTempFile(home, "err", ".txt");
        Process process = start(environment, out, err, arguments);
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("It did not end: " + Files.readString(out) + Files.readString(err));
        }
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    /** Starts it and leaves it running. */
    Process start(Map<String, String> environment, Path out, Path err, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(folder.resolve("flexwright").toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        Map<String, String> variables = builder.environment();
        variables.keySet().removeIf(name -> name.startsWith("XDG_") || name.startsWith("FLEXWRIGHT_"));
        variables.put("HOME", home.toString());
        // one for all tests, or each would wait for the first start of an installation
        variables.put("XDG_CACHE_HOME", Path.of("target", "cache").toAbsolutePath().toString());
        variables.put("FLEXWRIGHT_JAVA", Path.of(System.getProperty("java.home"), "bin", "java").toString());
        environment.forEach((name, value) -> {
            if (value.isEmpty()) {
                variables.remove(name);
            } else {
                variables.put(name, value);
            }
        });
        return builder.start();
    }

    /** The class path that a plugin is compiled against. */
    String classPath() throws IOException {
        return String.join(System.getProperty("path.separator"),
                bundles().stream().map(name -> folder.resolve("plugins").resolve(name).toString()).toList());
    }
}
