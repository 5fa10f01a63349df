package org.flexwright.workbench.pages.gauge;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.GaugeStudy;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A gauge study. */
@Component(service = EditorPageProvider.class)
public final class GaugePageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "gauge.study";
    }

    @Override
    public String title() {
        return "Gauge study";
    }

    @Override
    public int order() {
        return 60;
    }

    @Override
    public Stage stage() {
        return Stage.MEASURE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof GaugeStudy;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new GaugePage(parent, context);
    }
}
