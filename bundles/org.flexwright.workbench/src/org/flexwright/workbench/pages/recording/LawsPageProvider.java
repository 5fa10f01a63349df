package org.flexwright.workbench.pages.recording;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.core.recording.LawFits;
import org.flexwright.core.registry.Registries;
import org.flexwright.model.LawFit;
import org.flexwright.model.Project;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Specimen;
import org.flexwright.model.Trial;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Rubber laws fitted to what was stretched: there for a kept fit, and for a trial or a reference part with a recording a law can be fitted to. */
@Component(service = EditorPageProvider.class)
public final class LawsPageProvider implements EditorPageProvider {

    private final Registries registries;

    /** Asks these recording kinds. */
    @Activate
    public LawsPageProvider(@Reference Registries registries) {
        this.registries = registries;
    }

    @Override
    public String id() {
        return "laws";
    }

    @Override
    public String title() {
        return "Rubber law";
    }

    @Override
    public int order() {
        return 345;
    }

    @Override
    public Stage stage() {
        return Stage.DECIDE;
    }

    @Override
    public boolean accepts(EObject subject) {
        if (!(subject.eContainer() instanceof Project project)) {
            return false;
        }
        return subject instanceof LawFit || (subject instanceof Trial || subject instanceof ReferencePart)
                && LawFits.fitting(project, registries).stream().anyMatch(r -> r.eContainer() instanceof Specimen piece && (piece == subject || piece.eContainer() == subject));
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new LawsPage(parent, context);
    }
}
