package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.Message;
import org.flexwright.model.Project;

/** A project that is open. All calls on the model thread. */
public final class ProjectSession implements AutoCloseable {
    private final OpenedProject opened;
    private final StoreContext context;
    private final Disk disk;
    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private final Deque<Change> undone = new ArrayDeque<>();
    private final Deque<Change> done = new ArrayDeque<>();
    private final List<Message> notices;
    private long number;
    private long savedNumber;
    private List<String> bases;
    private int fileBytes;
    private boolean editing;
    private boolean closed;
    private PendingSave saving;

    ProjectSession(OpenedProject opened, StoreContext context, Disk disk) {
        this.opened = opened;
        this.context = context;
        this.disk = disk;
        this.notices = new ArrayList<>(opened.notices());
        this.savedNumber = opened.project().getJournalSeq();
        this.number = opened.lastNumber();
        this.bases = List.of(opened.base());
        this.fileBytes = opened.fileBytes();
    }

    /** The project; changed through {@link #execute} alone. */
    public Project project() {
        return opened.project();
    }

    /** The project's folder. */
    public Path folder() {
        return opened.folder();
    }

    /** True when nothing can be changed or saved. */
    public boolean readOnly() {
        return opened.readOnly() != null;
    }

    /** Why nothing can be changed, one sentence; empty when it can. */
    public String readOnlyReason() {
        return readOnly() ? opened.readOnly().text() : "";
    }

    /** What there was to say on opening and since: edits that came back, a damaged journal, absent plugins. */
    public List<Message> notices() {
        return List.copyOf(notices);
    }

    /**
     * Makes one edit that can be undone by its name. It is in the journal on disk before this returns. When the work throws, everything
     * is as before and the exception goes on; likewise with a {@link StoreException} when the journal cannot be written, and with a
     * {@link RefusedException} when a text cannot be kept or a frozen target sheet or recipe would change.
     */
    public void execute(String name, Consumer<Edit> work) {
        run(name, null, work);
    }

    /** As {@link #execute}; when the step to be undone next was made with an equal key, both become one step. */
    public void merge(String name, Object mergeKey, Consumer<Edit> work) {
        run(name, Objects.requireNonNull(mergeKey, "mergeKey"), work);
    }

    private void run(String name, Object mergeKey, Consumer<Edit> work) {
        Objects.requireNonNull(name, "name");
        requireWritable();
        Recorder recorder = new Recorder(project(), opened.index(), context.clock().instant(), context.who());
        Change change;
        editing = true;
        try {
            work.accept(recorder);
            PluginUses.note(recorder, opened.packages());
            recorder.name();
            recorder.end();
            change = recorder.change(name, mergeKey);
            if (change.isEmpty()) {
                return;
            }
            Frozen.check(change);
            References.check(change, project());
            write(change);
        } catch (XmlText.ForbiddenCharacterException e) {
            recorder.rollBack();
            throw new RefusedException(Message.of(ProjectStore.class, "edit.character", e.code(), e.place()));
        } catch (RuntimeException | Error e) {
            recorder.rollBack();
            throw e;
        } finally {
            editing = false;
        }
        index(change);
        undone.clear();
        Change last = done.peek();
        if (mergeKey != null && last != null && mergeKey.equals(last.mergeKey())) {
            done.pop();
            Change both = last.joined(change);
            if (!both.isEmpty()) {
                done.push(both);
            }
        } else {
            done.push(change);
        }
        tell(change);
    }

    private void requireWritable() {
        requireThread();
        if (editing) {
            throw new IllegalStateException("An edit cannot begin inside another one.");
        }
        if (readOnly()) {
            throw new StoreException(StoreException.Kind.READ_ONLY, Message.of(ProjectStore.class, "edit.readOnly", readOnlyReason()), null);
        }
    }

    private void requireThread() {
        if (closed) {
            throw new IllegalStateException("The session has ended.");
        }
        if (!context.thread().isCurrent()) {
            throw new IllegalStateException("The project belongs to the model thread.");
        }
    }

    private void write(Change change) {
        Journal.Line line = new Journal.Line(number + 1, context.clock().instant(), bases, change.name(),
                ChangeText.of(opened.packages(), opened.index(), project(), change));
        try {
            opened.journal().append(line);
        } catch (IOException | RuntimeException e) {
            throw Failures.writing(disk, folder().resolve(Journal.FOLDER).resolve(Journal.FILE), 0, e);
        }
        number++;
    }

    private void index(Change change) {
        change.leaving().forEach(opened.index()::remove);
        change.arriving().forEach(opened.index()::add);
    }

    private void tell(Change change) {
        listeners.forEach(l -> l.changed(change.touched()));
    }

    /** True when there is a step to undo. */
    public boolean canUndo() {
        return !done.isEmpty();
    }

    /** True when there is a step to redo. */
    public boolean canRedo() {
        return !undone.isEmpty();
    }

    /** Name of the step to undo, empty when there is none. */
    public String undoName() {
        return done.isEmpty() ? "" : done.peek().name();
    }

    /** Name of the step to redo, empty when there is none. */
    public String redoName() {
        return undone.isEmpty() ? "" : undone.peek().name();
    }

    /** Undoes the last step; nothing when there is none. It is in the journal before this returns. */
    public void undo() {
        requireWritable();
        if (canUndo()) {
            turn(done.peek().reversed(), done, undone);
        }
    }

