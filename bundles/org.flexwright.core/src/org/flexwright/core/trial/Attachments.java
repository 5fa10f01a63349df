package org.flexwright.core.trial;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
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
    private static final byte[] PNG = { (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n' };
    private static final byte[] JPEG = { (byte) 0xff, (byte) 0xd8, (byte) 0xff };

    private Attachments() {
    }

    /**
     * Copies a file into the project and lets an entry refer to it, as one step that can be undone (the copied file stays).
     *
     * @param owner   what it belongs to: a trial, step, part or reference part
     * @param caption words under it, or null
     */
    public static Attachment copyIn(ProjectSession session, Path file, AttachmentKind kind, String caption, Entry owner) {
        byte[] bytes = read(file);
        if (kind == AttachmentKind.PHOTO && !isPhoto(bytes)) {
            throw PlanException.of("photo.none", file.getFileName());
        }
        return copyIn(session, file.getFileName().toString(), bytes, kind, caption, owner);
    }

    /** As above, from bytes in memory, under a file name. */
    public static Attachment copyIn(ProjectSession session, String fileName, byte[] bytes, AttachmentKind kind, String caption, Entry owner) {
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
            throw PlanException.of("file.taken", fileName, "no room, or the folder cannot be written");
        }
    }

    private static String plain(String fileName) {
        String name = fileName.replaceAll("[^A-Za-z0-9._-]", "_");
        return name.length() > 60 ? name.substring(name.length() - 60) : name;
    }

    private static boolean isPhoto(byte[] bytes) {
        return startsWith(bytes, PNG) || startsWith(bytes, JPEG);
    }

    private static boolean startsWith(byte[] bytes, byte[] start) {
        return bytes.length > start.length && Arrays.equals(Arrays.copyOf(bytes, start.length), start);
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
