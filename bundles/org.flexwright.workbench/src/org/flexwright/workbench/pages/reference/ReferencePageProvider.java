package org.flexwright.workbench.pages.reference;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.ReferencePart;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** The part to re-create: what was measured, what is estimated, what is unknown. */
@Component(service = EditorPageProvider.class)
public final class ReferencePageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "reference.part";
    }

    @Override
    public String title() {
        return "Reference part";
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
        return subject instanceof ReferencePart;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new ReferencePage(parent, context);
    }
}
