package org.flexwright.core.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import org.flexwright.model.Weighing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** Kills a real program at random moments; every edit whose call returned must be there again. */
class KillTest {
    private static final int KILLS = 20;

    @TempDir
    Path temp;

    private final Demo demo = new Demo();

    @Test
    void everyEditThatReturnedIsBackAfterEachKill() throws IOException, InterruptedException {
        Path folder = Demo.folder(temp);
        demo.store().create(folder, "Dome").close();
        Random random = new Random();
        int said = 0;
        int back = 0;
        int unsaid = 0;
        for (int kill = 1; kill <= KILLS; kill++) {
            said = killed(folder, said, random);
            try (ProjectSession s = demo.store().open(folder)) {
                assertFalse(s.readOnly(), "the dead program's lock is free: " + s.readOnlyReason());
                back = KillTarget.count(s);
                // one more may have been made and not yet said
                assertTrue(back == said || back == said + 1, "kill " + kill + ": " + said + " said, " + back + " back");
                List<Weighing> all = s.project().getTrials().stream().flatMap(t -> t.getSteps().stream()).flatMap(x -> x.getUses().stream())
                        .flatMap(u -> u.getWeighings().stream()).toList();
                for (int i = 0; i < all.size(); i++) {
                    assertEquals(i + 1.0, all.get(i).getNet());
                }
                assertTrue(back == 0 || s.project().getNote().equals("last weighing " + back), "an edit is there whole or not at all");
            }
            unsaid += back - said;
            said = back;
        }
        System.out.println(KILLS + " kills at random moments, " + back + " edits made, 0 lost, " + unsaid + " made but not yet said");
        assertTrue(back > KILLS, "the program was killed before it did anything: " + back);
    }

    /** Runs the program, kills it at a random moment and gives the last number it said. */
    private static int killed(Path folder, int before, Random random) throws IOException, InterruptedException {
        Path errors = Files.createTempFile(folder.getParent(), "errors", ".txt");
        Path words = Files.createTempFile(folder.getParent(), "words", ".txt");
        Process p = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC", "-cp", ClassPath.of(KillTarget.class, ProjectStore.class, JsonObject.class), KillTarget.class.getName(), folder.toString()).redirectError(errors.toFile())
                .redirectOutput(words.toFile()).start();
        try {
            int wanted = random.nextInt(25);
            while (p.isAlive() && said(words).size() < wanted) {
                Thread.sleep(1);
            }
            // somewhere within the next edits or saves
            Thread.sleep(random.nextInt(12));
            assertTrue(p.isAlive(), () -> "the program ended by itself: " + text(errors));
        } finally {
            // SIGKILL where the system knows it
            p.destroyForcibly();
            p.waitFor();
        }
        List<Integer> said = said(words);
        for (int i = 0; i < said.size(); i++) {
            assertEquals(before + i + 1, said.get(i));
        }
        return before + said.size();
    }

    /** Numbers said in whole lines; the last line may be cut off by the kill. */
    private static List<Integer> said(Path words) {
        String all = text(words);
        return all.substring(0, all.lastIndexOf('\n') + 1).lines().map(Integer::valueOf).toList();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
