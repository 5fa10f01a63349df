package org.flexwright.workbench.pages.trial;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.Stage;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What the steps of a trial can be drawn as; there only when a step has something. */
@Component(service = EditorPageProvider.class)
public final class PlotsPageProvider implements EditorPageProvider {

    private final Registries registries;

    /** Asks these step kinds. */
    @Activate
    public PlotsPageProvider(@Reference Registries registries) {
        this.registries = registries;
    }

    @Override
    public String id() {
        return "trial.plots";
    }

    @Override
    public String title() {
        return "Curves";
    }

    @Override
    public int order() {
        return 350;
    }

    @Override
    public Stage stage() {
        return Stage.DECIDE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Trial trial && trial.eContainer() instanceof Project && !registries.plots(trial).isEmpty();
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new PlotsPage(parent, context);
    }
}
