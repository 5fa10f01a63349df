package org.flexwright.core.exchange;

import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

import org.flexwright.core.Message;
import org.flexwright.core.session.RefusedException;

/**
 * A zip file from a stranger. Refused before anything is unpacked: names that lead out of the folder they are unpacked into or mean
 * something to a system, the same name twice (case apart), too many members, too much content, content far larger than its bytes and
 * members that share bytes. While reading, a member that gives more or less than it said, or other bytes than its sum, is refused too. All refusals are
 * {@link RefusedException}.
 */
final class ZipGuard implements Closeable {
    /** More than a project of many years has. */
    static final int MOST_MEMBERS = 20_000;
    /** Bytes of all members. */
    static final long MOST_BYTES = 8L << 30;
    /** A member of zeros is packed a thousand to one; tables and records come to 50, deflate cannot do more than about 1030. */
    static final int MOST_RATIO = 250;
    /** Below this a high ratio harms nobody. */
    private static final long SMALL = 16L << 20;
    private static final int DEEPEST = 8;
    private static final int LONGEST = 240;
    private static final java.util.Set<String> DEVICES = java.util.Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7",
            "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private final Path file;
    private final ZipFile zip;
    private final Map<String, ZipEntry> entries = new LinkedHashMap<>();
    private long size;

    private ZipGuard(Path file, ZipFile zip) {
        this.file = file;
        this.zip = zip;
    }

    static ZipGuard open(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw refused("zip.none", file);
        }
        ZipGuard guard;
        try {
            guard = new ZipGuard(file, new ZipFile(file.toFile()));
        } catch (ZipException | IllegalArgumentException e) {
            // names in no encoding come as an IllegalArgumentException
            throw refused("zip.damaged", file);
        }
        boolean good = false;
        try {
            guard.look();
            good = true;
            return guard;
        } finally {
            if (!good) {
                guard.close();
            }
        }
    }

    private void look() throws IOException {
        if (zip.size() > MOST_MEMBERS) {
            throw refused("zip.members", file, MOST_MEMBERS);
        }
        Map<String, String> seen = new LinkedHashMap<>();
        long packed = 0;
        int count = 0;
        for (Enumeration<? extends ZipEntry> e = zip.entries(); e.hasMoreElements();) {
            ZipEntry entry = e.nextElement();
            count++;
            String name = entry.getName();
            checkName(name);
            if (seen.put(name.toLowerCase(Locale.ROOT), name) != null) {
                throw refused("zip.twice", file, name);
            }
            if (entry.getSize() < 0 || entry.getCompressedSize() < 0) {
                throw refused("zip.noSize", file, name);
            }
            size += entry.getSize();
            packed += entry.getCompressedSize();
            if (size > MOST_BYTES) {
                throw refused("zip.large", file, MOST_BYTES >> 30);
            }
            if (entry.getSize() > SMALL && entry.getSize() / Math.max(1, entry.getCompressedSize()) > MOST_RATIO) {
                throw refused("zip.ratio", file, name, MOST_RATIO);
            }
            entries.put(name, entry);
        }
        if (count != zip.size()) {
            throw refused("zip.damaged", file);
        }
        // members that lie over each other give more packed bytes than the file has
        if (packed > Files.size(file)) {
            throw refused("zip.overlap", file);
        }
    }

    private void checkName(String name) {
        if (name.isEmpty() || name.length() > LONGEST || name.startsWith("/") || name.endsWith("/") || name.indexOf('\\') >= 0 || name.indexOf(':') >= 0
                || name.chars().anyMatch(c -> c < ' ' || c == 0x7f)) {
            throw refused("zip.name", file, printable(name));
        }
        String[] parts = name.split("/", -1);
        if (parts.length > DEEPEST) {
            throw refused("zip.name", file, printable(name));
        }
        for (String part : parts) {
            String stem = part.toLowerCase(Locale.ROOT).replaceFirst("\\..*$", "");
            if (part.isEmpty() || part.equals(".") || part.equals("..") || part.endsWith(".") || part.endsWith(" ") || DEVICES.contains(stem)) {
                throw refused("zip.name", file, printable(name));
            }
        }
    }

    private static String printable(String name) {
        String plain = name.replaceAll("\\p{Cntrl}", "?");
        return plain.length() > 80 ? plain.substring(0, 80) + "..." : plain;
    }

    static RefusedException refused(String key, Object... args) {
        return new RefusedException(Message.of(ZipGuard.class, key, args));
    }

    List<String> names() {
        return new ArrayList<>(entries.keySet());
    }

    /** Bytes of all members unpacked. */
    long size() {
        return size;
    }

    /** A member's bytes. Throws {@link RefusedException} when it is not there; reading throws it when the member is damaged. */
    InputStream open(String name) throws IOException {
        ZipEntry entry = entries.get(name);
        if (entry == null) {
            throw refused("zip.missing", file, name);
        }
        InputStream in;
        try {
            in = zip.getInputStream(entry);
        } catch (ZipException e) {
            throw refused("zip.member", file, name);
        }
        return new FilterInputStream(in) {
            private final CRC32 sum = new CRC32();
            private long left = entry.getSize();

            @Override
            public int read() throws IOException {
                byte[] one = new byte[1];
                return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
            }

            @Override
            public int read(byte[] b, int off, int len) throws IOException {
                int n;
                try {
                    n = super.read(b, off, len);
                } catch (ZipException | java.io.EOFException e) {
                    throw refused("zip.member", file, name);
                }
                if (n > 0) {
                    left -= n;
                    sum.update(b, off, n);
                }
                // nobody else compares the sum, and a flipped byte may well unpack to another number
                if (left < 0 || n < 0 && (left > 0 || entry.getCrc() >= 0 && entry.getCrc() != sum.getValue())) {
                    throw refused("zip.member", file, name);
                }
                return n;
            }
        };
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
