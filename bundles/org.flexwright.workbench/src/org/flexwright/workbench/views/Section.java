package org.flexwright.workbench.views;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;

/** A heading of the project tree. */
enum Section {
    NEEDS("Need", ModelPackage.Literals.PROJECT__NEEDS, "Add a need"),
    REFERENCE("Reference part", ModelPackage.Literals.PROJECT__REFERENCE_PARTS, "Add a reference part"),
    TARGETS("Target sheets", ModelPackage.Literals.PROJECT__TARGET_SHEETS, "Add a target sheet"),
    MATERIALS("Materials", ModelPackage.Literals.PROJECT__GRADES, "Add a material"),
    INSTRUMENTS("Instruments", ModelPackage.Literals.PROJECT__INSTRUMENTS, "Add an instrument"),
    CONTROL_PIECES("Control pieces", ModelPackage.Literals.PROJECT__CONTROL_PIECES, "Add a control piece"),
    SESSIONS("Sessions", ModelPackage.Literals.PROJECT__SESSIONS, "Add a session"),
    GAUGE_STUDIES("Gauge studies", ModelPackage.Literals.PROJECT__GAUGE_STUDIES, "Add a gauge study"),
    RANKINGS("Rankings", ModelPackage.Literals.PROJECT__RANKINGS, "Add a ranking"),
    MOULDS("Moulds", ModelPackage.Literals.PROJECT__MOULDS, "Add a mould"),
    SPOT_MAPS("Spot maps", ModelPackage.Literals.PROJECT__SPOT_MAPS, "Add a spot map"),
    TRIALS("Trials", ModelPackage.Literals.PROJECT__TRIALS, "New trial…"),
    AGEING("Ageing", ModelPackage.Literals.PROJECT__AGEING_PLANS, "Plan readings over age"),
    RECIPES("Recipes", ModelPackage.Literals.PROJECT__RECIPES, ""),
    BATCHES("Batches", ModelPackage.Literals.PROJECT__BATCHES, ""),
    ATTACHMENTS("Attachments", ModelPackage.Literals.PROJECT__ATTACHMENTS, "Attach file…");

    private final String word;
    private final EReference feature;
    private final String addWords;

    Section(String word, EReference feature, String addWords) {
        this.word = word;
        this.feature = feature;
        this.addWords = addWords;
    }

    String word() {
        return word;
    }

    EReference feature() {
        return feature;
    }

    /** Words of the action that adds one; empty when things come here by other ways. */
    String addWords() {
        return addWords;
    }

    @SuppressWarnings("unchecked")
    List<EObject> things(Project project) {
        return (List<EObject>) project.eGet(feature);
    }
}
