package org.flexwright.workbench.pages.trial;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** The pieces of a trial with every reading. */
@Component(service = EditorPageProvider.class)
public final class PartsPageProvider extends TrialPageProvider {

    /** For the service registry. */
    public PartsPageProvider() {
        super("trial.parts", "Parts and readings", 300, Stage.MEASURE);
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new PartsPage(parent, context);
    }
}
