package org.flexwright.workbench.pages.trial;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** What is tried: the idea, what is varied, what the route takes. */
@Component(service = EditorPageProvider.class)
public final class IdeaPageProvider extends TrialPageProvider {

    /** For the service registry. */
    public IdeaPageProvider() {
        super("trial.idea", "Idea", 100, Stage.PLAN);
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new IdeaPage(parent, context);
    }
}
