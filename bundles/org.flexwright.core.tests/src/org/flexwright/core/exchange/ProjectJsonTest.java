package org.flexwright.core.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.flexwright.core.Watch;
import org.flexwright.core.session.Demo;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.testsupport.RandomModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random projects as JSON and back: not a byte of the project's file differs. What is no such file is refused. */
class ProjectJsonTest {
    private static final int PROJECTS = 6;

    @TempDir
    Path temp;

    private final Demo demo = new Demo();

    private Path random(long seed) throws IOException {
        Path folder = temp.resolve("P" + seed + ".flexwright");
        ProjectStore.Draft draft = demo.store().draft();
        new RandomModel(seed, List.of(demo.ePackage), Tables::isBookkeeping).fill(draft.project(), 500);
        demo.store().create(folder, draft).close();
        return folder;
    }

    @Test
    void nothingIsLostWithAndWithoutThePlugin() throws IOException {
        for (int seed = 0; seed < PROJECTS; seed++) {
            Path folder = random(seed);
            boolean here = seed % 2 == 0;
            ProjectStore store = here ? demo.store() : demo.storeWithoutPlugin();
            Path file = temp.resolve(seed + ".json");
            Path same = temp.resolve(seed + "-again.json");
            try (ProjectSession s = store.openReadOnly(folder)) {
                ProjectJson.write(s.project(), s.unknown(), file, Watch.NONE);
            }
            Path again = temp.resolve("Again" + seed + ".flexwright");
            try (ProjectSession s = ProjectJson.create(store, here ? List.of(demo.here()) : List.of(), file, again, Watch.NONE)) {
                ProjectJson.write(s.project(), s.unknown(), same, Watch.NONE);
            }
            assertArrayEquals(Files.readAllBytes(folder.resolve("project.xmi")), Files.readAllBytes(again.resolve("project.xmi")), "seed " + seed);
            assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(same), "seed " + seed);
        }
    }

    @Test
    void whatIsNoProjectIsRefused() throws IOException {
        Path file = temp.resolve("bad.json");
        Path target = temp.resolve("Bad.flexwright");
        String head = "{\"kind\":\"flexwright-project\",\"version\":1,\"project\":{\"id\":\"_p\",";
        for (String bad : List.of("", "{", "[]", "null", "{\"kind\":\"other\"}", "{\"kind\":\"flexwright-project\",\"version\":9}", head + "\"title\":1}}",
                head + "\"title\":\"a\",\"title\":\"b\"}}", head + "\"nobody\":1}}", head + "\"hourlyRate\":NaN}}", head + "\"hourlyRate\":1e999}}",
                head + "\"hourlyRate\":\"1\"}}", head + "\"trials\":[{\"id\":\"_p\"}]}}", head + "\"trials\":[{\"basedOn\":\"_nobody\"}]}}",
                head + "\"trials\":[{\"basedOn\":\"_p\"}]}}", head + "\"trials\":[{\"class\":\"Lot\"}]}}", head + "\"trials\":[{\"state\":\"gone\"}]}}",
                head + "\"trials\":[{\"class\":\"urn:x#Y\",\"unread\":\"<!DOCTYPE a []><objects/>\"}]}}", head + "\"trials\":{}}}", head + "}} more",
                head + "\"journalSeq\":3}}", "{\"kind\":\"flexwright-project\",\"units\":{\"Trial.cost\":\"kg\"},\"project\":{\"id\":\"_p\"}}",
                "{\"kind\":\"flexwright-project\",\"project\":" + "{\"trials\":[".repeat(5000))) {
            Files.writeString(file, bad);
            assertThrows(RefusedException.class, () -> ProjectJson.create(demo.store(), List.of(), file, target, Watch.NONE), () -> bad.substring(0, Math.min(120, bad
                    .length())));
            assertFalse(Files.exists(target), bad);
        }
        Files.writeString(file, head + "\"title\":\"good\"}}");
        ProjectJson.create(demo.store(), List.of(), file, target, Watch.NONE).close();
        assertTrue(Files.exists(target.resolve("project.xmi")));
    }
}
