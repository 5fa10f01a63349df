package org.flexwright.workbench.pages.mould;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Mould;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A mould and its casts. */
@Component(service = EditorPageProvider.class)
public final class MouldPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "mould.casts";
    }

    @Override
    public String title() {
        return "Mould";
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
        return subject instanceof Mould;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new MouldPage(parent, context);
    }
}
