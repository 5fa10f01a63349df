package org.flexwright.workbench.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreContext;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Need;
import org.flexwright.workbench.testkit.Projects;
import org.flexwright.workbench.testkit.Ui;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The project of a window: read-only, attachments, findings, what is unsaved. */
class ProjectServiceTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Projects.none();
    }

    private static Shell shell() {
        return Ui.window().getShell();
    }

    private static ProjectStore another() {
        return new ProjectStore(new StoreContext(new SwtModelThread(Display.getCurrent()), Clock.systemUTC(), "somebody else", "test", List.of()));
    }

    @Test
    void aProjectThatIsOpenElsewhereIsShownReadOnlyWithTheReason() {
        Projects.small(folder);
        Path at = Ui.projects().session().orElseThrow().folder();
        Projects.none();
        try (ProjectSession other = another().open(at)) {
            assertFalse(other.readOnly());
            Ui.projects().open(at);
            Ui.pump();
            ProjectSession session = Ui.projects().session().orElseThrow();
            assertTrue(session.readOnly());
            assertFalse(session.readOnlyReason().isBlank());
            assertTrue(Ui.shows(shell(), "Read-only: " + session.readOnlyReason()), "on the page");
            assertTrue(Ui.shows(shell(), "read-only: " + session.readOnlyReason()), "and at the foot");
            assertFalse(Ui.find(shell(), Text.class, "Need 1").getEditable());
            assertFalse(Ui.find(shell(), Button.class, "Add a need").isEnabled());
            Ui.projects().close();
        }
    }

    @Test
    void aFileIsCopiedInByItsKind() throws IOException {
        Projects.small(folder);
        Path curve = Files.writeString(folder.resolve("press 1.csv"), "mm,N\n0,0\n1,0.8\n");
        assertTrue(Attaching.attach(shell(), Ui.projects(), curve, null));
        ProjectSession session = Ui.projects().session().orElseThrow();
        Attachment attached = session.project().getAttachments().get(0);
        assertEquals(AttachmentKind.CURVE, attached.getKind());
        assertEquals("press 1.csv", attached.getFileName());
        assertEquals(Files.readString(curve), Files.readString(session.folder().resolve(attached.getPath())));
        session.undo();
        assertEquals(List.of(), session.project().getAttachments());
    }

    @Test
    void aPhotoThatIsNoneIsRefusedWithOneSentence() throws IOException {
        Projects.small(folder);
        Path file = Files.writeString(folder.resolve("photo.png"), "no picture");
        Ui.inDialog("Not attached", () -> assertFalse(Attaching.attach(shell(), Ui.projects(), file, null)),
                dialog -> assertTrue(Ui.shows(dialog, "photo.png")));
        assertEquals(List.of(), Ui.projects().session().orElseThrow().project().getAttachments());
    }

    @Test
    void unsavedIsWhatChangedSinceTheSave() {
        Projects.small(folder);
        ProjectSession session = Ui.projects().session().orElseThrow();
        Need need = session.project().getNeeds().get(0);
        assertFalse(Ui.projects().unsaved(session.project()));
        session.execute("edit", edit -> edit.set(need, ModelPackage.Literals.NEED__TEXT, "else"));
        assertTrue(Ui.projects().unsaved(need));
        assertTrue(Ui.projects().unsaved(session.project()), "the project contains it");
        Ui.projects().save(e -> {
            throw new AssertionError(e);
        });
        Ui.await("saved", () -> !session.dirty());
        assertFalse(Ui.projects().unsaved(need));
    }

    @Test
    void closingWaitsForASaveOnItsWay() {
        Projects.small(folder);
        ProjectSession session = Ui.projects().session().orElseThrow();
        Path at = session.folder();
        session.execute("edit", edit -> edit.set(session.project(), ModelPackage.Literals.PROJECT__TITLE, "Later title"));
        Ui.projects().save(e -> {
            throw new AssertionError(e);
        });
        Ui.projects().close();
        Ui.projects().open(at);
        assertEquals("Later title", Ui.projects().session().orElseThrow().project().getTitle());
        assertFalse(Ui.projects().session().orElseThrow().dirty(), "it was saved, not only journalled");
    }
}
