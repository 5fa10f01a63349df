package org.flexwright.core.exchange;

import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.flexwright.core.Watch;
import org.flexwright.core.Message;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.Snapshot;
import org.flexwright.core.session.StoreException;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;

/**
 * A project as one archive: the saved file, the edits since, photos, curves and whatever else is in its folder, and a list of all of
 * them with size and SHA-256. Earlier saved states and locks stay out. It is made while the project is open, checks itself, and is put
 * back into a new folder only. All refusals are {@link RefusedException} with one sentence; nothing is written half.
 */
public final class Backup implements Closeable {
    /** File name ending. */
    public static final String SUFFIX = ".zip";
    private static final String LIST = "list.json";
    private static final String INSIDE = "project/";
    private static final String KIND = "flexwright-backup";
    private static final int VERSION = 1;
    private static final int LONGEST_LIST = 64 << 20;
    private static final Set<String> LEFT_OUT = Set.of("kept", "lock", "lock.held");
    private static final String MAIN = "project.xmi";
    private static final String JOURNAL = "journal/edits.jsonl";
    private static final List<String> FOLDERS = List.of("photos", "curves", "journal", "kept");
    private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    /**
     * One file of an archive.
     *
     * @param path   its path in the project's folder, parted by /
     * @param bytes  its size
     * @param sha256 its SHA-256, hexadecimal
     */
    public record Member(String path, long bytes, String sha256) {
    }

    /**
     * What an archive says of itself.
     *
     * @param kind    what kind of file it is
     * @param version version of this layout
     * @param program version of the program that made it
     * @param at      when
     * @param folder  name of the project's folder
     * @param files   its files
     */
    public record Contents(String kind, int version, String program, String at, String folder, List<Member> files) {
        /** Bytes of all files. */
        public long bytes() {
            return files.stream().mapToLong(Member::bytes).sum();
        }
    }

    private final Path file;
    private final ZipGuard zip;
    private final Contents contents;

    private Backup(Path file, ZipGuard zip, Contents contents) {
        this.file = file;
        this.zip = zip;
        this.contents = contents;
    }

