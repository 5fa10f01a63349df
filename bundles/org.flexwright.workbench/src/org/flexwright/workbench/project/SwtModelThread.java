package org.flexwright.workbench.project;

import org.eclipse.swt.widgets.Display;
import org.flexwright.core.session.ModelThread;

/** The screen's thread as the thread projects live on. */
public final class SwtModelThread implements ModelThread {

    private final Display display;

    /** The thread of that display. */
    public SwtModelThread(Display display) {
        this.display = display;
    }

    @Override
    public boolean isCurrent() {
        return display.getThread() == Thread.currentThread();
    }

    @Override
    public void run(Runnable work) {
        if (isCurrent()) {
            work.run();
        } else {
            display.syncExec(work);
        }
    }
}
