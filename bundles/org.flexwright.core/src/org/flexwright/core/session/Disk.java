package org.flexwright.core.session;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the store does to a disk; another one in tests fills up, forbids writing or stops half way. */
interface Disk {
    /** A file being written; what was written counts only after {@link #force()}. */
    interface Sink extends Closeable {
        void write(byte[] bytes) throws IOException;

        /** Returns when the bytes are on the medium. */
        void force() throws IOException;

        /** Cuts the file off behind that many bytes. */
        void truncate(long length) throws IOException;
    }

    /** A lock that ends with this process at the latest. */
    interface Lock extends Closeable {
    }

    boolean isDirectory(Path path);

    boolean exists(Path path);

    long size(Path file) throws IOException;

    byte[] read(Path file) throws IOException;

    /** A new file, or an emptied one. */
    Sink create(Path file) throws IOException;

    /** An existing or new file, written from its end on. */
    Sink append(Path file) throws IOException;

    /** Makes a folder with those above it. */
    void makeFolder(Path folder) throws IOException;

    /** Puts a file in the place of another in one step, so that one of both is always there. */
    void replace(Path from, Path to) throws IOException;

    /** A second name for a file's present bytes, or a copy where the disk knows no second names. */
    void keep(Path from, Path to) throws IOException;

    void copy(Path from, Path to) throws IOException;

    void delete(Path file) throws IOException;

    /** Names in a folder, sorted; empty when it is not there. */
    List<Path> list(Path folder) throws IOException;

    /** Makes the names in a folder durable where the system allows it. */
    void forceFolder(Path folder) throws IOException;

    /** The lock, or empty when another process holds it. */
    Optional<Lock> lock(Path file) throws IOException;

    /** Room left, in bytes. */
    long room(Path folder) throws IOException;
}
