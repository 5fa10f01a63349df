package org.flexwright.workbench.pages.trial;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** The steps of a trial: time line, planned beside actual, weighing. */
@Component(service = EditorPageProvider.class)
public final class StepsPageProvider extends TrialPageProvider {

    /** For the service registry. */
    public StepsPageProvider() {
        super("trial.steps", "Steps", 200, Stage.MAKE);
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new StepsPage(parent, context);
    }
}
