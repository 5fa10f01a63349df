package org.flexwright.balance;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;

import org.flexwright.core.balance.BalanceConnection;
import org.flexwright.core.balance.BalanceListener;
import org.flexwright.core.balance.BalanceSettings;
import org.flexwright.core.balance.BalanceSource;
import org.osgi.service.component.annotations.Component;

/** Balances whose program writes lines into a file, or into a pipe. Only what is written from now on counts. */
@Component(service = BalanceSource.class)
public final class FileBalances implements BalanceSource {
    /** Id of this source. */
    public static final String ID = "balance.file";
    private static final long PAUSE_MS = 100;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.FILE_TITLE.with().text();
    }

    @Override
    public List<Place> places() {
        return List.of();
    }

    @Override
    public BalanceConnection open(BalanceSettings settings, BalanceListener listener) {
        boolean[] again = new boolean[1];
        return new LineConnection(() -> {
            // a file that came anew while it was watched is read from its beginning
            LineInput input = open(settings.place(), again[0]);
            again[0] = true;
            return input;
        }, settings, listener).start();
    }

    private static LineInput open(String place, boolean fromStart) throws IOException {
        Path path;
        try {
            path = Path.of(place);
        } catch (InvalidPathException e) {
            throw new IOException(Say.NO_FILE.with(place).text(), e);
        }
        if (!Files.isReadable(path) || Files.isDirectory(path)) {
            throw new IOException(Say.NO_FILE.with(place).text());
        }
        return Files.isRegularFile(path) ? new Growing(path, fromStart) : new Pipe(path);
    }

    private static int pause() throws IOException {
        try {
            Thread.sleep(PAUSE_MS);
            return 0;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }

    /** A file that grows; one that was emptied, or another one in its place, is opened again. */
    private static final class Growing implements LineInput {
        private final Path path;
        private final Object key;
        private final RandomAccessFile file;

        Growing(Path path, boolean fromStart) throws IOException {
            this.path = path;
            this.key = key();
            this.file = new RandomAccessFile(path.toFile(), "r");
            file.seek(fromStart ? 0 : file.length());
        }

        private Object key() throws IOException {
            return Files.readAttributes(path, BasicFileAttributes.class).fileKey();
        }

        @Override
        public int read(byte[] buffer) throws IOException {
            int read = file.read(buffer);
            if (read > 0) {
                return read;
            }
            boolean another = Files.size(path) < file.getFilePointer() || key != null && !key.equals(key());
            return another ? -1 : pause();
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }

    /** A pipe: opened for writing, too, so that opening it waits for nobody and its end is not reached when one writer leaves. */
    private static final class Pipe implements LineInput {
        private final RandomAccessFile both;
        private final FileInputStream in;

        Pipe(Path path) throws IOException {
            both = new RandomAccessFile(path.toFile(), "rw");
            in = new FileInputStream(both.getFD());
        }

        @Override
        public int read(byte[] buffer) throws IOException {
            int there = in.available();
            return there > 0 ? in.read(buffer, 0, Math.min(there, buffer.length)) : pause();
        }

        @Override
        public void close() throws IOException {
            both.close();
        }
    }
}
