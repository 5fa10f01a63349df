package org.flexwright.workbench.decide;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Project;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** All trials side by side. */
@Component(service = EditorPageProvider.class)
public final class ComparisonPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "decide.comparison";
    }

    @Override
    public String title() {
        return "Side by side";
    }

    @Override
    public int order() {
        return 300;
    }

    @Override
    public Stage stage() {
        return Stage.DECIDE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Project;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new ComparisonPage(parent, context);
    }
}
