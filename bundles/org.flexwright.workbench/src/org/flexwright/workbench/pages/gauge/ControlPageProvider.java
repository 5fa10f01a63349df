package org.flexwright.workbench.pages.gauge;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.ControlPiece;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A control piece: its usual reading, and how it read over the sessions. */
@Component(service = EditorPageProvider.class)
public final class ControlPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "gauge.control";
    }

    @Override
    public String title() {
        return "Control piece";
    }

    @Override
    public int order() {
        return 10;
    }

    @Override
    public Stage stage() {
        return Stage.MEASURE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof ControlPiece;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new ControlPage(parent, context);
    }
}
