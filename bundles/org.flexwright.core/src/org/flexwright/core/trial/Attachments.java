package org.flexwright.core.trial;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EReference;
import org.flexwright.core.Watch;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Entry;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;

/** Files copied into the project, each with its checksum. */
public final class Attachments {
    private static final int BUFFER = 1 << 16;

    private Attachments() {
    }

    /**
     * A file that lies in the project's folder and that no entry refers to yet.
     *
     * @param kind     what it shows
     * @param fileName its own name
     * @param path     inside the project folder
     * @param sha256   of its content
     */
    public record Stored(AttachmentKind kind, String fileName, String path, String sha256) {
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
        requireWritable(session, file.getFileName());
        return attach(session, store(session.folder(), file, kind, Watch.NONE), caption, owner);
    }

    /** As above, from bytes in memory, under a file name. */
    public static Attachment copyIn(ProjectSession session, String fileName, byte[] bytes, AttachmentKind kind, String caption, Entry owner) {
        requireWritable(session, fileName);
        return attach(session, store(session.folder(), fileName, kind, () -> photo(kind, fileName, new ByteArrayInputStream(bytes)), bytes.length, Watch.NONE), caption, owner);
    }

    private static void requireWritable(ProjectSession session, Object fileName) {
        if (session.readOnly()) {
            throw PlanException.of("file.taken", fileName, session.readOnlyReason());
        }
    }

    private static Attachment attach(ProjectSession session, Stored stored, String caption, Entry owner) {
        Attachment[] made = new Attachment[1];
        session.execute("Attach " + stored.fileName(), edit -> {
            made[0] = add(edit, stored, caption);
            EReference reference = reference(owner);
            if (reference != null) {
                edit.add(owner, reference, made[0]);
            }
        });
        return made[0];
    }

    /** Takes a stored file into the project's list of files; what it belongs to refers to it afterwards. */
    public static Attachment add(Edit edit, Stored stored, String caption) {
        Attachment attachment = ModelFactory.eINSTANCE.createAttachment();
        attachment.setKind(stored.kind());
        attachment.setFileName(stored.fileName());
        attachment.setPath(stored.path());
        attachment.setSha256(stored.sha256());
        attachment.setCaption(caption);
        attachment.setAddedAt(edit.now());
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__ATTACHMENTS, attachment);
        return attachment;
    }

    /**
     * Copies a file into the project's folder as it is, with its checksum, in pieces: a long recording never stands in memory. On any thread.
     * Throws PlanException as {@link #copyIn}, and ends with CancellationException when the watch was cancelled; nothing is left behind then.
     */
    public static Stored store(Path folder, Path file, AttachmentKind kind, Watch watch) {
        String fileName = file.getFileName().toString();
        long size;
        try {
            size = Files.size(file);
            if (size == 0) {
                throw PlanException.of("file.empty", fileName);
            }
            if (!Files.isRegularFile(file)) {
                throw PlanException.of("file.unreadable", fileName);
            }
        } catch (IOException e) {
            throw PlanException.of("file.unreadable", fileName);
        }
        return store(folder, fileName, kind, () -> photo(kind, fileName, open(file, fileName)), size, watch);
    }

    private static InputStream open(Path file, String fileName) {
        try {
            return Files.newInputStream(file);
        } catch (IOException e) {
            throw PlanException.of("file.unreadable", fileName);
        }
    }

    /** A photo is looked at as a whole before it is taken; anything else passes as it is. */
    private static InputStream photo(AttachmentKind kind, String fileName, InputStream in) {
        if (kind != AttachmentKind.PHOTO) {
            return in;
        }
        try (in) {
            byte[] bytes = in.readAllBytes();
            if (!PhotoCheck.isPhoto(bytes)) {
                throw PlanException.of("photo.none", fileName);
            }
            return new ByteArrayInputStream(bytes);
        } catch (IOException e) {
            throw PlanException.of("file.unreadable", fileName);
        }
    }

    private static Stored store(Path folder, String fileName, AttachmentKind kind, Supplier<InputStream> from, long size, Watch watch) {
        Path into = folder.resolve(kind == AttachmentKind.CURVE ? "curves" : "photos");
        Path part = null;
        try (InputStream in = from.get()) {
            Files.createDirectories(into);
            part = Files.createTempFile(into, ".", ".part");
            MessageDigest digest = digest();
            copy(in, part, digest, fileName, size, watch);
            String sum = HexFormat.of().formatHex(digest.digest());
            Path target = into.resolve(sum.substring(0, 12) + "-" + plain(fileName));
            // the same content under the same name may be there already: its checksum is part of the name
            if (!Files.exists(target)) {
                Files.move(part, target);
            }
            return new Stored(kind, fileName, into.getFileName() + "/" + target.getFileName(), sum);
        } catch (IOException e) {
            throw PlanException.of("file.taken", fileName, Trials.words("file.noRoom"));
        } finally {
            forget(part);
        }
    }

    private static void copy(InputStream in, Path to, MessageDigest digest, String fileName, long size, Watch watch) throws IOException {
        byte[] buffer = new byte[BUFFER];
        long done = 0;
        try (OutputStream out = Files.newOutputStream(to)) {
            while (true) {
                watch.check();
                int n;
                try {
                    n = in.read(buffer);
                } catch (IOException e) {
                    throw PlanException.of("file.unreadable", fileName);
                }
                if (n < 0) {
                    return;
                }
                digest.update(buffer, 0, n);
                out.write(buffer, 0, n);
                done += n;
                watch.done(done, size);
            }
        }
    }

    private static void forget(Path part) {
        try {
            if (part != null) {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            // a hidden part of a copy stays behind; nothing refers to it
        }
    }

    private static EReference reference(Entry owner) {
        return (EReference) (owner == null ? null : owner.eClass().getEAllReferences().stream().filter(r -> r.isMany() && !r.isContainment()
                && r.getEReferenceType() == ModelPackage.Literals.ATTACHMENT).findFirst().orElse(null));
    }

    private static String plain(String fileName) {
        String name = fileName.replaceAll("[^A-Za-z0-9._-]", "_");
        return name.length() > 60 ? name.substring(name.length() - 60) : name;
    }

    /** SHA-256 as hexadecimal text. */
    public static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    /** A SHA-256 to be fed piece by piece. */
    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java runtime has SHA-256.", e);
        }
    }
}
