package org.flexwright.workbench.find;

import java.time.Clock;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.search.Answer;
import org.flexwright.core.search.ProjectSearch;
import org.flexwright.workbench.project.ProjectListener;
import org.flexwright.workbench.project.ProjectService;

/**
 * Search in the window's project. The project is read on the screen's thread in slices too short to be felt, as soon as it is open and after
 * every edit; questions are answered off that thread. All calls on the screen's thread.
 */
public final class Finder {
    /** Hits in detail; the rest is counted. */
    static final int MOST = 120;
    /** The project comes up first. */
    private static final int BEFORE_READING = 1500;
    private static final int PAUSE = 15;
    private static final long SLICE = 8_000_000;

    private final Display display;
    private final ProjectService projects;
    private ProjectSearch search;
    private boolean reading;

    /** The search of a window. */
    public Finder(Display display, ProjectService projects) {
        this.display = display;
        this.projects = projects;
        projects.addListener(new ProjectListener() {
            @Override
            public void opened() {
                begin(BEFORE_READING);
            }

            @Override
            public void closed() {
                end();
            }

            @Override
            public void changed(Set<EObject> touched) {
                read(PAUSE);
            }
        });
        begin(BEFORE_READING);
    }

    private void begin(int delay) {
        end();
        projects.session().ifPresent(session -> {
            search = new ProjectSearch(session, projects.registries(), Clock.systemDefaultZone());
            read(delay);
        });
    }

    private void end() {
        if (search != null) {
            search.close();
            search = null;
        }
    }

    private void read(int delay) {
        if (!reading && search != null && !display.isDisposed()) {
            reading = true;
            display.timerExec(delay, this::slice);
        }
    }

    private void slice() {
        reading = false;
        if (search == null) {
            return;
        }
        try {
            if (!search.readFor(SLICE)) {
                read(PAUSE);
            }
        } catch (RuntimeException e) {
            ILog.get().error("A thing of the project cannot be read for the search.", e);
            read(PAUSE); // it was taken out of what waits: the others are still read
        }
    }

    /** True when there is a project to search. */
    boolean ready() {
        return search != null;
    }

    /** Still to be read; 0 when everything can be found. */
    int unread() {
        return search == null ? 0 : search.unread();
    }

    /** Asks off the screen's thread; the answer comes back on it, unless the project was closed meanwhile. */
    void ask(String typed, Consumer<Answer> then) {
        ProjectSearch asked = search;
        if (asked == null) {
            return;
        }
        read(0);
        Job.createSystem("Searching", (IProgressMonitor monitor) -> {
            Answer answer = asked.find(typed, MOST);
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (search == asked) {
                        then.accept(answer);
                    }
                });
            }
        }).schedule();
    }
}
