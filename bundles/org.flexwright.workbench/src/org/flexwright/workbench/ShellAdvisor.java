package org.flexwright.workbench;

import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.statushandlers.AbstractStatusHandler;
import org.eclipse.ui.statushandlers.StatusAdapter;
import org.eclipse.ui.statushandlers.StatusManager;
import org.flexwright.workbench.bench.BenchWindow;
import org.flexwright.workbench.project.Trouble;

/** Sets up the workbench: first stage, look, and how troubles are told. */
final class ShellAdvisor extends WorkbenchAdvisor {

    private final StartArguments arguments;
    private boolean telling;

    ShellAdvisor(StartArguments arguments) {
        this.arguments = arguments;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new ShellWindowAdvisor(configurer, arguments);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return Stage.PLAN.perspective();
    }

    @Override
    public void eventLoopException(Throwable exception) {
        ILog.get().error("An action broke off.", exception);
        if (!telling) { // a broken paint would tell it again and again
            telling = true;
            try {
                var workbench = getWorkbenchConfigurer().getWorkbench();
                var window = workbench.getActiveWorkbenchWindow();
                if (!BenchWindow.told(workbench, Trouble.unexpected())) {
                    Trouble.tell(window == null ? null : window.getShell(), "Something went wrong", Trouble.unexpected());
                }
            } finally {
                telling = false;
            }
        }
    }

    @Override
    public AbstractStatusHandler getWorkbenchErrorHandler() {
        return new AbstractStatusHandler() {
            @Override
            public void handle(StatusAdapter adapter, int style) {
                if ((style & StatusManager.LOG) != 0) {
                    StatusManager.getManager().addLoggedStatus(adapter.getStatus());
                    ILog.get().log(adapter.getStatus());
                }
                if ((style & (StatusManager.SHOW | StatusManager.BLOCK)) != 0) {
                    var workbench = getWorkbenchConfigurer().getWorkbench();
                    workbench.getDisplay().asyncExec(() -> {
                        if (!BenchWindow.told(workbench, Trouble.unexpected())) {
                            Trouble.tell(null, "Something went wrong", Trouble.unexpected());
                        }
                    });
                }
            }
        };
    }
}
