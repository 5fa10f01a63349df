package org.flexwright.core.trial;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;

import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Trial;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AttachmentsTest {
    /** One grey pixel. */
    private static final byte[] PNG = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");
    /** The parts of a JPEG of 2 by 3 pixels in their order; what it shows does not matter here. */
    private static final byte[] JPEG = bytes(0xFF, 0xD8, 0xFF, 0xE0, 0, 4, 1, 2, 0xFF, 0xC0, 0, 11, 8, 0, 3, 0, 2, 1, 1, 0x11, 0, 0xFF, 0xDA, 0, 8, 1,
            1, 0, 0, 63, 0, 0x55, 0xFF, 0, 0x2A, 0xFF, 0xD9);

    @TempDir
    Path temp;
    private ProjectStore store;

    private static byte[] bytes(int... values) {
        byte[] b = new byte[values.length];
        for (int i = 0; i < b.length; i++) {
            b[i] = (byte) values[i];
        }
        return b;
    }

    @BeforeEach
    void create() {
        store = new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "Ann", "1.0.0", List.of()));
    }

    private ProjectSession project() {
        ProjectSession s = store.create(temp.resolve("Dome.flexwright"), "Dome");
        s.execute("Add", e -> e.add(e.project(), ModelPackage.Literals.PROJECT__TRIALS, ModelFactory.eINSTANCE.createTrial()));
        return s;
    }

    @Test
    void aPhotoIsCopiedInWithItsChecksumAndBelongsToTheTrial() throws IOException {
        Path file = Files.write(temp.resolve("dome, 10 mm.png"), PNG);
        try (ProjectSession s = project()) {
            Trial trial = s.project().getTrials().getFirst();
            Attachment a = Attachments.copyIn(s, file, AttachmentKind.PHOTO, "Dome", trial);
            Files.delete(file);
            assertArrayEquals(PNG, Files.readAllBytes(s.folder().resolve(a.getPath())));
            assertEquals(Attachments.sha256(PNG), a.getSha256());
            assertTrue(a.getPath().startsWith("photos/") && a.getPath().matches("[A-Za-z0-9._/-]+"), a.getPath());
            assertSame(a, trial.getAttachments().getFirst());
            s.undo();
            assertTrue(trial.getAttachments().isEmpty() && s.project().getAttachments().isEmpty());
            s.redo();
            assertSame(a, trial.getAttachments().getFirst());
            try (Stream<Path> files = Files.list(s.folder().resolve("photos"))) {
                assertEquals(1, files.count(), "no scraps");
            }
        }
    }

    @Test
    void theChecksumIsThatOfTheUsualExample() {
        // SHA-256 of "abc", the example that goes with the standard; from memory, unconfirmed
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Attachments.sha256("abc".getBytes()));
    }

    @Test
    void aPhotoThatIsNoneIsRefused() throws IOException {
        try (ProjectSession s = project()) {
            for (byte[] no : List.of("no photo".getBytes(), Arrays.copyOf(PNG, 20), bytes(0xFF, 0xD8, 0xFF, 0xD9))) {
                Path file = Files.write(temp.resolve("x.png"), no);
                PlanException e = assertThrows(PlanException.class, () -> Attachments.copyIn(s, file, AttachmentKind.PHOTO, null, null));
                assertEquals("photo.none", e.sentence().key());
            }
            Path empty = Files.write(temp.resolve("x.png"), new byte[0]);
            assertEquals("file.empty",
                    assertThrows(PlanException.class, () -> Attachments.copyIn(s, empty, AttachmentKind.OTHER, null, null)).sentence().key());
            assertEquals("file.unreadable", assertThrows(PlanException.class,
                    () -> Attachments.copyIn(s, temp.resolve("none"), AttachmentKind.OTHER, null, null)).sentence().key());
            assertTrue(s.project().getAttachments().isEmpty());
            try (Stream<Path> files = Files.list(s.folder().resolve("photos"))) {
                assertEquals(0, files.count());
            }
        }
    }

    @Test
    void wholePicturesPassAndEveryCutOrChangedOneDoesNot() {
        assertTrue(PhotoCheck.isPhoto(PNG));
        assertTrue(PhotoCheck.isPhoto(JPEG));
        for (int n = 0; n < PNG.length; n++) {
            assertFalse(PhotoCheck.isPhoto(Arrays.copyOf(PNG, n)), "PNG cut to " + n);
            byte[] changed = PNG.clone();
            changed[n] ^= 0x40;
            assertFalse(PhotoCheck.isPhoto(changed), "PNG changed at " + n);
        }
        for (int n = 0; n < JPEG.length; n++) {
            assertFalse(PhotoCheck.isPhoto(Arrays.copyOf(JPEG, n)), "JPEG cut to " + n);
        }
    }

    @Test
    void aProjectOpenToLookAtGetsNoFile() throws IOException {
        Path folder;
        try (ProjectSession s = project()) {
            folder = s.folder();
        }
        Files.delete(folder.resolve("photos"));
        try (ProjectSession s = store.openReadOnly(folder)) {
            assertThrows(PlanException.class, () -> Attachments.copyIn(s, "a.png", PNG, AttachmentKind.PHOTO, null, null));
        }
        assertFalse(Files.exists(folder.resolve("photos")));
    }
}
