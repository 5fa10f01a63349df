package org.flexwright.workbench.handover;

import java.nio.file.Path;
import java.time.Instant;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.Batch;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.flexwright.report.Labels;
import org.flexwright.report.Pack;
import org.flexwright.report.doc.Document;

/**
 * What can be printed of a thing.
 *
 * @param name     name of the files, without ending
 * @param document makes the document from a copy, so that another thread may do it while the screen goes on
 */
public record HandOver(String name, Supplier<Document> document) {

    /** The pack of a recipe, or of the trial that a thing belongs to; null when it belongs to neither. To be called where the model is changed. */
    public static HandOver pack(EObject thing, ProjectSession session, Registries registries) {
        EObject subject = subject(thing);
        Path folder = session.folder();
        if (subject instanceof Recipe recipe) {
            int place = session.project().getRecipes().indexOf(recipe);
            Project copy = EcoreUtil.copy(session.project());
            return new HandOver(recipe.getCode() + "-v" + recipe.getVersion(), () -> Pack.of(copy.getRecipes().get(place), registries, folder));
        }
        if (subject instanceof Trial trial) {
            int place = session.project().getTrials().indexOf(trial);
            Project copy = EcoreUtil.copy(session.project());
            Instant now = Instant.now();
            return new HandOver(trial.getCode(), () -> Pack.of(copy.getTrials().get(place), registries, folder, now));
        }
        return null;
    }

    /** The labels of a trial and its parts, a batch and its pots, or the lots of a material; null for anything else. To be called where the model is changed. */
    public static HandOver labels(EObject thing, ProjectSession session) {
        for (EObject at = thing; at != null; at = at.eContainer()) {
            if (at.eContainer() == session.project() && (at instanceof Batch || at instanceof MaterialGrade || at instanceof Trial)) {
                EcoreUtil.Copier copier = new EcoreUtil.Copier();
                copier.copy(session.project());
                copier.copyReferences();
                return switch (copier.get(at)) {
                    case Batch batch -> new HandOver("labels-" + batch.getCode(), () -> Labels.of(batch));
                    case MaterialGrade grade -> new HandOver("labels-" + grade.getCode(), () -> Labels.of(grade));
                    case Trial trial -> new HandOver("labels-" + trial.getCode(), () -> Labels.of(trial));
                    default -> null;
                };
            }
        }
        return null;
    }

    private static EObject subject(EObject thing) {
        EObject found = null;
        for (EObject at = thing; at != null; at = at.eContainer()) {
            if (at instanceof Recipe || at instanceof Trial) {
                found = at;
            }
        }
        return found;
    }
}
