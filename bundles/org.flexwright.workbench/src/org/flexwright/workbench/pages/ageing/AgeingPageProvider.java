package org.flexwright.workbench.pages.ageing;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.AgeingPlan;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** Readings taken again as pieces grow older. */
@Component(service = EditorPageProvider.class)
public final class AgeingPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "ageing.plan";
    }

    @Override
    public String title() {
        return "Ageing";
    }

    @Override
    public int order() {
        return 80;
    }

    @Override
    public Stage stage() {
        return Stage.MEASURE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof AgeingPlan;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new AgeingPage(parent, context);
    }
}
