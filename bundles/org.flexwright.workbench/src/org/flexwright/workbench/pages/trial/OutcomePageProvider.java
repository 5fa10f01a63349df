package org.flexwright.workbench.pages.trial;

import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** What came out: verdicts, conclusion, kept calculations, recipe. */
@Component(service = EditorPageProvider.class)
public final class OutcomePageProvider extends TrialPageProvider {

    /** For the service registry. */
    public OutcomePageProvider() {
        super("trial.outcome", "Outcome", 400, Stage.DECIDE);
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new OutcomePage(parent, context);
    }
}
