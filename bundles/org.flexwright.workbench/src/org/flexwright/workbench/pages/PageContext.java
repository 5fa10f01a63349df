package org.flexwright.workbench.pages;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.find.Finding;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.kit.Kit;
import org.flexwright.workbench.project.ProjectService;

/** What a page works with. */
public interface PageContext {
    /** What the page is about. */
    EObject subject();

    /** The open project. */
    ProjectSession session();

    /** What the plugins offer. */
    Registries registries();

    /** Colours, type, spacing. */
    Kit kit();

    /** The project of this window, for listeners and findings of the whole. */
    ProjectService projects();

    /** Present findings about the subject or anything within it. */
    List<Finding> findings();

    /** Opens another thing of the project in its editor. */
    void open(EObject other);

    /** One line at the foot of the window: what is being done or what a field means. */
    void status(String line);
}
