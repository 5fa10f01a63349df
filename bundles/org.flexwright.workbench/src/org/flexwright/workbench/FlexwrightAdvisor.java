package org.flexwright.workbench;

import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets up the workbench: the first perspective and the window. */
final class FlexwrightAdvisor extends WorkbenchAdvisor {

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new FlexwrightWindowAdvisor(configurer);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return ProjectPerspective.ID;
    }
}
