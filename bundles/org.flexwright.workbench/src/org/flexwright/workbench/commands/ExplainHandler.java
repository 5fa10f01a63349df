package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.kit.FieldControl;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.StatusWords;

/** F1: explains the field in focus beside it, anything else at the foot of the window. */
public final class ExplainHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        Control focus = window.getShell().getDisplay().getFocusControl();
        for (Control at = focus; at != null; at = at.getParent()) {
            if (at instanceof FieldControl field) {
                field.explain();
                return;
            }
        }
        if (focus != null) {
            window.getService(StatusWords.class).say((Kit.nameOf(focus) + "  " + Kit.descriptionOf(focus)).strip());
        }
    }
}
