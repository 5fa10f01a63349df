package org.flexwright.workbench.commands;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.handover.HandOver;
import org.flexwright.workbench.project.ProjectService;

/** Writes the hand-over pack of the recipe or trial that is open or chosen; without one, of the newest recipe. */
public final class PackHandler extends PrintHandler {

    @Override
    HandOver printed(EObject thing, ProjectSession session, ProjectService projects) {
        HandOver pack = HandOver.pack(thing, session, projects.registries());
        return pack == null && !session.project().getRecipes().isEmpty() ? HandOver.pack(session.project().getRecipes().getLast(), session, projects.registries()) : pack;
    }

    @Override
    String nothing() {
        return "There is no recipe yet: open or choose a trial, and its pack is written as it stands now.";
    }
}
