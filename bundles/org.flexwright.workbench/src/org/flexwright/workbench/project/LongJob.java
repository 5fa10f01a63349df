package org.flexwright.workbench.project;

import java.io.IOException;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.Watch;
import org.flexwright.core.session.RefusedException;
import org.flexwright.core.session.StoreException;

/** Something long off the screen's thread, with progress and cancel; what comes of it is told on the screen's thread. */
public final class LongJob<T> extends Job {
    /** The work; ends with a CancellationException when it was cancelled. */
    public interface Work<T> {
        /** Does it. */
        T with(Watch watch) throws IOException;
    }

    private final Display display;
    private final Work<T> work;
    private final Consumer<T> done;
    private final Consumer<String> failed;

    /**
     * Work of that name; schedule it.
     *
     * @param done   takes what came of it
     * @param failed takes one sentence
     */
    public LongJob(String name, Display display, Work<T> work, Consumer<T> done, Consumer<String> failed) {
        super(name);
        this.display = display;
        this.work = work;
        this.done = done;
        this.failed = failed;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            T result = work.with(new JobWatch(monitor, getName()));
            tell(() -> done.accept(result));
            return Status.OK_STATUS;
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RefusedException | StoreException e) {
            if (e.getCause() != null) {
                ILog.get().error(getName(), e); // whoever wrote the plugin looks there
            }
            tell(() -> failed.accept(e.getMessage()));
        } catch (IOException e) {
            ILog.get().warn(getName(), e);
            tell(() -> failed.accept("The disk did not allow it: " + e.getMessage() + ". Nothing was left half done."));
        } catch (RuntimeException e) {
            ILog.get().error(getName(), e);
            tell(() -> failed.accept(Trouble.unexpected()));
        }
        return Status.OK_STATUS;
    }

    private void tell(Runnable what) {
        if (!display.isDisposed()) {
            display.asyncExec(what);
        }
    }
}
