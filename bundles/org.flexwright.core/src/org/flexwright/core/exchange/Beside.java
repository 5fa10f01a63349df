package org.flexwright.core.exchange;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.flexwright.core.Message;
import org.flexwright.core.session.RefusedException;

/** Writes something new beside its place, forces it to the medium and moves it there in one step: it appears whole or not at all. */
final class Beside {
    /** Members carry no time of their own, so that the same content gives the same bytes. */
    private static final FileTime NO_TIME = FileTime.fromMillis(315_619_200_000L);

    private Beside() {
    }

    /** Takes files one after the other. */
    interface Sink {
        /** A new file; the one before must be closed. */
        OutputStream file(String name) throws IOException;
    }

    /** What writes. */
    interface Work<T> {
        T into(Sink sink) throws IOException;
    }

    /** What writes one file. */
    interface FileWork<T> {
        T into(OutputStream out) throws IOException;
    }

    /** A new folder, or a zip file when the name ends so. */
    static <T> T write(Path target, Work<T> work) throws IOException {
        if (target.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".zip")) {
            return file(target, out -> {
                ZipOutputStream zip = new ZipOutputStream(out);
                T result = work.into(name -> {
                    ZipEntry entry = new ZipEntry(name);
                    entry.setLastModifiedTime(NO_TIME);
                    zip.putNextEntry(entry);
                    return new FilterOutputStream(zip) {
                        @Override
                        public void write(byte[] b, int off, int len) throws IOException {
                            zip.write(b, off, len);
                        }

                        @Override
                        public void close() throws IOException {
                            zip.closeEntry();
                        }
                    };
                });
                zip.finish();
                return result;
            });
        }
        return folder(target, folder -> work.into(name -> new BufferedOutputStream(Files.newOutputStream(folder.resolve(name), StandardOpenOption.CREATE_NEW))));
    }

    /** What makes or fills a folder or file at a place. */
    interface FolderWork<T> {
        T into(Path folder) throws IOException;
    }

    /** A new folder. */
    static <T> T folder(Path target, FolderWork<T> work) throws IOException {
        return placed(target, beside -> {
            Files.createDirectory(beside);
            T result = work.into(beside);
            forceAll(beside);
            return result;
        });
    }

    /** A new file. */
    static <T> T file(Path target, FileWork<T> work) throws IOException {
        return placed(target, beside -> {
            T result;
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside, StandardOpenOption.CREATE_NEW), 1 << 16)) {
                result = work.into(out);
            }
            force(beside);
            return result;
        });
    }

    /** Made and forced beside its place, then moved there; nothing is left where the work failed. */
    private static <T> T placed(Path target, FolderWork<T> made) throws IOException {
        Path place = free(target);
        Path beside = beside(place);
        boolean done = false;
        try {
            T result = made.into(beside);
            Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE);
            done = true;
            force(place.getParent());
            return result;
        } finally {
            if (!done) {
                delete(beside);
            }
        }
    }

    private static Path free(Path target) throws IOException {
        Path place = target.toAbsolutePath().normalize();
        if (Files.exists(place, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            throw new RefusedException(Message.of(Beside.class, "exists", place));
        }
        if (place.getParent() == null || !Files.isDirectory(place.getParent())) {
            throw new RefusedException(Message.of(Beside.class, "noFolder", place));
        }
        return place;
    }

    /** A name of its own for every run, so that what a killed one left stands in nobody's way. */
    private static Path beside(Path place) {
        return place.resolveSibling("." + place.getFileName() + "-" + Long.toHexString(System.nanoTime()) + ".part");
    }

    private static void forceAll(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                force(file);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private static void force(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            if (path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                try (FileChannel c = FileChannel.open(path, StandardOpenOption.READ)) {
                    c.force(true);
                }
            }
            return;
        }
        try (FileChannel c = FileChannel.open(path, StandardOpenOption.WRITE)) {
            c.force(true);
        }
    }

    /** Deletes a file or a folder with all in it; links are not followed. */
    static void delete(Path path) throws IOException {
        if (!Files.exists(path, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Files.walkFileTree(path, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path folder, IOException e) throws IOException {
                Files.delete(folder);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
