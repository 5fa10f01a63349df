package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The last saved states, put aside under {@code kept/} before each save. */
final class KeptVersions {
    /** How many are kept. */
    static final int MOST = 10;
    static final String FOLDER = "kept";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final Pattern NAME = Pattern.compile("project-(\\d{1,9})-(\\d{8}T\\d{6}Z)\\.xmi");

    private final Disk disk;
    private final Path folder;

    KeptVersions(Disk disk, Path projectFolder) {
        this.disk = disk;
        this.folder = projectFolder.resolve(FOLDER);
    }

    /** Newest first. */
    List<KeptVersion> list() throws IOException {
        List<KeptVersion> all = new ArrayList<>();
        for (Path p : disk.list(folder)) {
            Matcher m = NAME.matcher(p.getFileName().toString());
            if (m.matches()) {
                try {
                    all.add(new KeptVersion(Integer.parseInt(m.group(1)), TIME.parse(m.group(2), Instant::from), disk.size(p), p));
                } catch (DateTimeException notOurs) {
                    // a file of another origin with a similar name is left alone
                    continue;
                }
            }
        }
        all.sort((a, b) -> Integer.compare(b.number(), a.number()));
        return List.copyOf(all);
    }

    /** Puts a file's present content aside. */
    void keep(Path file, Instant now) throws IOException {
        disk.makeFolder(folder);
        disk.keep(file, next(now));
    }

    /** Puts bytes aside. */
    void keep(byte[] bytes, Instant now) throws IOException {
        disk.makeFolder(folder);
        try (Disk.Sink sink = disk.create(next(now))) {
            sink.write(bytes);
            sink.force();
        }
    }

    private Path next(Instant now) throws IOException {
        int number = list().stream().mapToInt(KeptVersion::number).max().orElse(0) + 1;
        return folder.resolve(String.format("project-%04d-%s.xmi", number, TIME.format(now)));
    }

    /** Lets go of all but the newest {@value #MOST}. */
    void prune() throws IOException {
        for (KeptVersion old : list().stream().skip(MOST).toList()) {
            disk.delete(old.file());
        }
    }
}
