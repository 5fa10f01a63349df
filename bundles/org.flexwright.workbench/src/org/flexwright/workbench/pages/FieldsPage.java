package org.flexwright.workbench.pages;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.field.ModelFields;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.ScrollPane;
import org.flexwright.workbench.kit.Spacing;

/** The generated form of a thing with the findings about it above. */
final class FieldsPage implements EditorPage {

    private final ScrollPane page;
    private final FindingStrips findings;
    private final FormPane form;

    FieldsPage(Composite parent, PageContext context) {
        page = new ScrollPane(parent, context.kit(), 1, Spacing.PAGE);
        findings = new FindingStrips(page.body(), context);
        FormModel model = FormModel.bound(context.session(), context.subject(), ModelFields.of(context.subject(), context.registries().properties()));
        form = new FormPane(page.body(), context.kit(), Bindings.of(model, context.session().readOnly()));
        page.addDisposeListener(event -> model.close());
        form.setLayoutData(Grid.wide());
        findings.show();
        page.reflow();
    }

    @Override
    public Control control() {
        return page;
    }

    @Override
    public void findingsChanged() {
        findings.show();
    }

    @Override
    public void reveal(EObject object, String feature) {
        form.reveal(feature);
    }

    @Override
    public void setFocus() {
        if (!form.setFocus()) {
            page.setFocus();
        }
    }
}
