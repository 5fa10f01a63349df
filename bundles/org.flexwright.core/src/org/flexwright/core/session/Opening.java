package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.flexwright.core.Message;
import org.flexwright.core.session.StoreException.Kind;
import org.flexwright.model.PluginUse;
import org.flexwright.model.Project;

/** Opens one project once. */
final class Opening {
    /** More than any project has; a larger file is not taken into memory. */
    private static final long LARGEST = 1L << 29;

    private final StoreContext context;
    private final Disk disk;
    private final Path folder;
    private final ProjectFiles files;
    private final Packages packages;
    private final List<Message> notices = new ArrayList<>();
    private Message readOnly;
    private FolderLock lock;

    Opening(StoreContext context, Disk disk, Path folder) {
        this.context = context;
        this.disk = disk;
        this.folder = folder.toAbsolutePath().normalize();
        this.files = new ProjectFiles(disk, this.folder);
        this.packages = new Packages(context.packages());
    }

    OpenedProject open(boolean toEdit) {
        if (!context.thread().isCurrent()) {
            throw new IllegalStateException("A project is opened on the model thread.");
        }
        look();
        if (!toEdit) {
            readOnly = Message.of(ProjectStore.class, "open.asked");
        } else if (readOnly == null) {
            lock();
        }
        boolean opened = false;
        try {
            OpenedProject result = load();
            opened = true;
            return result;
        } finally {
            if (!opened) {
                letGo();
            }
        }
    }

    /** Looks at the first element before anything is made in the folder. */
    private void look() {
        try {
            ModelReader.Content head = ModelReader.head(packages, bytes());
            if (head.modelVersion() > Packages.modelVersion() || head.formatVersion() > ProjectStore.FORMAT) {
                readOnly = Message.of(ProjectStore.class, "open.newer", head.modelVersion() + "." + head.formatVersion(),
                        Packages.modelVersion() + "." + ProjectStore.FORMAT);
            }
        } catch (UnreadableException e) {
            throw unreadable(e);
        }
    }

    private byte[] bytes() {
        Path main = files.main();
        if (!disk.exists(main)) {
            throw missing();
        }
        try {
            if (disk.size(main) > LARGEST) {
                throw ProjectStore.failure(Kind.UNREADABLE, "open.large", main, LARGEST >> 20);
            }
            return disk.read(main);
        } catch (IOException e) {
            throw Failures.reading(main, e);
        }
    }

    private StoreException missing() {
        if (!disk.isDirectory(folder)) {
            return ProjectStore.failure(Kind.NOT_FOUND, "open.noFolder", folder, ProjectStore.SUFFIX);
        }
        List<KeptVersion> kept = kept();
        return kept.isEmpty() ? ProjectStore.failure(Kind.NOT_FOUND, "open.noFile", folder, ProjectFiles.MAIN)
                : ProjectStore.failure(Kind.NOT_FOUND, "open.noFileButKept", folder, ProjectFiles.MAIN, kept.size(), kept.getFirst().at());
    }

    private List<KeptVersion> kept() {
        try {
            return files.kept().list();
        } catch (IOException e) {
            throw Failures.reading(folder, e);
        }
    }

    private StoreException unreadable(UnreadableException e) {
        List<KeptVersion> kept = kept();
        Message sentence = kept.isEmpty() ? Message.of(ProjectStore.class, "open.unreadable", files.main(), e.what().text())
                : Message.of(ProjectStore.class, "open.unreadableButKept", files.main(), e.what().text(), kept.size(), kept.getFirst().at());
        return new StoreException(e.kind(), sentence, e);
    }

    private void lock() {
        try {
            FolderLock.Taking taking = FolderLock.take(disk, folder, context.who(), context.clock().instant());
            lock = taking.lock();
            readOnly = taking.heldBy();
        } catch (IOException | RuntimeException e) {
            StoreException why = Failures.writing(disk, folder.resolve(FolderLock.INFO), 0, e);
            readOnly = Message.of(ProjectStore.class, "open.cannotWrite", folder, why.getMessage());
        }
    }

    private OpenedProject load() {
        byte[] bytes = bytes();
        ModelReader.Content content;
        try {
            content = ModelReader.document(packages, bytes);
        } catch (UnreadableException e) {
            throw unreadable(e);
        }
        Project project = (Project) content.roots().getFirst();
        ModelIndex index = new ModelIndex(project, content.ids());
        String base = Journal.base(bytes);
        Replay replay = new Replay(packages, project, index, base, disk, folder.resolve(Journal.FOLDER).resolve(Journal.FILE));
        Journal journal = null;
        try {
            replay.run();
            if (replay.needsPlugin() != null && readOnly == null) {
                // going on would put edits aside that can still be made when the plugin is back
                letGo();
                lock = null;
                readOnly = replay.needsPlugin();
            }
            if (readOnly == null) {
                journal = replay.journal(context.clock().instant());
            }
        } catch (IOException | RuntimeException e) {
            throw e instanceof StoreException s ? s : Failures.writing(disk, folder.resolve(Journal.FOLDER), 0, e);
        }
        notices.addAll(replay.notices());
        Set<String> absent = new LinkedHashSet<>(content.missing());
        absent.addAll(replay.missing());
        List<MissingPlugin> missing = absent.stream().map(nsURI -> missing(project, nsURI)).toList();
        missing.forEach(m -> notices.add(m.plugin().isEmpty() ? Message.of(ProjectStore.class, "open.missingUnknown", m.nsURI())
                : Message.of(ProjectStore.class, "open.missing", m.plugin(), m.version(), m.nsURI())));
        if (content.unknownFeatures() > 0) {
            notices.add(Message.of(ProjectStore.class, "open.unknownFeatures", Integer.toString(content.unknownFeatures())));
        }
        return new OpenedProject(folder, files, project, index, packages, base, bytes.length, replay.lastNumber(), journal, lock, readOnly, missing,
                List.copyOf(notices));
    }

    private static MissingPlugin missing(Project project, String nsURI) {
        for (PluginUse u : project.getPlugins()) {
            if (nsURI.equals(u.getNsURI())) {
                return new MissingPlugin(nsURI, Objects.requireNonNullElse(u.getPlugin(), ""), Objects.requireNonNullElse(u.getVersion(), ""));
            }
        }
        return new MissingPlugin(nsURI, "", "");
    }

    private void letGo() {
        if (lock != null) {
            try {
                lock.release();
            } catch (IOException e) {
                throw Failures.writing(disk, folder.resolve(FolderLock.INFO), 0, e);
            }
        }
    }
}
