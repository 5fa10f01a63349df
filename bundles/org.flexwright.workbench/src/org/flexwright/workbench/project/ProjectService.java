package org.flexwright.workbench.project;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.find.Finding;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.Edit;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectSession.PendingSave;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.SessionListener;
import org.flexwright.core.session.StoreException;
import org.flexwright.core.view.Comparison;
import org.flexwright.model.Identified;
import org.flexwright.model.Project;
import org.flexwright.workbench.settings.Settings;

/**
 * The one open project of a window: opens, saves and closes it, and keeps its findings up to date. All calls on the screen's thread.
 * Get it from a part's site: {@code site.getService(ProjectService.class)}.
 */
public final class ProjectService {

    /** Rests this long after an edit before the rules are asked, milliseconds. */
    private static final int DEBOUNCE = 300;

    private final Display display;
    private final Registries registries;
    private final ProjectStore store;
    private final Settings settings;
    private final List<ProjectListener> listeners = new CopyOnWriteArrayList<>();
    private final Set<EObject> unsaved = new HashSet<>();
    private final Job findingsJob = new FindingsJob();
    private final SessionListener watcher = new SessionListener() {
        @Override
        public void changed(Set<EObject> touched) {
            unsaved.addAll(touched);
            comparison = null;
            listeners.forEach(l -> l.changed(touched));
            check();
        }

        @Override
        public void saved() {
            unsaved.clear();
            listeners.forEach(ProjectListener::saved);
        }
    };
    private ProjectSession session;
    private Saving saving;
    private List<Finding> findings = List.of();
    private Comparison comparison;

    /** A window without a project. */
    public ProjectService(Display display, Registries registries, ProjectStore store, Settings settings) {
        this.display = display;
        this.registries = registries;
        this.store = store;
        this.settings = settings;
    }

    /** The open project, if there is one. */
    public Optional<ProjectSession> session() {
        return Optional.ofNullable(session);
    }

    /** What the plugins offer. */
    public Registries registries() {
        return registries;
    }

    /** Opens a project in place of the present one. Throws StoreException with one sentence; then the present one stays. */
    public void open(Path folder) {
        if (session != null && session.folder().equals(folder.toAbsolutePath().normalize())) {
            return;
        }
        take(store.open(folder));
    }

    /**
     * Makes a new project in place of the present one. Throws StoreException with one sentence; then the present one stays.
     *
     * @param first fills it, as its first step
     */
    public void create(Path folder, String title, Consumer<Edit> first) {
        ProjectSession made = store.create(folder, title);
        made.execute("start the project", first);
        made.save();
        take(made);
    }

    private void take(ProjectSession next) {
        close();
        session = next;
        session.addListener(watcher);
        settings.opened(session.folder());
        listeners.forEach(ProjectListener::opened);
        check();
    }

    /**
     * Saves: the project is turned into bytes now and written while work goes on. Nothing happens when a save is on its way.
     *
     * @param failed told, on the screen's thread, what stood in the way; the saved file then is as it was and no edit is lost
     */
    public void save(Consumer<StoreException> failed) {
        if (session == null || saving != null) {
            return;
        }
        PendingSave pending = session.beginSave();
        saving = new Saving(pending, failed, Job.createSystem("Saving", (IProgressMonitor monitor) -> {
            pending.write();
            if (!display.isDisposed()) {
                display.asyncExec(() -> finish(pending));
            }
        }));
        saving.job.schedule();
    }

    /** A save on its way. */
    private record Saving(PendingSave pending, Consumer<StoreException> failed, Job job) {
    }

    private void finish(PendingSave pending) {
        if (saving == null || saving.pending != pending) {
            return; // was finished on closing
        }
        Consumer<StoreException> failed = saving.failed;
        saving = null;
        try {
            pending.finish();
        } catch (StoreException e) {
            failed.accept(e);
        }
    }

    private void finishSaving() {
        if (saving != null) {
            try {
                saving.job.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return; // the journal has every edit
            }
            finish(saving.pending);
        }
    }

    /** Closes the project; edits that were not saved stay in its journal and come back when it is opened. */
    public void close() {
        if (session == null) {
            return;
        }
        findingsJob.cancel();
        finishSaving();
        ProjectSession old = session;
        session = null;
        findings = List.of();
        comparison = null;
        unsaved.clear();
        listeners.forEach(ProjectListener::closed);
        old.removeListener(watcher);
        old.close();
    }

    /** True when the thing or anything within it was changed since the project was saved. */
    public boolean unsaved(EObject subject) {
        if (session == null || !session.dirty()) {
            return false;
        }
        return unsaved.stream().anyMatch(touched -> EcoreUtil.isAncestor(subject, touched));
    }

    /** The findings as last computed, worst first. */
    public List<Finding> findings() {
        return findings;
    }

    /** Reference and trials side by side as of now; made again only after a change. Throws IllegalStateException without a project. */
    public Comparison comparison() {
        if (session == null) {
            throw new IllegalStateException("No project is open.");
        }
        if (comparison == null) {
            comparison = Comparison.of(session.project(), registries);
        }
        return comparison;
    }

    /** Findings about the thing or anything within it. */
    public List<Finding> findings(EObject subject) {
        return findings.stream().filter(f -> find(f.subject()).filter(about -> EcoreUtil.isAncestor(subject, about)).isPresent()).toList();
    }

    /** The thing of the project with that id or address. */
    public Optional<EObject> find(String address) {
        return session == null ? Optional.empty() : session.find(address);
    }

    /** Address under which the thing is found again. */
    public String address(EObject object) {
        return object instanceof Identified known && known.getId() != null ? known.getId() : session.address(object);
    }

    /** Adds a listener. */
    public void addListener(ProjectListener listener) {
        listeners.add(listener);
    }

    /** Takes a listener away. */
    public void removeListener(ProjectListener listener) {
        listeners.remove(listener);
    }

    private void check() {
        findingsJob.cancel();
        findingsJob.schedule(DEBOUNCE);
    }

    /** Asks the rules about a copy of the project, so that nobody else changes what they look at. */
    private final class FindingsJob extends Job {

        FindingsJob() {
            super("Looking for findings");
            setSystem(true);
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Project[] copy = new Project[1];
            ProjectSession[] of = new ProjectSession[1];
            if (display.isDisposed()) {
                return Status.CANCEL_STATUS;
            }
            display.syncExec(() -> {
                if (session != null) {
                    of[0] = session;
                    copy[0] = EcoreUtil.copy(session.project());
                }
            });
            if (copy[0] == null || monitor.isCanceled()) {
                return Status.CANCEL_STATUS;
            }
            List<Finding> found = registries.findings().check(copy[0], Instant.now());
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (session == of[0] && !monitor.isCanceled()) {
                        findings = found;
                        listeners.forEach(ProjectListener::findingsChanged);
                    }
                });
            }
            return Status.OK_STATUS;
        }
    }
}
