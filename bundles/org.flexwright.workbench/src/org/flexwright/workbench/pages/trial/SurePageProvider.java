package org.flexwright.workbench.pages.trial;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** How sure the values of a trial's parts are: every reading on one scale, and a bar a contribution. */
@Component(service = EditorPageProvider.class)
public final class SurePageProvider extends TrialPageProvider {

    /** For the service registry. */
    public SurePageProvider() {
        super("trial.sure", "How sure", 450, Stage.DECIDE);
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new SurePage(parent, context);
    }
}
