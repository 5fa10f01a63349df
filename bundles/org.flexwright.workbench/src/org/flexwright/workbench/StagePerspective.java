package org.flexwright.workbench;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** A stage's window: the project at the left, findings below, the editors between; plugins add their views by perspective extensions. */
public final class StagePerspective implements IPerspectiveFactory {

    /** Id of the project tree. */
    public static final String PROJECT = "org.flexwright.workbench.views.project";
    /** Id of the findings. */
    public static final String FINDINGS = "org.flexwright.workbench.views.findings";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        String editors = layout.getEditorArea();
        layout.addView(FINDINGS, IPageLayout.BOTTOM, 0.76f, editors);
        layout.addView(PROJECT, IPageLayout.LEFT, 0.25f, editors);
        layout.getViewLayout(PROJECT).setCloseable(false);
        layout.addShowViewShortcut(PROJECT);
        layout.addShowViewShortcut(FINDINGS);
        for (Stage stage : Stage.values()) {
            layout.addPerspectiveShortcut(stage.perspective());
        }
    }
}
