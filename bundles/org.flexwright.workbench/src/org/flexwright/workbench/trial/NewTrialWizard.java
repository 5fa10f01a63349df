package org.flexwright.workbench.trial;

import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.Trial;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.pages.SubjectEditors;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;

/** Plans a trial: what is tried, on which route or after which earlier trial. */
public final class NewTrialWizard extends Wizard {

    private final IWorkbenchWindow window;
    private final ProjectService projects;
    private final NewTrialPage page;
    private Trial made;

    /** A wizard for the window's open project. */
    public NewTrialWizard(IWorkbenchWindow window) {
        this.window = window;
        this.projects = window.getService(ProjectService.class);
        this.page = new NewTrialPage(window.getService(Kit.class), projects);
        setWindowTitle("New trial");
    }

    @Override
    public void addPages() {
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        boolean done = Trouble.guard(getShell(), "Not planned", this::plan);
        if (done) {
            SubjectEditors.open(window, made);
        }
        return done;
    }

    private void plan() {
        ProjectSession session = projects.session().orElseThrow();
        session.execute("plan a trial", edit -> made = page.after() == null
                ? Trials.create(edit, page.route(), projects.registries()::findStepKind, null, page.title(), page.idea())
                : Trials.copy(edit, page.after(), null, page.title()));
    }
}
