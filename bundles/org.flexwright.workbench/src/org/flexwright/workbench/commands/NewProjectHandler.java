package org.flexwright.workbench.commands;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.start.NewProjectWizard;

/** Makes a new project with the wizard. */
public final class NewProjectHandler extends WindowHandler {

    @Override
    void run(IWorkbenchWindow window, ProjectService projects, ExecutionEvent event) {
        new WizardDialog(window.getShell(), new NewProjectWizard(window)).open();
    }
}
