package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;

import org.flexwright.core.Message;
import org.flexwright.core.session.StoreException.Kind;

/** Puts a kept version in the place of the present state. */
final class Restoring {
    private final StoreContext context;
    private final Disk disk;
    private final Path folder;
    private final ProjectFiles files;

    Restoring(StoreContext context, Disk disk, Path folder) {
        this.context = context;
        this.disk = disk;
        this.folder = folder;
        this.files = new ProjectFiles(disk, folder);
    }

    void restore(KeptVersion version) {
        Instant now = context.clock().instant();
        try {
            byte[] bytes = kept(version);
            FolderLock.Taking taking = FolderLock.take(disk, folder, context.who(), now);
            if (taking.lock() == null) {
                throw ProjectStore.failure(Kind.LOCKED, "restore.locked", folder, taking.heldBy().text());
            }
            try {
                keepPresent(now);
                files.replace(bytes, now);
                new Journal(disk, folder.resolve(Journal.FOLDER).resolve(Journal.FILE), 0, false).clear();
            } finally {
                taking.lock().release();
            }
        } catch (IOException e) {
            throw Failures.writing(disk, files.main(), version.bytes(), e);
        }
    }

    private byte[] kept(KeptVersion version) throws IOException {
        if (!files.kept().list().contains(version)) {
            throw ProjectStore.failure(Kind.NOT_FOUND, "restore.gone", version.file(), folder);
        }
        byte[] bytes = disk.read(version.file());
        try {
            ModelReader.document(new Packages(context.packages()), bytes);
        } catch (UnreadableException e) {
            throw new StoreException(e.kind(), Message.of(ProjectStore.class, "open.unreadable", version.file(), e.what().text()), e);
        }
        return bytes;
    }

    /** Unsaved edits go into a kept version of their own; a damaged file is kept as it is when the main file is replaced. */
    private void keepPresent(Instant now) throws IOException {
        if (!disk.exists(files.main())) {
            return;
        }
        byte[] present = disk.read(files.main());
        Packages packages = new Packages(context.packages());
        Path journal = folder.resolve(Journal.FOLDER).resolve(Journal.FILE);
        try {
            ModelReader.Content content = ModelReader.document(packages, present);
            var project = (org.flexwright.model.Project) content.roots().getFirst();
            Replay replay = new Replay(packages, project, new ModelIndex(project, content.ids()), Journal.base(present), disk, journal);
            replay.run();
            if (replay.needsPlugin() != null) {
                throw new StoreException(Kind.READ_ONLY, replay.needsPlugin(), null);
            }
            replay.journal(now);
            if (replay.lastNumber() > project.getJournalSeq()) {
                project.setJournalSeq(replay.lastNumber());
                files.kept().keep(ModelWriter.document(packages, project, present.length), now);
            }
        } catch (UnreadableException e) {
            // the damaged file itself is kept by the replacement; its journal cannot be applied and is put aside
            if (disk.exists(journal)) {
                disk.copy(journal, journal.resolveSibling("aside-" + now.toString().replace(":", "") + ".jsonl"));
            }
        }
    }
}