    /**
     * Makes an archive of a project and reads it back. What was taken with {@link ProjectSession#snapshot} may be written on any thread
     * while edits go on.
     */
    public static Contents make(Snapshot snapshot, String program, Instant now, Path target, Watch watch) throws IOException {
        Map<String, Path> files = files(snapshot.folder());
        long whole = files.values().stream().mapToLong(p -> p.toFile().length()).sum() + snapshot.main().length + snapshot.journal().length;
        Contents made = Beside.file(target, out -> {
            ZipOutputStream zip = new ZipOutputStream(out);
            List<Member> members = new ArrayList<>();
            long[] done = new long[1];
            members.add(add(zip, MAIN, new ByteArrayInputStream(snapshot.main()), done, whole, watch));
            if (snapshot.journal().length > 0) {
                members.add(add(zip, JOURNAL, new ByteArrayInputStream(snapshot.journal()), done, whole, watch));
            }
            for (Map.Entry<String, Path> f : files.entrySet()) {
                try (InputStream in = Files.newInputStream(f.getValue())) {
                    members.add(add(zip, f.getKey(), in, done, whole, watch));
                }
            }
            Contents c = new Contents(KIND, VERSION, program, now.toString(), snapshot.folder().getFileName().toString(), members);
            zip.putNextEntry(new ZipEntry(LIST));
            zip.write(GSON.toJson(c).getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
            zip.finish();
            return c;
        });
        boolean good = false;
        try (Backup b = open(target)) {
            b.check(watch);
            good = true;
            return made;
        } finally {
            if (!good) {
                Beside.delete(target);
            }
        }
    }

    /** Files of the folder that go along as they are; links are not followed. */
    private static Map<String, Path> files(Path folder) throws IOException {
        Map<String, Path> files = new TreeMap<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
                boolean top = dir.getParent() != null && dir.getParent().equals(folder);
                return top && LEFT_OUT.contains(dir.getFileName().toString()) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                String path = folder.relativize(file).toString().replace('\\', '/');
                String name = file.getFileName().toString();
                if (attributes.isRegularFile() && !LEFT_OUT.contains(path) && !path.equals(MAIN) && !path.equals(JOURNAL) && !name.endsWith(".new")
                        && !name.endsWith(".part")) {
                    files.put(path, file);
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return files;
    }

    private static Member add(ZipOutputStream zip, String path, InputStream in, long[] done, long whole, Watch watch) throws IOException {
        zip.putNextEntry(new ZipEntry(INSIDE + path));
        MessageDigest digest = digest();
        long bytes = copy(in, new DigestOutputStream(zip, digest), done, whole, watch);
        zip.closeEntry();
        return new Member(path, bytes, HexFormat.of().formatHex(digest.digest()));
    }

    private static long copy(InputStream in, OutputStream out, long[] done, long whole, Watch watch) throws IOException {
        byte[] block = new byte[1 << 16];
        long bytes = 0;
        for (int n = in.read(block); n >= 0; n = in.read(block)) {
            watch.check();
            out.write(block, 0, n);
            bytes += n;
            done[0] += n;
            watch.done(done[0], whole);
        }
        return bytes;
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java runtime has SHA-256.", e);
        }
    }

    /** Opens an archive and reads what it says of itself; its files are not read yet. Throws {@link RefusedException} when it is none of ours. */
    public static Backup open(Path file) throws IOException {
        ZipGuard zip = ZipGuard.open(file);
        boolean good = false;
        try {
            Backup b = new Backup(file, zip, contents(file, zip));
            good = true;
            return b;
        } finally {
            if (!good) {
                zip.close();
            }
        }
    }

    private static Contents contents(Path file, ZipGuard zip) throws IOException {
        if (!zip.names().contains(LIST)) {
            throw refused("backup.noList", file, LIST);
        }
        Contents c;
        try (InputStream in = zip.open(LIST)) {
            byte[] bytes = in.readNBytes(LONGEST_LIST);
            Reader text = new StringReader(new String(bytes, StandardCharsets.UTF_8));
            c = GSON.fromJson(text, Contents.class);
        } catch (JsonParseException | NumberFormatException e) {
            throw refused("backup.badList", file, LIST);
        }
        if (c == null || !KIND.equals(c.kind()) || c.files() == null || c.folder() == null || c.program() == null || !moment(c.at())) {
            throw refused("backup.badList", file, LIST);
        }
        if (c.version() > VERSION) {
            throw refused("backup.newer", file, c.program());
        }
        Set<String> listed = new HashSet<>();
        for (Member m : c.files()) {
            if (m == null || m.path() == null || m.sha256() == null || m.bytes() < 0 || !listed.add(INSIDE + m.path())) {
                throw refused("backup.badList", file, LIST);
            }
            if (!zip.names().contains(INSIDE + m.path())) {
                throw refused("backup.missing", file, m.path());
            }
            String top = m.path().split("/")[0];
            if (LEFT_OUT.contains(top)) {
                throw refused("backup.stranger", file, m.path());
            }
        }
        listed.add(LIST);
        for (String name : zip.names()) {
            if (!listed.contains(name)) {
                throw refused("backup.stranger", file, name);
            }
        }
        if (!listed.contains(INSIDE + MAIN)) {
            throw refused("backup.missing", file, MAIN);
        }
        return c;
    }

    private static boolean moment(String at) {
        try {
            return at != null && Instant.parse(at) != null;
        } catch (DateTimeException e) {
            return false;
        }
    }

    /** What it says of itself. */
    public Contents contents() {
        return contents;
    }

    /** Reads every file and compares it with the list. Throws {@link RefusedException} that names the first damaged one. */
    public void check(Watch watch) throws IOException {
        long[] done = new long[1];
        for (Member m : contents.files()) {
            read(m, OutputStream.nullOutputStream(), done, watch);
        }
    }

    private void read(Member m, OutputStream to, long[] done, Watch watch) throws IOException {
        MessageDigest digest = digest();
        long bytes;
        try (InputStream in = zip.open(INSIDE + m.path()); OutputStream out = new DigestOutputStream(to, digest)) {
            bytes = copy(in, out, done, contents.bytes(), watch);
        }
        if (bytes != m.bytes() || !HexFormat.of().formatHex(digest.digest()).equals(m.sha256())) {
            throw refused("backup.damaged", file, m.path());
        }
    }

    /**
     * Puts the project into a new folder; the store looks whether it can be opened before it gets its name. Throws {@link RefusedException}
     * or {@link StoreException} and leaves nothing behind when anything is wrong.
     */
    public Path restore(ProjectStore store, Path folder, Watch watch) throws IOException {
        if (folder.getFileName() == null || !folder.getFileName().toString().endsWith(ProjectStore.SUFFIX)) {
            throw refused("backup.folderName", folder, ProjectStore.SUFFIX);
        }
        return Beside.folder(folder, beside -> {
            unpack(beside, watch);
            store.openReadOnly(beside).close();
            return folder;
        });
    }

    private void unpack(Path folder, Watch watch) throws IOException {
        for (String sub : FOLDERS) {
            Files.createDirectories(folder.resolve(sub));
        }
        long[] done = new long[1];
        for (Member m : contents.files()) {
            Path to = folder.resolve(m.path()).normalize();
            // the names were looked at before; this holds even if that is wrong one day
            if (!to.startsWith(folder)) {
                throw refused("zip.name", file, m.path());
            }
            Files.createDirectories(to.getParent());
            try (OutputStream out = Files.newOutputStream(to, java.nio.file.StandardOpenOption.CREATE_NEW)) {
                read(m, out, done, watch);
            }
        }
    }

    /** In what the project here differs from the one in another archive or folder; the archives are checked before. */
    public static List<Difference> compare(ProjectStore store, Path first, Path second, Watch watch) throws IOException {
        try (State a = State.of(store, first, watch); State b = State.of(store, second, watch)) {
            List<Difference> all = new ArrayList<>(Differences.between(a.session.project(), a.session.unknown(), b.session.project(), b.session.unknown()));
            Map<String, String> before = a.files;
            b.files.forEach((path, sum) -> {
                String was = before.get(path);
                if (was == null) {
                    all.add(new Difference(ImportChange.Kind.ADDED, aFile(path), "", "", ""));
                } else if (!was.equals(sum)) {
                    all.add(new Difference(ImportChange.Kind.CHANGED, aFile(path), Message.of(Backup.class, "difference.content").text(), "", ""));
                }
            });
            before.keySet().stream().filter(path -> !b.files.containsKey(path)).forEach(path -> all.add(new Difference(ImportChange.Kind.REMOVED, aFile(path),
                    "", "", "")));
            return all;
        }
    }

    private static String aFile(String path) {
        return Message.of(Backup.class, "difference.file", path).text();
    }

    /** A project in a folder, or unpacked from an archive for as long as it is looked at. */
    private record State(ProjectSession session, Map<String, String> files, Path unpacked) implements Closeable {
        static State of(ProjectStore store, Path place, Watch watch) throws IOException {
            if (Files.isDirectory(place)) {
                Map<String, String> sums = new LinkedHashMap<>();
                for (Map.Entry<String, Path> f : Backup.files(place).entrySet()) {
                    MessageDigest digest = digest();
                    try (InputStream in = Files.newInputStream(f.getValue())) {
                        copy(in, new DigestOutputStream(OutputStream.nullOutputStream(), digest), new long[1], 0, watch);
                    }
                    sums.put(f.getKey(), HexFormat.of().formatHex(digest.digest()));
                }
                return new State(store.openReadOnly(place), sums, null);
            }
            Path temp = Files.createTempDirectory("flexwright-compare");
            boolean good = false;
            try (Backup b = open(place)) {
                b.unpack(temp, watch);
                Map<String, String> sums = new LinkedHashMap<>();
                b.contents.files().stream().filter(m -> !m.path().equals(MAIN) && !m.path().equals(JOURNAL)).forEach(m -> sums.put(m.path(), m.sha256()));
                State s = new State(store.openReadOnly(temp), sums, temp);
                good = true;
                return s;
            } finally {
                if (!good) {
                    Beside.delete(temp);
                }
            }
        }

        @Override
        public void close() throws IOException {
            session.close();
            if (unpacked != null) {
                Beside.delete(unpacked);
            }
        }
    }

    private static RefusedException refused(String key, Object... args) {
        return new RefusedException(Message.of(Backup.class, key, args));
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
