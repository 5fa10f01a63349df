package org.flexwright.workbench.project;

import org.eclipse.core.runtime.IProgressMonitor;
import org.flexwright.core.Watch;

/** Shows how far something long is, and ends it when it is cancelled. */
final class JobWatch implements Watch {
    private static final int STEPS = 1000;
    private final IProgressMonitor monitor;
    private int shown;

    JobWatch(IProgressMonitor monitor, String name) {
        this.monitor = monitor;
        monitor.beginTask(name, STEPS);
    }

    @Override
    public void done(long part, long whole) {
        int now = whole <= 0 ? 0 : (int) Math.min(STEPS, part * STEPS / whole);
        if (now > shown) {
            monitor.worked(now - shown);
            shown = now;
        }
    }

    @Override
    public boolean cancelled() {
        return monitor.isCanceled();
    }
}
