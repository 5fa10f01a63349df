package org.flexwright.workbench.pages.trial;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** The steps of a trial: time line, planned beside actual, weighing. */
@Component(service = EditorPageProvider.class)
public final class StepsPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "trial.steps";
    }

    @Override
    public String title() {
        return "Steps";
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public Stage stage() {
        return Stage.MAKE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Trial && subject.eContainer() instanceof Project; // a recipe's plan is no trial
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new StepsPage(parent, context);
    }
}
