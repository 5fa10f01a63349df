package org.flexwright.workbench;

import org.eclipse.core.runtime.ILog;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** The window as an application: runs the workbench until it is closed. {@code --open <folder>} opens a project at once. */
public final class WorkbenchApplication implements IApplication {

    private static final Integer NO_DISPLAY = 2;

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Display display;
        try {
            display = PlatformUI.createDisplay();
        } catch (SWTError e) {
            ILog.get().error("no display", e);
            System.err.println("The display cannot be opened, so there is no window; the command line works without one.");
            return NO_DISPLAY;
        }
        try {
            int result = PlatformUI.createAndRunWorkbench(display, new ShellAdvisor(StartArguments.of(arguments)));
            return result == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    @Override
    public void stop() {
        if (!PlatformUI.isWorkbenchRunning()) {
            return;
        }
        Display display = PlatformUI.getWorkbench().getDisplay();
        display.syncExec(() -> {
            if (!display.isDisposed()) {
                PlatformUI.getWorkbench().close();
            }
        });
    }
}
