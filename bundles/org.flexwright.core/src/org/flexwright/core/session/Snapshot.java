package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

import org.flexwright.core.session.StoreException.Kind;

/**
 * What is on disk of a project at one moment.
 *
 * @param folder  its folder
 * @param main    the saved file
 * @param journal the edits since, whole lines only; empty when there are none
 */
public record Snapshot(Path folder, byte[] main, byte[] journal) {
    /** Another program may save while both files are read; that takes it milliseconds, so a few tries are enough. */
    private static final int TRIES = 5;

    static Snapshot of(Disk disk, Path folder) {
        Path main = folder.resolve(ProjectFiles.MAIN);
        Path journal = folder.resolve(Journal.FOLDER).resolve(Journal.FILE);
        if (!disk.exists(main)) {
            throw disk.isDirectory(folder) ? ProjectStore.failure(Kind.NOT_FOUND, "open.noFile", folder, ProjectFiles.MAIN)
                    : ProjectStore.failure(Kind.NOT_FOUND, "open.noFolder", folder, ProjectStore.SUFFIX);
        }
        try {
            for (int i = 0; i < TRIES; i++) {
                byte[] before = disk.read(main);
                byte[] edits = disk.exists(journal) ? disk.read(journal) : new byte[0];
                if (Arrays.equals(before, disk.read(main))) {
                    return new Snapshot(folder, before, wholeLines(edits));
                }
            }
        } catch (IOException e) {
            throw Failures.reading(main, e);
        }
        throw ProjectStore.failure(Kind.FAILED, "snapshot.changing", folder);
    }

    /** A line being written at this moment has not happened yet. */
    private static byte[] wholeLines(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        return Arrays.copyOf(bytes, end);
    }
}
