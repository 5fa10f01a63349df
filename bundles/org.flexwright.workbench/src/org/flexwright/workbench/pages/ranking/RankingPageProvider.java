package org.flexwright.workbench.pages.ranking;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Ranking;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A ranking by several people. */
@Component(service = EditorPageProvider.class)
public final class RankingPageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "ranking.orders";
    }

    @Override
    public String title() {
        return "Ranking";
    }

    @Override
    public int order() {
        return 70;
    }

    @Override
    public Stage stage() {
        return Stage.MEASURE;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Ranking;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new RankingPage(parent, context);
    }
}
