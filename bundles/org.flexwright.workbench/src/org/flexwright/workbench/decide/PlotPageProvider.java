package org.flexwright.workbench.decide;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Project;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** One target over all trials, drawn. */
@Component(service = EditorPageProvider.class)
public final class PlotPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "decide.plot";
    }

    @Override
    public String title() {
        return "Plot";
    }

    @Override
    public int order() {
        return 310;
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
        return new PlotPage(parent, context);
    }
}
