package org.flexwright.workbench.pages;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.Stage;

/** The generated form, for whatever has no page of its own. */
final class FieldsPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "workbench.fields";
    }

    @Override
    public String title() {
        return "Fields";
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
        return true;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new FieldsPage(parent, context);
    }
}
