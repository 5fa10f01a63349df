package org.flexwright.workbench.pages.session;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Session;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** Room, person, gauges and control piece of a session. */
@Component(service = EditorPageProvider.class)
public final class BenchPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "session.bench";
    }

    @Override
    public String title() {
        return "Room and gauges";
    }

    @Override
    public int order() {
        return 200;
    }

    @Override
    public Stage stage() {
        return Stage.PLAN;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Session;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new BenchPage(parent, context);
    }
}
