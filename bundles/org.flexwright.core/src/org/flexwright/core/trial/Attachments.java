package org.flexwright.core.trial;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import org.eclipse.emf.ecore.EReference;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Entry;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;

/** Files copied into the project, each with its checksum. */
public final class Attachments {
    private Attachments() {
    }

    /**
     * Copies a file into the project and lets an entry refer to it, as one step that can be undone (the copied file stays).
     *
     * Throws PlanException when it cannot be read or copied, or is said to be a photo and is no whole PNG or JPEG picture.
     *
     * @param owner   what it belongs to: a trial, step, part or reference part
     * @param caption words under it, or null
     */
    public static Attachment copyIn(ProjectSession session, Path file, AttachmentKind kind, String caption, Entry owner) {
        return copyIn(session, file.getFileName().toString(), read(file), kind, caption, owner);
    }

    /** As above, from bytes in memory, under a file name. */
    public static Attachment copyIn(ProjectSession session, String fileName, byte[] bytes, AttachmentKind kind, String caption, Entry owner) {
        if (session.readOnly()) {
            throw PlanException.of("file.taken", fileName, session.readOnlyReason());
        }
        if (kind == AttachmentKind.PHOTO && !PhotoCheck.isPhoto(bytes)) {
            throw PlanException.of("photo.none", fileName);
        }
        String sum = sha256(bytes);
        String folder = kind == AttachmentKind.CURVE ? "curves" : "photos";
        String path = folder + "/" + sum.substring(0, 12) + "-" + plain(fileName);
        store(session.folder().resolve(path), bytes, fileName);
        Attachment attachment = ModelFactory.eINSTANCE.createAttachment();
        attachment.setKind(kind);
        attachment.setFileName(fileName);
        attachment.setPath(path);
        attachment.setSha256(sum);
        attachment.setCaption(caption);
        session.execute("Attach " + fileName, edit -> {
            attachment.setAddedAt(edit.now());
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__ATTACHMENTS, attachment);
            EReference reference = reference(owner);
            if (reference != null) {
                edit.add(owner, reference, attachment);
            }
        });
        return attachment;
    }

    private static EReference reference(Entry owner) {
        return (EReference) (owner == null ? null : owner.eClass().getEAllReferences().stream().filter(r -> r.isMany() && !r.isContainment()
                && r.getEReferenceType() == ModelPackage.Literals.ATTACHMENT).findFirst().orElse(null));
    }

    private static byte[] read(Path file) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            if (bytes.length == 0) {
                throw PlanException.of("file.empty", file.getFileName());
            }
            return bytes;
        } catch (IOException e) {
            throw PlanException.of("file.unreadable", file.getFileName());
        }
    }

    private static void store(Path target, byte[] bytes, String fileName) {
        try {
            Files.createDirectories(target.getParent());
            Path beside = target.resolveSibling("." + target.getFileName() + ".part");
            try {
                Files.write(beside, bytes);
                Files.move(beside, target);
            } catch (FileAlreadyExistsException e) {
                // the same content under the same name is there already: its checksum is part of the name
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw PlanException.of("file.taken", fileName, Trials.words("file.noRoom"));
        }
    }

    private static String plain(String fileName) {
        String name = fileName.replaceAll("[^A-Za-z0-9._-]", "_");
        return name.length() > 60 ? name.substring(name.length() - 60) : name;
    }

    /** SHA-256 as hexadecimal text. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java runtime has SHA-256.", e);
        }
    }
}
