package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.trial.NewTrialWizard;

/** Plans a new trial with the wizard. */
public final class NewTrialHandler extends WindowHandler {

    @Override
    boolean needsProject() {
        return true;
    }

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        if (projects.session().filter(session -> !session.readOnly()).isPresent()) {
            new WizardDialog(window.getShell(), new NewTrialWizard(window)).open();
        }
    }
}
