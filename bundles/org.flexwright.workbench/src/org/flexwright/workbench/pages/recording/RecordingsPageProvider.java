package org.flexwright.workbench.pages.recording;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.ControlPiece;
import org.flexwright.model.Project;
import org.flexwright.model.Recording;
import org.flexwright.model.ReferencePart;
import org.flexwright.model.Trial;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** The recordings of a trial's pieces, of a reference part or a control piece, or a single one. */
@Component(service = EditorPageProvider.class)
public final class RecordingsPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "recordings";
    }

    @Override
    public String title() {
        return "Recordings";
    }

    @Override
    public int order() {
        return 340;
    }

    @Override
    public Stage stage() {
        return Stage.MEASURE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Trial trial && trial.eContainer() instanceof Project || subject instanceof ReferencePart || subject instanceof ControlPiece
                || subject instanceof Recording recording && recording.eContainer() != null;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new RecordingsPage(parent, context);
    }
}
