package org.flexwright.workbench.pages.material;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.MaterialGrade;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A material: the sheet's values beside the maker's own, and its lots. */
@Component(service = EditorPageProvider.class)
public final class MaterialPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "material.grade";
    }

    @Override
    public String title() {
        return "Material";
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
        return subject instanceof MaterialGrade;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new MaterialPage(parent, context);
    }
}
