package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A disk that is full after some bytes, forbids writing, or stops for good after some operations, as in a power cut. */
final class FaultyDisk implements Disk {
    private final Disk real = new RealDisk();
    private long room = Long.MAX_VALUE;
    private long operations = Long.MAX_VALUE;
    private boolean readOnly;

    /** So many bytes can still be written. */
    void room(long bytes) {
        room = bytes;
    }

    /** So many writing operations still happen; the next one and all after it do not. */
    void stopAfter(long n) {
        operations = n;
    }

    boolean stopped() {
        return operations <= 0;
    }

    void readOnly() {
        readOnly = true;
    }

    private void writing(Path file) throws IOException {
        if (readOnly) {
            throw new AccessDeniedException(file.toString());
        }
        if (operations-- <= 0) {
            operations = 0;
            throw new IOException("power cut");
        }
    }

    private final class FaultySink implements Sink {
        private final Sink sink;
        private final Path file;

        FaultySink(Sink sink, Path file) {
            this.sink = sink;
            this.file = file;
        }

        @Override
        public void write(byte[] bytes) throws IOException {
            boolean cut = operations <= 1;
            writing(file);
            if (cut) {
                // the last thing that happens is half a write
                sink.write(java.util.Arrays.copyOf(bytes, bytes.length / 2));
                operations = 0;
                throw new IOException("power cut");
            }
            int fits = (int) Math.min(room, bytes.length);
            sink.write(java.util.Arrays.copyOf(bytes, fits));
            room -= fits;
            if (fits < bytes.length) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void force() throws IOException {
            writing(file);
            sink.force();
        }

        @Override
        public void truncate(long length) throws IOException {
            writing(file);
            sink.truncate(length);
        }

        @Override
        public void close() throws IOException {
            sink.close();
        }
    }

    @Override
    public boolean isDirectory(Path path) {
        return real.isDirectory(path);
    }

    @Override
    public boolean exists(Path path) {
        return real.exists(path);
    }

    @Override
    public long size(Path file) throws IOException {
        return real.size(file);
    }

    @Override
    public byte[] read(Path file) throws IOException {
        return real.read(file);
    }

    @Override
    public Sink create(Path file) throws IOException {
        writing(file);
        return new FaultySink(real.create(file), file);
    }

    @Override
    public Sink append(Path file) throws IOException {
        writing(file);
        return new FaultySink(real.append(file), file);
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        writing(folder);
        real.makeFolder(folder);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        writing(to);
        real.replace(from, to);
    }

    @Override
    public void keep(Path from, Path to) throws IOException {
        writing(to);
        real.keep(from, to);
    }

    @Override
    public void copy(Path from, Path to) throws IOException {
        writing(to);
        real.copy(from, to);
    }

    @Override
    public void delete(Path file) throws IOException {
        writing(file);
        real.delete(file);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        return real.list(folder);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        writing(folder);
        real.forceFolder(folder);
    }

    @Override
    public Optional<Lock> lock(Path file) throws IOException {
        writing(file);
        return real.lock(file);
    }

    @Override
    public long room(Path folder) throws IOException {
        return real.room(folder);
    }
}
