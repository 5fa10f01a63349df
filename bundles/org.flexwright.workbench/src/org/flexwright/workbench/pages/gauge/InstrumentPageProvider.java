package org.flexwright.workbench.pages.gauge;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Instrument;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A gauge: what it shows, how well, and when it was checked. */
@Component(service = EditorPageProvider.class)
public final class InstrumentPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "gauge.instrument";
    }

    @Override
    public String title() {
        return "Instrument";
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
        return subject instanceof Instrument;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new InstrumentPage(parent, context);
    }
}
