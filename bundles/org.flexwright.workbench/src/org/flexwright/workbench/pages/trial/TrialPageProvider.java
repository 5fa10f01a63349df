package org.flexwright.workbench.pages.trial;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPageProvider;

/** A page of trials. */
abstract class TrialPageProvider implements EditorPageProvider {

    private final String id;
    private final String title;
    private final int order;
    private final Stage stage;

    TrialPageProvider(String id, String title, int order, Stage stage) {
        this.id = id;
        this.title = title;
        this.order = order;
        this.stage = stage;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final String title() {
        return title;
    }

    @Override
    public final int order() {
        return order;
    }

    @Override
    public final Stage stage() {
        return stage;
    }

    /** The plan kept in a recipe is no trial. */
    @Override
    public final boolean accepts(EObject subject) {
        return subject instanceof Trial && subject.eContainer() instanceof Project;
    }
}
