package org.flexwright.workbench.pages.stock;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Project;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** What is left on the shelf. */
@Component(service = EditorPageProvider.class)
public final class StockPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "stock.shelf";
    }

    @Override
    public String title() {
        return "Stock";
    }

    @Override
    public int order() {
        return 300;
    }

    @Override
    public Stage stage() {
        return Stage.PLAN;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Project;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new StockPage(parent, context);
    }
}
