package org.flexwright.workbench.start;

import java.nio.file.Path;

import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.IWorkbenchWindow;
import org.flexwright.core.session.Edit;
import org.flexwright.model.Importance;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Need;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectService;
import org.flexwright.workbench.project.Trouble;

/** Makes a new project: its title, the job in the maker's words, what the part must do, and where it is kept. */
public final class NewProjectWizard extends Wizard {

    private final IWorkbenchWindow window;
    private final NewProjectPage page;

    /** A wizard whose project opens in that window. */
    public NewProjectWizard(IWorkbenchWindow window) {
        this.window = window;
        this.page = new NewProjectPage(window.getService(Kit.class));
        setWindowTitle("New project");
    }

    @Override
    public void addPages() {
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        Path folder = page.folder();
        return Trouble.guard(getShell(), "Not made",
                () -> window.getService(ProjectService.class).create(folder, page.title(), this::fill));
    }

    private void fill(Edit edit) {
        if (!page.job().isEmpty()) {
            edit.set(edit.project(), ModelPackage.Literals.PROJECT__JOB, page.job());
        }
        for (String words : page.needs()) {
            Need need = ModelFactory.eINSTANCE.createNeed();
            need.setText(words);
            need.setImportance(Importance.MUST);
            edit.add(edit.project(), ModelPackage.Literals.PROJECT__NEEDS, need);
        }
    }
}
