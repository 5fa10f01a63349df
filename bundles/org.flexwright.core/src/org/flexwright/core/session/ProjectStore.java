package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

import org.flexwright.core.Message;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.Project;

/** Makes, opens and restores projects on disk. */
public final class ProjectStore {
    /** File name ending of a project's folder. */
    public static final String SUFFIX = ".flexwright";
    /** Version of the file's layout this program writes. */
    static final int FORMAT = 1;
    /** Folders of a new project beside its main file. */
    private static final List<String> FOLDERS = List.of("photos", "curves", Journal.FOLDER, KeptVersions.FOLDER);
    private static final int LONGEST_NAME = 120;

    private final StoreContext context;
    private final Disk disk;

    /** A store that works with what the context gives. */
    public ProjectStore(StoreContext context) {
        this(context, new RealDisk());
    }

    ProjectStore(StoreContext context, Disk disk) {
        this.context = Objects.requireNonNull(context, "context");
        this.disk = Objects.requireNonNull(disk, "disk");
    }

    /** Makes a new project; the folder's name ends in {@link #SUFFIX} and nothing is there yet. Throws {@link StoreException}. */
    public ProjectSession create(Path folder, String title) {
        Project project = ModelFactory.eINSTANCE.createProject();
        project.setTitle(title);
        project.setCreatedAt(context.clock().instant());
        return make(folder, new Packages(context.packages()), project);
    }

    private ProjectSession make(Path folder, Packages packages, Project project) {
        Path place = folder.toAbsolutePath().normalize();
        String name = place.getFileName() == null ? "" : place.getFileName().toString();
        if (!name.endsWith(SUFFIX) || name.length() == SUFFIX.length() || name.length() > LONGEST_NAME
                || name.chars().anyMatch(c -> c < ' ' || "<>:\"|?*\\".indexOf(c) >= 0)) {
            throw failure(StoreException.Kind.NAME, "create.name", name, SUFFIX, LONGEST_NAME);
        }
        if (disk.exists(place)) {
            throw failure(StoreException.Kind.EXISTS, "create.exists", place);
        }
        Instant now = context.clock().instant();
        ModelIndex.each(project, Ids::give);
        project.setWrittenBy(context.program());
        project.setFormatVersion(FORMAT);
        byte[] bytes;
        try {
            bytes = ModelWriter.document(packages, project, 0);
        } catch (XmlText.ForbiddenCharacterException e) {
            throw failure(StoreException.Kind.NAME, "edit.character", e.code(), e.place());
        }
        try {
            for (String sub : FOLDERS) {
                disk.makeFolder(place.resolve(sub));
            }
            new ProjectFiles(disk, place).replace(bytes, now);
        } catch (IOException | RuntimeException e) {
            throw e instanceof StoreException s ? s : Failures.writing(disk, place, bytes.length, e);
        }
        return open(place);
    }

    /** An empty project in memory to be filled and made by {@link #create(Path, Draft)}; nothing is written. */
    public Draft draft() {
        return new Draft(new Packages(context.packages()));
    }

    /** A project being put together before there is a folder for it. */
    public static final class Draft {
        private final Packages packages;
        private final Project project = ModelFactory.eINSTANCE.createProject();

        private Draft(Packages packages) {
            this.packages = packages;
        }

        /** The project; filled directly. */
        public Project project() {
            return project;
        }

        /** For what this program does not know. */
        public UnknownText unknown() {
            return new UnknownText(packages);
        }
    }

    /** Makes a project of what was put together; its ids stay. Nothing may be at that place yet. Throws {@link StoreException}. */
    public ProjectSession create(Path folder, Draft draft) {
        return make(folder, draft.packages, draft.project);
    }

    /**
     * What is on disk of a project that may be open elsewhere at this moment: the saved file and the journal that belongs to it. Throws
     * {@link StoreException} when it cannot be read or keeps changing.
     */
    public Snapshot snapshot(Path folder) {
        return Snapshot.of(disk, folder.toAbsolutePath().normalize());
    }

    /** The project as an earlier saved state has it, to look at. Throws {@link StoreException}. */
    public Project kept(KeptVersion version) {
        try {
            return (Project) ModelReader.document(new Packages(context.packages()), disk.read(version.file())).roots().getFirst();
        } catch (IOException e) {
            throw Failures.reading(version.file(), e);
        } catch (UnreadableException e) {
            throw new StoreException(e.kind(), Message.of(ProjectStore.class, "open.unreadable", version.file(), e.what().text()), e);
        }
    }

    /**
     * Opens a project for editing; read-only when it cannot be written, was written by a newer program or is open elsewhere, which
     * {@link ProjectSession#readOnlyReason()} tells. Throws {@link StoreException} when it cannot be read.
     */
    public ProjectSession open(Path folder) {
        return new ProjectSession(new Opening(context, disk, folder).open(true), context, disk);
    }

    /** Opens a project to look at; makes no file and takes no lock. Throws {@link StoreException} when it cannot be read. */
    public ProjectSession openReadOnly(Path folder) {
        return new ProjectSession(new Opening(context, disk, folder).open(false), context, disk);
    }

    /** Earlier saved states, newest first. */
    public List<KeptVersion> kept(Path folder) {
        Path place = folder.toAbsolutePath().normalize();
        try {
            return new KeptVersions(disk, place).list();
        } catch (IOException e) {
            throw Failures.reading(place.resolve(KeptVersions.FOLDER), e);
        }
    }

    /**
     * Makes an earlier state the project's state. The present one is kept first, with its unsaved edits, or as it is when it cannot be
     * read. The project must not be open. Throws {@link StoreException}.
     */
    public void restore(Path folder, KeptVersion version) {
        new Restoring(context, disk, folder.toAbsolutePath().normalize()).restore(version);
    }

    static StoreException failure(StoreException.Kind kind, String key, Object... args) {
        return new StoreException(kind, Message.of(ProjectStore.class, key, args), null);
    }
}
