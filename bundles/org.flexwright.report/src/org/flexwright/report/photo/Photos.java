package org.flexwright.report.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.flexwright.core.trial.Attachments;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.report.doc.Block;

/** Attached files: photos are taken in, large ones made smaller; other files are named with their checksum. */
public final class Photos {
    private final Path folder;

    /** Files are read from this project folder alone. */
    public Photos(Path folder) {
        this.folder = folder.normalize();
    }

    /** The photo with its caption; where it cannot be shown, why. */
    public Block.Figure figure(Attachment attachment) {
        String words = attachment.getCaption() == null ? String.valueOf(attachment.getFileName()) : attachment.getCaption();
        String file = words + " (file " + attachment.getFileName() + ", SHA-256 " + attachment.getSha256() + ")";
        if (attachment.getKind() != AttachmentKind.PHOTO) {
            return new Block.Figure(file, null);
        }
        try {
            return new Block.Figure(words, PictureReader.read(bytes(attachment)));
        } catch (NotShown e) {
            return new Block.Figure(file + " Not shown: " + e.getMessage(), null);
        }
    }

    private byte[] bytes(Attachment attachment) throws NotShown {
        Path file = attachment.getPath() == null ? null : folder.resolve(attachment.getPath()).normalize();
        if (file == null || !file.startsWith(folder)) {
            throw new NotShown("its place is not inside the project.");
        }
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new NotShown("the file is missing or cannot be read.");
        }
        if (bytes.length == 0 || !Attachments.sha256(bytes).equals(attachment.getSha256())) {
            throw new NotShown("the file is not the one that was attached, its checksum differs.");
        }
        return bytes;
    }

    /** Why a photo is not shown. */
    public static final class NotShown extends Exception {
        private static final long serialVersionUID = 1L;

        NotShown(String why) {
            super(why);
        }
    }
}
