package org.flexwright.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;

import org.flexwright.core.trial.Attachments;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;

/** Attached files: photos are taken into the report, other files are named with their checksum. */
final class Photos {
    private final Path folder;

    /** Files are read from this project folder alone. */
    Photos(Path folder) {
        this.folder = folder.normalize();
    }

    void write(Attachment attachment, Html html) {
        String words = attachment.getCaption() == null ? attachment.getFileName() : attachment.getCaption();
        html.open("figure");
        String missing = "";
        if (attachment.getKind() == AttachmentKind.PHOTO) {
            missing = image(attachment, words, html);
        }
        boolean shown = attachment.getKind() == AttachmentKind.PHOTO && missing.isEmpty();
        html.element("figcaption", words + (shown ? "" : " (file " + attachment.getFileName() + ", SHA-256 " + attachment.getSha256() + ")" + missing));
        html.close("figure");
    }

    /** Writes the photo; returns why it cannot be shown, empty when it is. */
    private String image(Attachment attachment, String words, Html html) {
        Path file = attachment.getPath() == null ? null : folder.resolve(attachment.getPath()).normalize();
        if (file == null || !file.startsWith(folder)) {
            return " Not shown: its place is not inside the project.";
        }
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            return " Not shown: the file is missing or cannot be read.";
        }
        if (bytes.length == 0 || !Attachments.sha256(bytes).equals(attachment.getSha256())) {
            return " Not shown: the file is not the one that was attached, its checksum differs.";
        }
        String type = bytes[0] == (byte) 0x89 ? "image/png" : "image/jpeg";
        html.open("img", "src", "data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes), "alt", words == null ? "" : words);
        return "";
    }
}