    /** Makes the last undone step again; nothing when there is none. */
    public void redo() {
        requireWritable();
        if (canRedo()) {
            turn(undone.peek(), undone, done);
        }
    }

    /** Makes a change and moves its step from one pile to the other before anybody hears of it. */
    private void turn(Change change, Deque<Change> from, Deque<Change> to) {
        change.apply();
        try {
            write(change);
        } catch (RuntimeException e) {
            change.reversed().apply();
            throw e;
        }
        index(change);
        to.push(from.pop());
        tell(change);
    }

    /** True when there are edits the saved file does not hold (they are in the journal). */
    public boolean dirty() {
        return number > savedNumber;
    }

    /** Saves; throws {@link StoreException} and leaves the saved file as it was when it cannot. Nothing is written when nothing is to be saved. */
    public void save() {
        PendingSave p = beginSave();
        p.write();
        p.finish();
    }

    /** First part of saving: turns the project into bytes. Edits may go on while they are written. */
    public PendingSave beginSave() {
        requireWritable();
        if (saving != null) {
            throw new IllegalStateException("A save is on its way.");
        }
        if (!dirty()) {
            saving = new PendingSave(new byte[0], number, false, () -> { });
            return saving;
        }
        Project p = project();
        long formerNumber = p.getJournalSeq();
        String formerProgram = p.getWrittenBy();
        int formerFormat = p.getFormatVersion();
        p.setJournalSeq(number);
        p.setWrittenBy(context.program());
        p.setFormatVersion(ProjectStore.FORMAT);
        byte[] bytes = ModelWriter.document(opened.packages(), p, fileBytes);
        saving = new PendingSave(bytes, number, true, () -> {
            p.setJournalSeq(formerNumber);
            p.setWrittenBy(formerProgram);
            p.setFormatVersion(formerFormat);
        });
        bases = List.of(bases.getFirst(), Journal.base(bytes));
        return saving;
    }

    /** A save on its way: {@link #write()} on any thread, then {@link #finish()} on the model thread. */
    public final class PendingSave {
        private final byte[] bytes;
        private final long upTo;
        private final boolean needed;
        private final Runnable takeBack;
        private volatile StoreException failure;
        private volatile boolean written;

        private PendingSave(byte[] bytes, long upTo, boolean needed, Runnable takeBack) {
            this.bytes = bytes;
            this.upTo = upTo;
            this.needed = needed;
            this.takeBack = takeBack;
        }

        /** Writes beside, forces, puts the present file aside and the new one in its place. A failure is thrown by {@link #finish()}. */
        public void write() {
            if (needed) {
                try {
                    opened.files().replace(bytes, context.clock().instant());
                } catch (StoreException e) {
                    failure = e;
                }
            }
            written = true;
        }

        /** Ends the save; throws {@link StoreException} when it failed: the file is then as it was, and all edits are still in the journal. */
        public void finish() {
            requireThread();
            if (saving != this || !written) {
                throw new IllegalStateException("This save is not on its way.");
            }
            saving = null;
            if (failure != null) {
                takeBack.run();
                bases = List.of(bases.getFirst());
                throw failure;
            }
            if (needed) {
                bases = List.of(bases.getLast());
                fileBytes = bytes.length;
                savedNumber = upTo;
                forgetJournal();
            }
            listeners.forEach(SessionListener::saved);
        }
    }

    private void forgetJournal() {
        // lines made while the save was written are still needed; the saved ones among them are skipped by their number
        if (number == savedNumber) {
            try {
                opened.journal().clear();
            } catch (IOException e) {
                notices.add(Message.of(ProjectStore.class, "journal.notCleared", e.getMessage()));
            }
        }
    }

    /** Adds a listener. */
    public void addListener(SessionListener listener) {
        listeners.add(Objects.requireNonNull(listener, "listener"));
    }

    /** Takes a listener away. */
    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    /** Plugins that wrote details into this project and are not here. */
    public List<MissingPlugin> missingPlugins() {
        return opened.missing();
    }

    /** Stable address of an object of the project: its id, or the id of what contains it and the way from there. */
    public String address(EObject object) {
        return opened.index().address(object);
    }

    /** The object at an address. */
    public Optional<EObject> find(String address) {
        return Optional.ofNullable(opened.index().find(address));
    }

    /** For what the project holds that this program does not know. */
    public UnknownText unknown() {
        return new UnknownText(opened.packages());
    }

    /** The sentence why this object cannot be changed or removed because it is frozen or in what is frozen; empty when it can. */
    public Optional<Message> frozen(EObject object) {
        return Frozen.holder(object).map(Frozen::sentence);
    }

    /** What is on disk of this project now, to be copied at leisure: the saved file and the journal that belongs to it. */
    public Snapshot snapshot() {
        requireThread();
        return Snapshot.of(disk, folder());
    }

    /** The project as it would be written now. */
    byte[] bytes() {
        return ModelWriter.document(opened.packages(), project(), fileBytes);
    }

    /** Ends the session and gives the lock back. Edits not saved stay in the journal and come back on the next opening. */
    @Override
    public void close() {
        if (closed) {
            return;
        }
        requireThread();
        closed = true;
        try {
            opened.release();
        } catch (IOException e) {
            throw Failures.writing(disk, folder(), 0, e);
        }
    }
}
