package org.flexwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMIResource;
import org.flexwright.core.bench.BenchClock;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.curing.CureStep;
import org.flexwright.mixing.WeighStep;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.flexwright.moulding.FillStep;
import org.flexwright.numerics.StudentT;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;

import com.google.gson.JsonObject;

/**
 * Kills a program that pours by taps at random moments: every tap it said it made is there when the project is opened again, and the clock
 * shows the time since contact by the wall. {@code releng/acceptance/kill-pour} asks for 200 kills by the environment.
 */
class PourKillTest {
    private static final int FEW = 8;
    private static final long CLOCK_MS = 1000;

    @TempDir
    Path temp;
    private final Pour pour = new Pour(Clock.systemUTC());
    private List<String> traces;
    private Path folder;
    private Path shown;
    private long contact;
    private String met = "";

    @Test
    void noTapIsLostAndTheClockIsRight() throws IOException, InterruptedException {
        String wanted = System.getenv("FLEXWRIGHT_KILLS");
        int kills = wanted == null ? FEW : Integer.parseInt(wanted);
        long seed = wanted == null ? 41 : System.nanoTime();
        Random random = new Random(seed);
        traces = PourTarget.traces(temp.resolve("traces.flexwright"));
        shown = Files.writeString(temp.resolve("traces"), String.join(PourTarget.APART, traces));
        folder = temp.resolve("Pour.flexwright");
        pour.create(folder).close();
        int taps = 0;
        int unsaid = 0;
        int clocks = 0;
        long worst = 0;
        String code = "T01";
        int before = 0;
        int atGate = 0;
        for (int kill = 1; kill <= kills; kill++) {
            List<String[]> said = killed(random);
            int last = said.isEmpty() ? before : Integer.parseInt(said.getLast()[2]);
            code = said.isEmpty() ? code : said.getLast()[1];
            taps += said.size();
            said.stream().filter(s -> s.length > 3).forEach(s -> {
                contact = (Long.parseLong(s[3]) + Long.parseLong(s[4])) / 2;
                met = s[1];
            });
            try (ProjectSession session = pour.store().open(folder)) {
                assertFalse(session.readOnly(), "the dead program's lock is free: " + session.readOnlyReason());
                Trial trial = Pour.last(session.project());
                int back = PourTarget.at(traces, trial);
                boolean next = !trial.getCode().equals(code);
                if (!met.equals(trial.getCode())) {
                    // what was said of the pour before says nothing of this one
                    contact = 0;
                }
                String what = "kill " + kill + " (seed " + seed + "): " + code + " " + last + " said, " + trial.getCode() + " " + back + " back";
                // one more may have been made and not yet said; so may the plan of the next trial
                assertTrue(next ? last >= Pour.TAPS.size() - 1 && back <= 1 : back == last || back == last + 1, what);
                unsaid += next ? Math.max(0, back) + Pour.TAPS.size() - last : back - last;
                for (Trial earlier : session.project().getTrials().subList(0, session.project().getTrials().size() - 1)) {
                    assertEquals(Pour.TAPS.size(), PourTarget.at(traces, earlier), what);
                }
                BenchClock clock = pour.bench.view(trial, Instant.now()).clock();
                boolean told = trial.getContactAt() != null && contact > 0;
                if (told && clock.state() == BenchClock.State.RUNNING) {
                    long off = Math.abs(clock.elapsed().toMillis() - (System.currentTimeMillis() - contact));
                    worst = Math.max(worst, off);
                    clocks++;
                    assertTrue(off <= CLOCK_MS, what + ": the clock is off by " + off + " ms");
                }
                atGate += back > 0 && back < Pour.TAPS.size() ? 1 : 0;
                before = back;
                code = trial.getCode();
                if (contact == 0 && trial.getContactAt() != null) {
                    // contact was made and the program killed before it said so: what is on disk counts from here on
                    contact = trial.getContactAt().toEpochMilli();
                    met = trial.getCode();
                }
            }
        }
        System.out.println(kills + " kills at random moments of a pour, " + atGate + " of them amid a pour: " + (taps + unsaid) + " taps made, 0 lost, " + unsaid
                + " made but not yet said; clock looked at " + clocks + " times, off by " + worst + " ms at most");
        assertTrue(taps > kills && clocks > 0, "the program was killed before it did anything: " + taps);
    }

    /** Runs the program, kills it at a random moment and gives what it said, in words. */
    private List<String[]> killed(Random random) throws IOException, InterruptedException {
        Path errors = Files.createTempFile(temp, "errors", ".txt");
        Path words = Files.createTempFile(temp, "words", ".txt");
        Process program = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
                "-Xshare:auto", "-cp", classPath(), PourTarget.class.getName(), folder.toString(), shown.toString())
                .redirectError(errors.toFile()).redirectOutput(words.toFile()).start();
        try {
            int wanted = random.nextInt(12);
            while (program.isAlive() && said(words).size() < wanted) {
                Thread.sleep(1);
            }
            // somewhere within the next taps or saves
            Thread.sleep(random.nextInt(12));
            assertTrue(program.isAlive(), () -> "the program ended by itself: " + text(errors));
        } finally {
            // SIGKILL where the system knows it
            program.destroyForcibly();
            program.waitFor();
        }
        return said(words);
    }

    /** What was said in whole lines; the last line may be cut off by the kill. */
    private static List<String[]> said(Path words) {
        String all = text(words);
        return all.substring(0, all.lastIndexOf('\n') + 1).lines().map(l -> l.split(" ")).toList();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The class path of a program without OSGi: where the classes in use came from. */
    private static String classPath() {
        Set<String> places = new LinkedHashSet<>();
        for (Class<?> c : List.of(PourTarget.class, Cli.class, ProjectStore.class, ModelPackage.class, QuantityKind.class, StudentT.class, WeighStep.class, FillStep.class,
                CureStep.class, EObject.class, URI.class, XMIResource.class, JsonObject.class, Platform.class, FrameworkUtil.class)) {
            places.addAll(places(c));
        }
        return places.stream().collect(Collectors.joining(File.pathSeparator));
    }

    private static List<String> places(Class<?> c) {
        try {
            Path place = Path.of(c.getProtectionDomain().getCodeSource().getLocation().toURI());
            // a bundle taken from its project has its classes in a folder below
            return List.of(place.toString(), place.resolve("target/classes").toString(), place.resolve("bin").toString());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
