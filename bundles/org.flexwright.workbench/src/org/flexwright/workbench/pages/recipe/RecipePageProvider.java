package org.flexwright.workbench.pages.recipe;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.model.Recipe;
import org.flexwright.workbench.Stage;
import org.flexwright.workbench.pages.EditorPage;
import org.flexwright.workbench.pages.EditorPageProvider;
import org.flexwright.workbench.pages.PageContext;
import org.osgi.service.component.annotations.Component;

/** A frozen plan. */
@Component(service = EditorPageProvider.class)
public final class RecipePageProvider implements EditorPageProvider {

    @Override
    public String id() {
        return "recipe.plan";
    }

    @Override
    public String title() {
        return "Recipe";
    }

    @Override
    public int order() {
        return 100;
    }

    @Override
    public Stage stage() {
        return Stage.PLAN;
    }

    @Override
    public boolean accepts(EObject subject) {
        return subject instanceof Recipe;
    }

    @Override
    public EditorPage create(Composite parent, PageContext context) {
        return new RecipePage(parent, context);
    }
}
