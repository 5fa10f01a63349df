package org.flexwright.workbench.commands;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.flexwright.workbench.project.ProjectService;

/** A command that works on a window and its project. */
abstract class WindowHandler extends AbstractHandler {

    @Override
    public final Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        run(window, window.getService(ProjectService.class), event);
        return null;
    }

    /** True when the command makes sense only with a project open. */
    boolean needsProject() {
        return false;
    }

    @Override
    public final boolean isEnabled() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        return !needsProject() || window != null && window.getService(ProjectService.class).session().isPresent();
    }

    abstract void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event);
}
