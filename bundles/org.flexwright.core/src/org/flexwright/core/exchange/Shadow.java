package org.flexwright.core.exchange;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.flexwright.core.session.DetailsPackage;
import org.flexwright.core.session.ModelThread;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.Snapshot;
import org.flexwright.core.session.StoreContext;

/** A project as it stood at one moment, unsaved edits included, to be read on another thread while work on it goes on. */
public final class Shadow implements Closeable {
    private final Path folder;
    private final ProjectSession session;

    private Shadow(Path folder, ProjectSession session) {
        this.folder = folder;
        this.session = session;
    }

    /** Opens one on this thread, which alone may use it. Throws {@link org.flexwright.core.session.StoreException} when it cannot be read. */
    public static Shadow of(Snapshot snapshot, List<DetailsPackage> packages) throws IOException {
        Path folder = Files.createTempDirectory("flexwright-shadow");
        boolean good = false;
        try {
            Files.write(folder.resolve("project.xmi"), snapshot.main());
            Files.write(Files.createDirectory(folder.resolve("journal")).resolve("edits.jsonl"), snapshot.journal());
            Shadow made = new Shadow(folder, store(packages).openReadOnly(folder));
            good = true;
            return made;
        } finally {
            if (!good) {
                Beside.delete(folder);
            }
        }
    }

    /** A store that reads and restores on this thread. */
    public static ProjectStore store(List<DetailsPackage> packages) {
        return new ProjectStore(new StoreContext(ModelThread.current(), Clock.systemUTC(), "", "", packages));
    }

    /** The project, to look at. */
    public ProjectSession session() {
        return session;
    }

    @Override
    public void close() throws IOException {
        session.close();
        Beside.delete(folder);
    }
}
