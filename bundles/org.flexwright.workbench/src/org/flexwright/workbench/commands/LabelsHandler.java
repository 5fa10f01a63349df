package org.flexwright.workbench.commands;

import org.eclipse.emf.ecore.EObject;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.workbench.handover.HandOver;
import org.flexwright.workbench.project.ProjectService;

/** Writes the labels of the trial, batch or material that is open or chosen. */
public final class LabelsHandler extends PrintHandler {

    @Override
    HandOver printed(EObject thing, ProjectSession session, ProjectService projects) {
        return HandOver.labels(thing, session);
    }

    @Override
    String nothing() {
        return "Open or choose a trial, a batch or a material first: its labels are printed.";
    }
}
