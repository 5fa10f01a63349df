package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

import org.flexwright.core.Message;

/** Turns what a disk reports into one sentence. */
final class Failures {
    private Failures() {
    }

    /** A failure to write; {@code file} is what was being written. */
    static StoreException writing(Disk disk, Path file, long bytes, Exception e) {
        StoreException.Kind kind = kind(disk, file, bytes, e);
        String key = switch (kind) {
            case DISK_FULL -> "write.full";
            case READ_ONLY -> "write.forbidden";
            default -> "write.failed";
        };
        return new StoreException(kind, Message.of(ProjectStore.class, key, file, reason(e)), e);
    }

    /** A failure to read. */
    static StoreException reading(Path file, IOException e) {
        return new StoreException(StoreException.Kind.FAILED, Message.of(ProjectStore.class, "read.failed", file, reason(e)), e);
    }

    static boolean forbidden(Exception e) {
        return e instanceof AccessDeniedException || e instanceof ReadOnlyFileSystemException
                || reason(e).toLowerCase(Locale.ROOT).contains("read-only file system");
    }

    private static StoreException.Kind kind(Disk disk, Path file, long bytes, Exception e) {
        if (forbidden(e)) {
            return StoreException.Kind.READ_ONLY;
        }
        String reason = reason(e).toLowerCase(Locale.ROOT);
        // the words of Linux, macOS and Windows; Java gives no other sign
        if (reason.contains("no space left") || reason.contains("not enough space") || reason.contains("quota exceeded")
                || noRoom(disk, file, bytes)) {
            return StoreException.Kind.DISK_FULL;
        }
        return StoreException.Kind.FAILED;
    }

    private static boolean noRoom(Disk disk, Path file, long bytes) {
        try {
            return disk.room(file.getParent()) < bytes;
        } catch (IOException unknown) {
            return false;
        }
    }

    private static String reason(Exception e) {
        String reason = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        return reason == null ? e.getClass().getSimpleName() : reason;
    }
}
