package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;

/** The files of a project's folder and how its main file is put in place. */
final class ProjectFiles {
    static final String MAIN = "project.xmi";
    static final String NEW = "project.xmi.new";

    private final Disk disk;
    private final Path folder;
    private final KeptVersions kept;

    ProjectFiles(Disk disk, Path folder) {
        this.disk = disk;
        this.folder = folder;
        this.kept = new KeptVersions(disk, folder);
    }

    Path main() {
        return folder.resolve(MAIN);
    }

    KeptVersions kept() {
        return kept;
    }

    /** Writes beside, forces, keeps the present file and puts the new one in its place; throws {@link StoreException}, the file then is as it was. */
    void replace(byte[] bytes, Instant now) {
        Path beside = folder.resolve(NEW);
        try {
            try (Disk.Sink sink = disk.create(beside)) {
                sink.write(bytes);
                sink.force();
            }
            if (disk.exists(main())) {
                kept.keep(main(), now);
            }
            disk.replace(beside, main());
            disk.forceFolder(folder);
            kept.prune();
        } catch (IOException | RuntimeException e) {
            throw discard(beside, Failures.writing(disk, main(), bytes.length, e));
        }
    }

    private StoreException discard(Path beside, StoreException failure) {
        try {
            disk.delete(beside);
        } catch (IOException | RuntimeException e) {
            failure.addSuppressed(e);
        }
        return failure;
    }
}
