package org.flexwright.workbench.pages.target;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.TargetSheet;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A target sheet: its targets, freezing, new versions. */
@Component(service = EditorPageProvider.class)
public final class TargetSheetPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "target.sheet";
    }

    @Override
    public String title() {
        return "Targets";
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
        return subject instanceof TargetSheet;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new TargetSheetPage(parent, context);
    }
}
