package org.flexwright.workbench;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The perspective in which a project is worked on. */
public final class ProjectPerspective implements IPerspectiveFactory {

    /** Id of this perspective. */
    public static final String ID = "org.flexwright.workbench.project";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
    }
}
