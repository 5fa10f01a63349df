package org.flexwright.workbench.project;

import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.swt.widgets.Shell;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Attachments;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Entry;
import org.flexwright.report.photo.CodeReader;

/** Copies files into the project from dialogs and drops. */
public final class Attaching {

    private Attaching() {
    }

    /**
     * Copies a file in; what kind it is, its name says. A photo that nobody said the place of goes to the trial whose label is in it. True when it
     * went through.
     */
    public static boolean attach(Shell shell, ProjectService projects, Path file, Entry owner) {
        return projects.session().filter(session -> Trouble.guard(shell, "Not attached",
                () -> Attachments.copyIn(session, file, kind(file), null, owner == null ? labelled(session, file) : owner))).isPresent();
    }

    private static Entry labelled(ProjectSession session, Path file) {
        return kind(file) == AttachmentKind.PHOTO ? CodeReader.propose(file, session.project()).trial().orElse(null) : null;
    }

    private static AttachmentKind kind(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (name.matches(".*\\.(png|jpe?g)")) {
            return AttachmentKind.PHOTO;
        }
        if (name.matches(".*\\.(csv|tsv|txt)")) {
            return AttachmentKind.CURVE;
        }
        if (name.endsWith(".pdf")) {
            return AttachmentKind.DATA_SHEET;
        }
        return name.matches(".*\\.(ini|json|xml)") ? AttachmentKind.SETTINGS : AttachmentKind.OTHER;
    }
}
