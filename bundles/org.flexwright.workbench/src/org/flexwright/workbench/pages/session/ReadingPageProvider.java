package org.flexwright.workbench.pages.session;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Session;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** Fast entry of readings in a session. */
@Component(service = EditorPageProvider.class)
public final class ReadingPageProvider implements EditorPageProvider {

    /** Id of the page. */
    public static final String ID = "session.readings";

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Read";
    }

    @Override
    public int order() {
        return 100;
    }

    @Override
    public Stage stage() {
        return Stage.MEASURE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Session;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new ReadingPage(parent, context);
    }
}
