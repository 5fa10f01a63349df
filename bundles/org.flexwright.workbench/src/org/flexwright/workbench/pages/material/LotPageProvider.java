package org.flexwright.workbench.pages.material;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Lot;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A bottle, spool or can of a material, with its own values. */
@Component(service = EditorPageProvider.class)
public final class LotPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "material.lot";
    }

    @Override
    public String title() {
        return "Lot";
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
        return subject instanceof Lot;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new LotPage(parent, context);
    }
}
