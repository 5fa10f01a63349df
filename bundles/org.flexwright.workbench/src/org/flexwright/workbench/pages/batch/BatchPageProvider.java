package org.flexwright.workbench.pages.batch;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Batch;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** So many of a recipe. */
@Component(service = EditorPageProvider.class)
public final class BatchPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "batch.pots";
    }

    @Override
    public String title() {
        return "Batch";
    }

    @Override
    public int order() {
        return 100;
    }

    @Override
    public Stage stage() {
        return Stage.MAKE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Batch;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new BatchPage(parent, context);
    }
}
