package org.flexwright.workbench.pages.spot;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.SpotMap;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A spot map. */
@Component(service = EditorPageProvider.class)
public final class SpotMapPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "spot.map";
    }

    @Override
    public String title() {
        return "Map";
    }

    @Override
    public int order() {
        return 50;
    }

    @Override
    public Stage stage() {
        return Stage.MEASURE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof SpotMap;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new SpotMapPage(parent, context);
    }
}
