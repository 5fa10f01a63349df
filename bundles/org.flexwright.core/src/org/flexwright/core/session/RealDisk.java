package org.flexwright.core.session;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The disk of this machine. */
final class RealDisk implements Disk {

    private record ChannelSink(FileChannel channel) implements Sink {
        @Override
        public void write(byte[] bytes) throws IOException {
            ByteBuffer b = ByteBuffer.wrap(bytes);
            while (b.hasRemaining()) {
                channel.write(b);
            }
        }

        @Override
        public void force() throws IOException {
            channel.force(false);
        }

        @Override
        public void truncate(long length) throws IOException {
            channel.truncate(length);
            channel.position(length);
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }

    private record ChannelLock(FileChannel channel, FileLock lock) implements Lock {
        @Override
        public void close() throws IOException {
            try (channel) {
                lock.release();
            }
        }
    }

    @Override
    public boolean isDirectory(Path path) {
        return Files.isDirectory(path);
    }

    @Override
    public boolean exists(Path path) {
        return Files.exists(path);
    }

    @Override
    public long size(Path file) throws IOException {
        return Files.size(file);
    }

    @Override
    public byte[] read(Path file) throws IOException {
        return Files.readAllBytes(file);
    }

    @Override
    public Sink create(Path file) throws IOException {
        return new ChannelSink(FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE));
    }

    @Override
    public Sink append(Path file) throws IOException {
        FileChannel c = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        c.position(c.size());
        return new ChannelSink(c);
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        Files.createDirectories(folder);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            throw new IOException("This disk cannot put a file in the place of another in one step.", e);
        }
    }

    @Override
    public void keep(Path from, Path to) throws IOException {
        try {
            Files.createLink(to, from);
        } catch (UnsupportedOperationException | IOException noSecondNames) {
            copy(from, to);
        }
    }

    @Override
    public void copy(Path from, Path to) throws IOException {
        Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> s = Files.list(folder)) {
            return s.sorted().toList();
        }
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel c = FileChannel.open(folder, StandardOpenOption.READ)) {
                c.force(true);
            }
        }
    }

    @Override
    public Optional<Lock> lock(Path file) throws IOException {
        FileChannel c = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = null;
        try {
            lock = c.tryLock();
            return lock == null ? Optional.empty() : Optional.of(new ChannelLock(c, lock));
        } finally {
            if (lock == null) {
                c.close();
            }
        }
    }

    @Override
    public long room(Path folder) throws IOException {
        return Files.getFileStore(folder).getUsableSpace();
    }
}
