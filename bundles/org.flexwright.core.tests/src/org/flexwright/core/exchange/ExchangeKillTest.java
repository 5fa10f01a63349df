package org.flexwright.core.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.flexwright.core.Watch;
import org.flexwright.core.session.ClassPath;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** A program killed while it takes tables in and makes backups: the project is as before or as afterwards, and no archive is half. */
class ExchangeKillTest {
    private static final int KILLS = 4;
    private static final int TRIALS = 300;

    @TempDir
    Path temp;

    @Test
    void afterEachKillAllOrNothingIsThere() throws Exception {
        ProjectStore store = new Demo().storeWithoutPlugin();
        Path folder = temp.resolve("Dome.flexwright");
        Path few = temp.resolve("few.zip");
        Path many = temp.resolve("many.zip");
        Path archives = Files.createDirectory(temp.resolve("archives"));
        try (ProjectSession s = store.create(folder, "Dome")) {
            new CsvExport(List.of()).write(s.project(), s.unknown(), few, Watch.NONE);
            s.execute("Trials", edit -> {
                for (int i = 0; i < TRIALS; i++) {
                    Trial t = ModelFactory.eINSTANCE.createTrial();
                    t.setCode("T" + i);
                    edit.add(edit.project(), ModelPackage.Literals.PROJECT__TRIALS, t);
                }
            });
            new CsvExport(List.of()).write(s.project(), s.unknown(), many, Watch.NONE);
        }
        Random random = new Random();
        for (int kill = 0; kill < KILLS; kill++) {
            runAndKill(random.nextInt(150), folder, few, many, archives);
            try (ProjectSession s = store.open(folder)) {
                assertFalse(s.readOnly(), s.readOnlyReason());
                int trials = s.project().getTrials().size();
                assertTrue(trials == 0 || trials == TRIALS, trials + " trials of " + TRIALS + " were taken in");
            }
        }
        int checked = 0;
        try (Stream<Path> all = Files.list(archives)) {
            for (Path zip : all.filter(p -> p.toString().endsWith(".zip")).toList()) {
                try (Backup b = Backup.open(zip)) {
                    b.check(Watch.NONE);
                }
                checked++;
            }
        }
        System.out.println(KILLS + " kills while tables were taken in, " + checked + " archives, all whole");
        assertTrue(checked > 0);
    }

    private void runAndKill(int after, Path... arguments) throws IOException, InterruptedException, ClassNotFoundException {
        Path errors = Files.createTempFile(temp, "errors", ".txt");
        ClassLoader tables = CSVFormat.class.getClassLoader();
        String path = ClassPath.of(ExchangeKillTarget.class, ProjectStore.class, JsonObject.class, CSVFormat.class, tables.loadClass(
                "org.apache.commons.io.IOUtils"), tables.loadClass("org.apache.commons.codec.binary.Base64"));
        List<String> command = new java.util.ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC", "-cp", path, ExchangeKillTarget.class.getName()));
        for (Path a : arguments) {
            command.add(a.toString());
        }
        Process p = new ProcessBuilder(command).redirectError(errors.toFile()).start();
        try {
            assertEquals("done", p.inputReader().readLine(), () -> read(errors));
            Thread.sleep(after);
            assertTrue(p.isAlive(), () -> "the program ended by itself: " + read(errors));
        } finally {
            // SIGKILL where the system knows it
            p.destroyForcibly();
            p.waitFor();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
