package org.flexwright.workbench.overview;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Project;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** The project's overview. */
@Component
public final class ProjectPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "workbench.project";
    }

    @Override
    public String title() {
        return "The job";
    }

    @Override
    public int order() {
        return 100;
    }

    @Override
    public Stage stage() {
        return Stage.PLAN;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Project;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new ProjectPage(parent, context);
    }
}
