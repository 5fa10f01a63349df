package org.flexwright.workbench.pages;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import org.flexwright.workbench.Stage;

/**
 * Brings a page to the editor of the things it accepts. Register it as an OSGi service. An editor shows the pages of all providers that
 * accept its subject, in their order, each made when it is first looked at; without any, the generated form.
 */
public interface EditorPageProvider {
    /** Stable id, {@code capability.name}. */
    String id();

    /** The word on its tab. */
    String title();

    /** Place among the pages: smaller is further left; hundreds, so that others fit between. */
    int order();

    /** Where this page is at home: going to that stage turns the open editor to it. */
    Stage stage();

    /** True when there is such a page for the subject. */
    boolean accepts(EObject subject);

    /** Makes the page; its control has {@code parent} as parent and no layout data. */
    EditorPage create(Composite parent, PageContext context);
}
